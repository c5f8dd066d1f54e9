SELECT entry_id, pollen_lot_id, millilitres, counted, germinated, conditions FROM pollen_note WHERE entry_id BETWEEN :first AND :last
