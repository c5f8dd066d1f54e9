SELECT id, verb, date, lot_id, cone_id, place_id, who, note, reverses, entered FROM entry WHERE cone_id = :cone ORDER BY date, id
