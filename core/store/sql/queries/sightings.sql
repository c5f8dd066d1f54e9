SELECT id, lot_id, place_id, date, how, source, round_id FROM sighting ORDER BY id
