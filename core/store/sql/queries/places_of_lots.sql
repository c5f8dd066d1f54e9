SELECT lot_id, place_id FROM standing_entry
WHERE place_id IS NOT NULL AND date <= :day
ORDER BY date, id
