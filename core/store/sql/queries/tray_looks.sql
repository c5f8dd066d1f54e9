SELECT e.lot_id AS lot_id, e.date AS date,
       sum(CASE WHEN m.from_state = 'sown' AND m.to_state IN ('root', 'leaf') THEN m.count ELSE 0 END) AS germinated,
       sum(CASE WHEN m.to_state = 'leaf' THEN m.count ELSE 0 END) AS leaves,
       sum(CASE WHEN m.from_state = 'sown' AND m.to_state = 'leaf' THEN m.count ELSE 0 END) AS straight_to_leaf,
       sum(CASE WHEN m.from_state = 'sown' AND m.to_state NOT IN ('root', 'leaf') THEN m.count ELSE 0 END) AS removed
FROM standing_entry AS e
JOIN lot ON lot.id = e.lot_id AND lot.kind = 'tray'
LEFT JOIN movement AS m ON m.entry_id = e.id AND m.from_lot = e.lot_id
WHERE (e.verb = 'inspect' OR (m.from_state = 'sown' AND e.verb <> 'sow')) AND e.date <= :day
GROUP BY e.lot_id, e.date
ORDER BY e.lot_id, e.date
