SELECT entry_id, pollen_lot_id, millilitres FROM pollination_pollen
WHERE entry_id BETWEEN :first AND :last ORDER BY entry_id, position
