SELECT id FROM sighting
WHERE lot_id = :lot AND coalesce(place_id, 0) = :place AND date = :day AND how = :how
  AND source = :source AND coalesce(round_id, 0) = :round
