SELECT entry_id, from_lot, from_state, to_lot, to_state, count FROM movement
WHERE entry_id BETWEEN :first AND :last ORDER BY id
