SELECT entry_id, soak_days FROM cleaning WHERE entry_id BETWEEN :first AND :last
