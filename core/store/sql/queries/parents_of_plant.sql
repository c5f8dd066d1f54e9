SELECT seed_parent_id AS parent FROM plant WHERE id = :seed AND seed_parent_id IS NOT NULL
UNION SELECT pollen_parent_id FROM plant WHERE id = :pollen AND pollen_parent_id IS NOT NULL
