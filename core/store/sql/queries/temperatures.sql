SELECT place_id, at, celsius FROM temperature ORDER BY id
