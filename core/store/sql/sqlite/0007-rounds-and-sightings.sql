-- SPDX-License-Identifier: GPL-3.0-or-later
-- Rounds through the nursery, so that one broken off goes on where it was, and every sight of a
-- lot's label: where it was seen, on which day, and how.

CREATE TABLE round (
  id INTEGER PRIMARY KEY,
  began TEXT NOT NULL,
  place_id INTEGER REFERENCES place (id),
  who TEXT NOT NULL,
  bench_id INTEGER REFERENCES place (id),
  in_hand_id INTEGER REFERENCES lot (id),
  roots INTEGER NOT NULL CHECK (roots >= 0),
  leaves INTEGER NOT NULL CHECK (leaves >= 0),
  dead INTEGER NOT NULL CHECK (dead >= 0),
  ended TEXT
) STRICT;

CREATE TABLE round_stop (
  round_id INTEGER NOT NULL REFERENCES round (id),
  position INTEGER NOT NULL CHECK (position > 0),
  lot_id INTEGER NOT NULL REFERENCES lot (id),
  place_id INTEGER REFERENCES place (id),
  PRIMARY KEY (round_id, position),
  UNIQUE (round_id, lot_id)
) STRICT;

CREATE TABLE round_entry (
  entry_id INTEGER PRIMARY KEY REFERENCES entry (id),
  round_id INTEGER NOT NULL REFERENCES round (id)
) STRICT;
CREATE INDEX round_entry_round ON round_entry (round_id);

CREATE TABLE sighting (
  id INTEGER PRIMARY KEY,
  lot_id INTEGER NOT NULL REFERENCES lot (id),
  place_id INTEGER REFERENCES place (id),
  date TEXT NOT NULL,
  how TEXT NOT NULL CHECK (how IN ('scan', 'picture', 'log')),
  source TEXT NOT NULL,
  round_id INTEGER REFERENCES round (id)
) STRICT;
CREATE INDEX sighting_lot ON sighting (lot_id, date);
CREATE INDEX sighting_round ON sighting (round_id);

CREATE TRIGGER round_remains BEFORE DELETE ON round BEGIN SELECT RAISE(ABORT, 'a round is never deleted'); END;
CREATE TRIGGER round_stop_stays BEFORE UPDATE ON round_stop BEGIN SELECT RAISE(ABORT, 'the stops of a round are never changed'); END;
CREATE TRIGGER round_stop_remains BEFORE DELETE ON round_stop BEGIN SELECT RAISE(ABORT, 'the stops of a round are never deleted'); END;
CREATE TRIGGER round_entry_stays BEFORE UPDATE ON round_entry BEGIN SELECT RAISE(ABORT, 'what a round entered is never changed'); END;
CREATE TRIGGER round_entry_remains BEFORE DELETE ON round_entry BEGIN SELECT RAISE(ABORT, 'what a round entered is never deleted'); END;
CREATE TRIGGER sighting_stays BEFORE UPDATE ON sighting BEGIN SELECT RAISE(ABORT, 'a sighting is never changed'); END;
CREATE TRIGGER sighting_remains BEFORE DELETE ON sighting BEGIN SELECT RAISE(ABORT, 'a sighting is never deleted'); END;
