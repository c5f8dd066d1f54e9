SELECT m.to_lot AS lot_id, e.date AS date, sum(m.count) AS count
FROM movement AS m JOIN standing_entry AS e ON e.id = m.entry_id
WHERE (m.from_lot <> m.to_lot OR m.from_state IN ('cone', 'bought in'))
GROUP BY m.to_lot, e.date
ORDER BY m.to_lot, e.date
