SELECT lot_id, count(*) AS times, max(date) AS last FROM standing_entry
WHERE verb = :verb AND lot_id IS NOT NULL AND date <= :day
GROUP BY lot_id
