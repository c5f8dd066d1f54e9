SELECT lot_id, state, sum(change) AS count
FROM (SELECT to_lot AS lot_id, to_state AS state, count AS change FROM movement
      UNION ALL
      SELECT from_lot, from_state, -count FROM movement) AS changes
GROUP BY lot_id, state
HAVING sum(change) <> 0
ORDER BY lot_id, state
