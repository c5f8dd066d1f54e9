SELECT id, verb, date, lot_id, cone_id, place_id, who, note, reverses, entered FROM entry
WHERE id BETWEEN :first AND :last ORDER BY id
