-- SPDX-License-Identifier: GPL-3.0-or-later
-- Parents of parents, what was seen of cones, male cones and pollen, corrections of the register,
-- and answers to what is due.

ALTER TABLE book ADD COLUMN hemisphere TEXT NOT NULL DEFAULT 'not known';

-- A parent is in the register, or said in words, or not known.
ALTER TABLE plant ADD COLUMN seed_parent_id INTEGER REFERENCES plant (id);
ALTER TABLE plant ADD COLUMN seed_parent_said TEXT NOT NULL DEFAULT '';
ALTER TABLE plant ADD COLUMN pollen_parent_id INTEGER REFERENCES plant (id);
ALTER TABLE plant ADD COLUMN pollen_parent_said TEXT NOT NULL DEFAULT '';
ALTER TABLE plant ADD COLUMN parents_certainty TEXT NOT NULL DEFAULT 'certain';
ALTER TABLE plant ADD COLUMN stands_in TEXT NOT NULL DEFAULT 'not known';

CREATE TABLE pollen_store (
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL UNIQUE CHECK (name <> ''),
  years_low REAL, years_high REAL, years_source TEXT NOT NULL,
  CHECK ((years_low IS NULL) = (years_high IS NULL))
) STRICT;
INSERT INTO pollen_store (name, years_low, years_high, years_source) VALUES
  ('refrigerator', 2, 3, 'common practice, no source: not frozen, better fresh'),
  ('freezer', NULL, NULL, 'common practice, no source: sources disagree about freezing');

CREATE TABLE cone_look (
  entry_id INTEGER PRIMARY KEY REFERENCES entry (id),
  scales TEXT NOT NULL,
  fertile_scales INTEGER CHECK (fertile_scales > 0)
) STRICT;
CREATE TABLE plant_note (
  entry_id INTEGER PRIMARY KEY REFERENCES entry (id),
  plant_id INTEGER NOT NULL REFERENCES plant (id),
  male_cone TEXT,
  to_place_id INTEGER REFERENCES place (id),
  CHECK ((male_cone IS NULL) <> (to_place_id IS NULL))
) STRICT;
CREATE INDEX plant_note_plant ON plant_note (plant_id);
CREATE TABLE pollen_note (
  entry_id INTEGER PRIMARY KEY REFERENCES entry (id),
  pollen_lot_id INTEGER NOT NULL REFERENCES pollen_lot (id),
  millilitres REAL CHECK (millilitres > 0),
  counted INTEGER CHECK (counted > 0),
  germinated INTEGER CHECK (germinated >= 0 AND germinated <= counted),
  conditions TEXT NOT NULL,
  CHECK ((counted IS NULL) = (germinated IS NULL))
) STRICT;
CREATE INDEX pollen_note_lot ON pollen_note (pollen_lot_id);
CREATE TABLE correction (
  entry_id INTEGER NOT NULL REFERENCES entry (id),
  position INTEGER NOT NULL CHECK (position > 0),
  plant_id INTEGER NOT NULL REFERENCES plant (id),
  field TEXT NOT NULL,
  stood TEXT NOT NULL,
  stands TEXT NOT NULL,
  PRIMARY KEY (entry_id, position)
) STRICT;
CREATE INDEX correction_plant ON correction (plant_id);
CREATE TABLE due_answer (
  entry_id INTEGER PRIMARY KEY REFERENCES entry (id),
  due TEXT NOT NULL CHECK (due <> ''),
  until TEXT
) STRICT;

CREATE TRIGGER cone_look_stays BEFORE UPDATE ON cone_look BEGIN SELECT RAISE(ABORT, 'an entry is never changed'); END;
CREATE TRIGGER cone_look_remains BEFORE DELETE ON cone_look BEGIN SELECT RAISE(ABORT, 'an entry is never deleted'); END;
CREATE TRIGGER plant_note_stays BEFORE UPDATE ON plant_note BEGIN SELECT RAISE(ABORT, 'an entry is never changed'); END;
CREATE TRIGGER plant_note_remains BEFORE DELETE ON plant_note BEGIN SELECT RAISE(ABORT, 'an entry is never deleted'); END;
CREATE TRIGGER pollen_note_stays BEFORE UPDATE ON pollen_note BEGIN SELECT RAISE(ABORT, 'an entry is never changed'); END;
CREATE TRIGGER pollen_note_remains BEFORE DELETE ON pollen_note BEGIN SELECT RAISE(ABORT, 'an entry is never deleted'); END;
CREATE TRIGGER correction_stays BEFORE UPDATE ON correction BEGIN SELECT RAISE(ABORT, 'an entry is never changed'); END;
CREATE TRIGGER correction_remains BEFORE DELETE ON correction BEGIN SELECT RAISE(ABORT, 'an entry is never deleted'); END;
CREATE TRIGGER due_answer_stays BEFORE UPDATE ON due_answer BEGIN SELECT RAISE(ABORT, 'an entry is never changed'); END;
CREATE TRIGGER due_answer_remains BEFORE DELETE ON due_answer BEGIN SELECT RAISE(ABORT, 'an entry is never deleted'); END;
