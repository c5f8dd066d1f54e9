SELECT entry_id, hash FROM entry_link ORDER BY entry_id DESC LIMIT 1
