SELECT reverses FROM entry WHERE reverses IS NOT NULL
