SELECT entry_id, method FROM pollination WHERE entry_id BETWEEN :first AND :last
