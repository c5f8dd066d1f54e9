SELECT entry_id, scales, fertile_scales FROM cone_look WHERE entry_id BETWEEN :first AND :last
