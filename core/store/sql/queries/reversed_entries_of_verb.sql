SELECT id, verb, date, lot_id, cone_id, place_id, who, note, reverses, entered FROM entry
WHERE verb = :verb AND id IN (SELECT reverses FROM entry WHERE reverses IS NOT NULL)
ORDER BY id
