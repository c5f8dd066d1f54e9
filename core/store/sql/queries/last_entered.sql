WITH stands AS (
  SELECT id, lot_id, date FROM entry
  WHERE reverses IS NULL AND date <= :day
    AND id NOT IN (SELECT reverses FROM entry WHERE reverses IS NOT NULL))
SELECT lot_id, max(date) AS date
FROM (SELECT lot_id, date FROM stands WHERE lot_id IS NOT NULL
      UNION ALL
      SELECT m.from_lot, s.date FROM movement AS m JOIN stands AS s ON s.id = m.entry_id
      UNION ALL
      SELECT m.to_lot, s.date FROM movement AS m JOIN stands AS s ON s.id = m.entry_id) AS entered
GROUP BY lot_id
