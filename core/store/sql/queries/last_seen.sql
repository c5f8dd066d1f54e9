SELECT lot_id, max(date) AS date FROM sighting WHERE date <= :day GROUP BY lot_id ORDER BY lot_id
