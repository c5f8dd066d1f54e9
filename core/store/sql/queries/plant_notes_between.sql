SELECT entry_id, plant_id, male_cone, to_place_id FROM plant_note WHERE entry_id BETWEEN :first AND :last
