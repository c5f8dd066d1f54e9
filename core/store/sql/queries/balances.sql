WITH later AS MATERIALIZED (SELECT id FROM entry WHERE date > :day)
SELECT lot_id, state, sum(change) AS count
FROM (SELECT to_lot AS lot_id, to_state AS state, sum(count) AS change FROM movement
      WHERE entry_id NOT IN later GROUP BY to_lot, to_state
      UNION ALL
      SELECT from_lot, from_state, -sum(count) FROM movement
      WHERE entry_id NOT IN later GROUP BY from_lot, from_state) AS changes
GROUP BY lot_id, state
HAVING sum(change) <> 0
ORDER BY lot_id, state
