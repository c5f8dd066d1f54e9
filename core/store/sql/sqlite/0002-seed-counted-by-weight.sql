-- SPDX-License-Identifier: GPL-3.0-or-later
-- Small seed is counted by weight, and what was weighed stands with the harvest. What a grower
-- reckons with, such as the worth of a plant, is asked once.

CREATE TABLE weighing (
  entry_id INTEGER PRIMARY KEY REFERENCES entry (id),
  grams REAL NOT NULL CHECK (grams > 0)
) STRICT;
CREATE TABLE weighing_hundred (
  entry_id INTEGER NOT NULL REFERENCES entry (id),
  position INTEGER NOT NULL CHECK (position > 0),
  grams REAL NOT NULL CHECK (grams > 0),
  PRIMARY KEY (entry_id, position)
) STRICT;

CREATE TABLE figure (
  name TEXT PRIMARY KEY CHECK (name <> ''),
  value REAL NOT NULL
) STRICT;

CREATE TRIGGER weighing_stays BEFORE UPDATE ON weighing BEGIN SELECT RAISE(ABORT, 'an entry is never changed'); END;
CREATE TRIGGER weighing_remains BEFORE DELETE ON weighing BEGIN SELECT RAISE(ABORT, 'an entry is never deleted'); END;
CREATE TRIGGER weighing_hundred_stays BEFORE UPDATE ON weighing_hundred BEGIN SELECT RAISE(ABORT, 'an entry is never changed'); END;
CREATE TRIGGER weighing_hundred_remains BEFORE DELETE ON weighing_hundred BEGIN SELECT RAISE(ABORT, 'an entry is never deleted'); END;
