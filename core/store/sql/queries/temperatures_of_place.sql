SELECT place_id, at, celsius FROM temperature WHERE place_id = :place ORDER BY at
