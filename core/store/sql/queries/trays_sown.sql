SELECT m.to_lot AS lot_id, min(e.date) AS date, sum(m.count) AS seeds
FROM movement AS m JOIN standing_entry AS e ON e.id = m.entry_id
WHERE m.to_state = 'sown' AND m.from_state <> 'root' AND m.from_state <> 'leaf' AND e.date <= :day
GROUP BY m.to_lot
ORDER BY m.to_lot
