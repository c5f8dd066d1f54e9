-- SPDX-License-Identifier: GPL-3.0-or-later
-- What labels are printed on, what they say, how true each printer prints, and every label printed.

CREATE TABLE label_stock (
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL UNIQUE CHECK (name <> ''),
  page_width_mm REAL NOT NULL CHECK (page_width_mm > 0),
  page_height_mm REAL NOT NULL CHECK (page_height_mm > 0),
  left_mm REAL NOT NULL CHECK (left_mm >= 0),
  top_mm REAL NOT NULL CHECK (top_mm >= 0),
  label_width_mm REAL NOT NULL CHECK (label_width_mm > 0),
  label_height_mm REAL NOT NULL CHECK (label_height_mm > 0),
  column_pitch_mm REAL NOT NULL CHECK (column_pitch_mm >= 0),
  row_pitch_mm REAL NOT NULL CHECK (row_pitch_mm >= 0),
  columns INTEGER NOT NULL CHECK (columns > 0),
  rows INTEGER NOT NULL CHECK (rows > 0),
  in_soil_mm REAL NOT NULL CHECK (in_soil_mm >= 0)
) STRICT;

CREATE TABLE label_layout (
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL UNIQUE CHECK (name <> ''),
  what INTEGER NOT NULL CHECK (what IN (0, 1)),
  origin INTEGER NOT NULL CHECK (origin IN (0, 1)),
  day INTEGER NOT NULL CHECK (day IN (0, 1)),
  count INTEGER NOT NULL CHECK (count IN (0, 1)),
  caution INTEGER NOT NULL CHECK (caution IN (0, 1))
) STRICT;

CREATE TABLE printer_scale (
  id INTEGER PRIMARY KEY,
  printer TEXT NOT NULL CHECK (printer <> ''),
  stock TEXT NOT NULL,
  across_mm REAL NOT NULL CHECK (across_mm > 0),
  down_mm REAL NOT NULL CHECK (down_mm > 0),
  UNIQUE (printer, stock)
) STRICT;

CREATE TABLE label_print (
  id INTEGER PRIMARY KEY,
  kind TEXT NOT NULL,
  number INTEGER NOT NULL CHECK (number > 0),
  printed TEXT NOT NULL,
  stock TEXT NOT NULL,
  copies INTEGER NOT NULL CHECK (copies > 0)
) STRICT;
CREATE INDEX label_print_thing ON label_print (kind, number);

CREATE TRIGGER label_print_stays BEFORE UPDATE ON label_print BEGIN SELECT RAISE(ABORT, 'a print is never changed'); END;
CREATE TRIGGER label_print_remains BEFORE DELETE ON label_print BEGIN SELECT RAISE(ABORT, 'a print is never deleted'); END;
