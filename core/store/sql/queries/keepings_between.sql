SELECT entry_id, store, celsius, until_from, until_to FROM keeping WHERE entry_id BETWEEN :first AND :last
