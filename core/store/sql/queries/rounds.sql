SELECT id, began, place_id, who, bench_id, in_hand_id, roots, leaves, dead, ended FROM round ORDER BY id
