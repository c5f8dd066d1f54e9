-- SPDX-License-Identifier: GPL-3.0-or-later
-- What loggers measured at the places. A reading is not changed; one taken in by mistake, such as
-- in the wrong unit, can be taken out again, since nothing else rests on it.

CREATE TABLE temperature (
  id INTEGER PRIMARY KEY,
  place_id INTEGER NOT NULL REFERENCES place (id),
  at TEXT NOT NULL,
  celsius REAL NOT NULL,
  UNIQUE (place_id, at)
) STRICT;

CREATE TRIGGER temperature_stays BEFORE UPDATE ON temperature BEGIN SELECT RAISE(ABORT, 'a reading is never changed'); END;
