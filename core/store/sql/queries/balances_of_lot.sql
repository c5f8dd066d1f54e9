SELECT lot_id, state, sum(change) AS count
FROM (SELECT entry_id, to_lot AS lot_id, to_state AS state, count AS change FROM movement WHERE to_lot = :lot_to
      UNION ALL
      SELECT entry_id, from_lot, from_state, -count FROM movement WHERE from_lot = :lot_from) AS changes
JOIN entry ON entry.id = changes.entry_id
WHERE entry.date <= :day
GROUP BY lot_id, state
HAVING sum(change) <> 0
ORDER BY lot_id, state
