SELECT id, verb, date, lot_id, cone_id, place_id, who, note, reverses, entered FROM standing_entry WHERE verb = :verb ORDER BY date, id
