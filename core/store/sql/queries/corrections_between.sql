SELECT entry_id, plant_id, field, stood, stands FROM correction
WHERE entry_id BETWEEN :first AND :last ORDER BY entry_id, position
