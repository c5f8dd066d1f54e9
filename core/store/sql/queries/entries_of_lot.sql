SELECT id, verb, date, lot_id, cone_id, place_id, who, note, reverses, entered FROM entry
WHERE lot_id = :lot OR id IN (SELECT entry_id FROM movement WHERE from_lot = :from_lot OR to_lot = :to_lot)
ORDER BY date, id
