SELECT id, kind, number, cone_id, purchase_id, judged, judged_by, pot_id, mix_id, note FROM lot ORDER BY id
