SELECT entry_id, buyer, cents FROM sale WHERE entry_id BETWEEN :first AND :last
