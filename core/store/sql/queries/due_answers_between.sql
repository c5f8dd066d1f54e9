SELECT entry_id, due, until FROM due_answer WHERE entry_id BETWEEN :first AND :last
