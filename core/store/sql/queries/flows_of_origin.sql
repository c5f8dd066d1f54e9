SELECT m.from_lot AS from_lot, m.from_state AS from_state, m.to_lot AS to_lot, m.to_state AS to_state,
       min(e.date) AS first, sum(m.count) AS count
FROM movement AS m
JOIN standing_entry AS e ON e.id = m.entry_id
JOIN lot ON lot.id = m.from_lot
WHERE lot.cone_id = :cone OR lot.purchase_id = :purchase
GROUP BY m.from_lot, m.from_state, m.to_lot, m.to_state
ORDER BY min(e.date), m.from_lot, m.to_lot
