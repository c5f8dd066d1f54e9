SELECT lot_id, date, place_id FROM standing_entry
WHERE place_id IS NOT NULL
ORDER BY lot_id, date, id
