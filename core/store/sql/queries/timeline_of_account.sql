SELECT entry.date AS date, sum(change) AS change
FROM (SELECT entry_id, count AS change FROM movement WHERE to_lot = :to_lot AND to_state = :to_state
      UNION ALL
      SELECT entry_id, -count FROM movement WHERE from_lot = :from_lot AND from_state = :from_state) AS changes
JOIN entry ON entry.id = changes.entry_id
GROUP BY entry.date
ORDER BY entry.date
