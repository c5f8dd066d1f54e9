SELECT entry_id, from_lot, from_state, to_lot, to_state, count FROM movement ORDER BY id
