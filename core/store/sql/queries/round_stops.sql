SELECT round_id, lot_id, place_id FROM round_stop ORDER BY round_id, position
