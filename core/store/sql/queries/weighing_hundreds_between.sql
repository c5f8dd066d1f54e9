SELECT entry_id, grams FROM weighing_hundred WHERE entry_id BETWEEN :first AND :last ORDER BY entry_id, position
