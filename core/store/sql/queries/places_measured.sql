SELECT DISTINCT place_id FROM temperature ORDER BY place_id
