SELECT id FROM entry WHERE reverses = :entry
