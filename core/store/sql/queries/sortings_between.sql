SELECT entry_id, test FROM sorting WHERE entry_id BETWEEN :first AND :last
