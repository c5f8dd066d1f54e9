SELECT id, verb, date, lot_id, cone_id, place_id, who, note, reverses, entered FROM entry
WHERE id IN (SELECT entry_id FROM plant_note WHERE plant_id = :plant)
   OR id IN (SELECT entry_id FROM correction WHERE plant_id = :corrected)
ORDER BY date, id
