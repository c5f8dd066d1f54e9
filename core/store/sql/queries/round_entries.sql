SELECT entry_id, round_id FROM round_entry ORDER BY entry_id
