SELECT changes.lot_id AS lot_id, changes.state AS state, sum(changes.change) AS count
FROM (SELECT entry_id, to_lot AS lot_id, to_state AS state, count AS change FROM movement WHERE to_lot = :lot_to
      UNION ALL
      SELECT entry_id, from_lot, from_state, -count FROM movement WHERE from_lot = :lot_from) AS changes
JOIN entry ON entry.id = changes.entry_id
WHERE entry.date <= :day
GROUP BY changes.lot_id, changes.state
HAVING sum(changes.change) <> 0
ORDER BY changes.lot_id, changes.state
