SELECT entry_id, grams FROM weighing WHERE entry_id BETWEEN :first AND :last
