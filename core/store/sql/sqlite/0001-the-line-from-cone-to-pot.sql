-- SPDX-License-Identifier: GPL-3.0-or-later
-- The first book: registers, lots, and the ledger that nothing is taken out of again.

CREATE TABLE book (
  id INTEGER PRIMARY KEY CHECK (id = 1),
  name TEXT NOT NULL,
  series INTEGER NOT NULL CHECK (series BETWEEN 10 AND 99),
  invented INTEGER NOT NULL CHECK (invented IN (0, 1)),
  made_on TEXT NOT NULL
) STRICT;

CREATE TABLE taxon (
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL UNIQUE CHECK (name <> ''),
  leaf_colour TEXT NOT NULL, leaf_colour_source TEXT NOT NULL,
  light TEXT NOT NULL, light_source TEXT NOT NULL,
  frost TEXT NOT NULL, frost_source TEXT NOT NULL,
  float_test TEXT NOT NULL, float_test_source TEXT NOT NULL,
  ripening_low REAL, ripening_high REAL, ripening_source TEXT NOT NULL,
  after_ripening_low REAL, after_ripening_high REAL, after_ripening_source TEXT NOT NULL
) STRICT;

CREATE TABLE place (
  id INTEGER PRIMARY KEY,
  number INTEGER NOT NULL UNIQUE CHECK (number > 0),
  name TEXT NOT NULL UNIQUE CHECK (name <> ''),
  kind TEXT NOT NULL,
  within_id INTEGER REFERENCES place (id),
  length_mm REAL NOT NULL CHECK (length_mm >= 0),
  width_mm REAL NOT NULL CHECK (width_mm >= 0),
  light TEXT NOT NULL,
  walk INTEGER NOT NULL
) STRICT;

CREATE TABLE pot (
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL UNIQUE CHECK (name <> ''),
  litres REAL NOT NULL CHECK (litres > 0),
  shape TEXT NOT NULL,
  length_mm REAL NOT NULL CHECK (length_mm > 0),
  width_mm REAL NOT NULL CHECK (width_mm > 0),
  cells INTEGER NOT NULL CHECK (cells > 0),
  source TEXT NOT NULL
) STRICT;

CREATE TABLE mix (
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL UNIQUE CHECK (name <> ''),
  shrink REAL NOT NULL CHECK (shrink >= 0 AND shrink < 1),
  loss REAL NOT NULL CHECK (loss >= 0),
  source TEXT NOT NULL
) STRICT;

CREATE TABLE mix_part (
  mix_id INTEGER NOT NULL REFERENCES mix (id),
  position INTEGER NOT NULL CHECK (position > 0),
  name TEXT NOT NULL CHECK (name <> ''),
  share REAL NOT NULL CHECK (share > 0),
  PRIMARY KEY (mix_id, position),
  UNIQUE (mix_id, name)
) STRICT;

CREATE TABLE route (
  id INTEGER PRIMARY KEY,
  taxon_id INTEGER NOT NULL UNIQUE REFERENCES taxon (id),
  germination REAL NOT NULL CHECK (germination > 0 AND germination <= 1),
  germination_low REAL NOT NULL CHECK (germination_low >= 0),
  germination_high REAL NOT NULL CHECK (germination_high >= germination_low),
  source TEXT NOT NULL
) STRICT;

CREATE TABLE route_step (
  route_id INTEGER NOT NULL REFERENCES route (id),
  position INTEGER NOT NULL CHECK (position > 0),
  pot_id INTEGER NOT NULL REFERENCES pot (id),
  mix_id INTEGER NOT NULL REFERENCES mix (id),
  months_low REAL NOT NULL CHECK (months_low >= 0),
  months_high REAL NOT NULL CHECK (months_high >= months_low),
  survival REAL NOT NULL CHECK (survival > 0 AND survival <= 1),
  light TEXT NOT NULL,
  source TEXT NOT NULL,
  PRIMARY KEY (route_id, position)
) STRICT;

CREATE TABLE plant (
  id INTEGER PRIMARY KEY,
  number INTEGER NOT NULL UNIQUE CHECK (number > 0),
  name TEXT NOT NULL,
  taxon_id INTEGER NOT NULL REFERENCES taxon (id),
  taxon_certainty TEXT NOT NULL,
  sex TEXT NOT NULL,
  origin TEXT NOT NULL,
  acquired TEXT,
  place_id INTEGER REFERENCES place (id),
  note TEXT NOT NULL
) STRICT;

CREATE TABLE paper (
  id INTEGER PRIMARY KEY,
  plant_id INTEGER NOT NULL REFERENCES plant (id),
  kind TEXT NOT NULL,
  number TEXT NOT NULL,
  issued TEXT,
  authority TEXT NOT NULL,
  note TEXT NOT NULL
) STRICT;
CREATE INDEX paper_plant ON paper (plant_id);

CREATE TABLE pollen_lot (
  id INTEGER PRIMARY KEY,
  number INTEGER NOT NULL UNIQUE CHECK (number > 0),
  plant_id INTEGER NOT NULL REFERENCES plant (id),
  collected TEXT NOT NULL,
  millilitres REAL CHECK (millilitres > 0),
  store TEXT NOT NULL,
  note TEXT NOT NULL
) STRICT;

CREATE TABLE cone (
  id INTEGER PRIMARY KEY,
  number INTEGER NOT NULL UNIQUE CHECK (number > 0),
  plant_id INTEGER NOT NULL REFERENCES plant (id),
  first_seen TEXT,
  note TEXT NOT NULL
) STRICT;

CREATE TABLE purchase (
  id INTEGER PRIMARY KEY,
  number INTEGER NOT NULL UNIQUE CHECK (number > 0),
  taxon_id INTEGER NOT NULL REFERENCES taxon (id),
  supplier TEXT NOT NULL,
  bought TEXT NOT NULL,
  note TEXT NOT NULL
) STRICT;

CREATE TABLE lot (
  id INTEGER PRIMARY KEY,
  kind TEXT NOT NULL CHECK (kind IN ('batch', 'tray', 'pot group')),
  number INTEGER NOT NULL CHECK (number > 0),
  cone_id INTEGER REFERENCES cone (id),
  purchase_id INTEGER REFERENCES purchase (id),
  judged TEXT NOT NULL,
  judged_by TEXT NOT NULL,
  pot_id INTEGER REFERENCES pot (id),
  mix_id INTEGER REFERENCES mix (id),
  note TEXT NOT NULL,
  UNIQUE (kind, number),
  CHECK ((cone_id IS NULL) <> (purchase_id IS NULL)),
  CHECK ((kind = 'batch') = (pot_id IS NULL))
) STRICT;
CREATE INDEX lot_cone ON lot (cone_id);

CREATE TABLE entry (
  id INTEGER PRIMARY KEY,
  verb TEXT NOT NULL,
  date TEXT NOT NULL,
  lot_id INTEGER REFERENCES lot (id),
  cone_id INTEGER REFERENCES cone (id),
  place_id INTEGER REFERENCES place (id),
  who TEXT NOT NULL,
  note TEXT NOT NULL,
  reverses INTEGER UNIQUE REFERENCES entry (id),
  entered TEXT NOT NULL,
  CHECK ((verb = 'reverse') = (reverses IS NOT NULL)),
  CHECK (place_id IS NULL OR lot_id IS NOT NULL)
) STRICT;
CREATE INDEX entry_lot ON entry (lot_id);
CREATE INDEX entry_cone ON entry (cone_id);

CREATE TABLE movement (
  id INTEGER PRIMARY KEY,
  entry_id INTEGER NOT NULL REFERENCES entry (id),
  from_lot INTEGER NOT NULL REFERENCES lot (id),
  from_state TEXT NOT NULL,
  to_lot INTEGER NOT NULL REFERENCES lot (id),
  to_state TEXT NOT NULL,
  count INTEGER NOT NULL CHECK (count > 0),
  CHECK (from_lot <> to_lot OR from_state <> to_state)
) STRICT;
CREATE INDEX movement_entry ON movement (entry_id);
CREATE INDEX movement_from ON movement (from_lot, from_state);
CREATE INDEX movement_to ON movement (to_lot, to_state);

CREATE TABLE pollination (
  entry_id INTEGER PRIMARY KEY REFERENCES entry (id),
  method TEXT NOT NULL
) STRICT;
CREATE TABLE pollination_pollen (
  entry_id INTEGER NOT NULL REFERENCES entry (id),
  position INTEGER NOT NULL CHECK (position > 0),
  pollen_lot_id INTEGER REFERENCES pollen_lot (id),
  millilitres REAL CHECK (millilitres > 0),
  PRIMARY KEY (entry_id, position)
) STRICT;
CREATE TABLE cleaning (
  entry_id INTEGER PRIMARY KEY REFERENCES entry (id),
  soak_days INTEGER NOT NULL CHECK (soak_days >= 0)
) STRICT;
CREATE TABLE sorting (
  entry_id INTEGER PRIMARY KEY REFERENCES entry (id),
  test TEXT NOT NULL
) STRICT;
CREATE TABLE keeping (
  entry_id INTEGER PRIMARY KEY REFERENCES entry (id),
  store TEXT NOT NULL,
  celsius REAL,
  until_from TEXT,
  until_to TEXT
) STRICT;
CREATE TABLE sale (
  entry_id INTEGER PRIMARY KEY REFERENCES entry (id),
  buyer TEXT NOT NULL,
  cents INTEGER CHECK (cents >= 0)
) STRICT;

-- What still stands: neither reversed nor a reversal.
CREATE VIEW standing_entry AS
  SELECT entry.* FROM entry
  WHERE entry.reverses IS NULL
    AND NOT EXISTS (SELECT 1 FROM entry AS later WHERE later.reverses = entry.id);

-- The gate is in the program; these hold the door when something else writes.
CREATE TRIGGER movement_one_origin BEFORE INSERT ON movement
WHEN NEW.from_lot <> NEW.to_lot AND NOT EXISTS (
  SELECT 1 FROM lot AS a JOIN lot AS b
    ON (a.cone_id = b.cone_id OR a.purchase_id = b.purchase_id)
  WHERE a.id = NEW.from_lot AND b.id = NEW.to_lot)
BEGIN SELECT RAISE(ABORT, 'a lot holds seed of one cone'); END;

CREATE TRIGGER lot_stays BEFORE UPDATE ON lot BEGIN SELECT RAISE(ABORT, 'a lot is never changed'); END;
CREATE TRIGGER lot_remains BEFORE DELETE ON lot BEGIN SELECT RAISE(ABORT, 'a lot is never deleted'); END;
CREATE TRIGGER entry_stays BEFORE UPDATE ON entry BEGIN SELECT RAISE(ABORT, 'an entry is never changed'); END;
CREATE TRIGGER entry_remains BEFORE DELETE ON entry BEGIN SELECT RAISE(ABORT, 'an entry is never deleted'); END;
CREATE TRIGGER movement_stays BEFORE UPDATE ON movement BEGIN SELECT RAISE(ABORT, 'a movement is never changed'); END;
CREATE TRIGGER movement_remains BEFORE DELETE ON movement BEGIN SELECT RAISE(ABORT, 'a movement is never deleted'); END;
CREATE TRIGGER pollination_stays BEFORE UPDATE ON pollination BEGIN SELECT RAISE(ABORT, 'an entry is never changed'); END;
CREATE TRIGGER pollination_remains BEFORE DELETE ON pollination BEGIN SELECT RAISE(ABORT, 'an entry is never deleted'); END;
CREATE TRIGGER pollination_pollen_stays BEFORE UPDATE ON pollination_pollen BEGIN SELECT RAISE(ABORT, 'an entry is never changed'); END;
CREATE TRIGGER pollination_pollen_remains BEFORE DELETE ON pollination_pollen BEGIN SELECT RAISE(ABORT, 'an entry is never deleted'); END;
CREATE TRIGGER cleaning_stays BEFORE UPDATE ON cleaning BEGIN SELECT RAISE(ABORT, 'an entry is never changed'); END;
CREATE TRIGGER cleaning_remains BEFORE DELETE ON cleaning BEGIN SELECT RAISE(ABORT, 'an entry is never deleted'); END;
CREATE TRIGGER sorting_stays BEFORE UPDATE ON sorting BEGIN SELECT RAISE(ABORT, 'an entry is never changed'); END;
CREATE TRIGGER sorting_remains BEFORE DELETE ON sorting BEGIN SELECT RAISE(ABORT, 'an entry is never deleted'); END;
CREATE TRIGGER keeping_stays BEFORE UPDATE ON keeping BEGIN SELECT RAISE(ABORT, 'an entry is never changed'); END;
CREATE TRIGGER keeping_remains BEFORE DELETE ON keeping BEGIN SELECT RAISE(ABORT, 'an entry is never deleted'); END;
CREATE TRIGGER sale_stays BEFORE UPDATE ON sale BEGIN SELECT RAISE(ABORT, 'an entry is never changed'); END;
CREATE TRIGGER sale_remains BEFORE DELETE ON sale BEGIN SELECT RAISE(ABORT, 'an entry is never deleted'); END;
