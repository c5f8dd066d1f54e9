-- SPDX-License-Identifier: GPL-3.0-or-later
-- What the season plan reckons with: what suppliers offer, how much of each good is kept and can
-- be, targets, and lots that are to stay where they are told. None of it is a count of seed or plants, so
-- offers, targets and pins may be taken out again.

CREATE TABLE offer (
  id INTEGER PRIMARY KEY,
  good TEXT NOT NULL CHECK (good <> ''),
  supplier TEXT NOT NULL CHECK (supplier <> ''),
  form TEXT NOT NULL CHECK (form IN ('bag', 'bulk', 'bale')),
  litres REAL NOT NULL CHECK (litres > 0),
  expansion REAL NOT NULL CHECK (expansion >= 1),
  cents INTEGER NOT NULL CHECK (cents >= 0),
  delivery_cents INTEGER NOT NULL CHECK (delivery_cents >= 0),
  lead_days INTEGER NOT NULL CHECK (lead_days >= 0),
  least INTEGER NOT NULL CHECK (least > 0),
  kilograms REAL CHECK (kilograms > 0),
  UNIQUE (good, supplier, form, litres)
) STRICT;

CREATE TABLE good (
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL UNIQUE CHECK (name <> ''),
  on_hand REAL NOT NULL CHECK (on_hand >= 0),
  counted TEXT,
  room REAL CHECK (room >= 0),
  keeps INTEGER CHECK (keeps > 0),
  cents_a_litre_and_month REAL NOT NULL CHECK (cents_a_litre_and_month >= 0)
) STRICT;

CREATE TABLE target (
  id INTEGER PRIMARY KEY,
  cross_name TEXT NOT NULL CHECK (cross_name <> ''),
  taxon_id INTEGER NOT NULL REFERENCES taxon (id),
  pot_id INTEGER NOT NULL REFERENCES pot (id),
  plants INTEGER NOT NULL CHECK (plants > 0),
  by_day TEXT NOT NULL,
  assurance REAL NOT NULL CHECK (assurance > 0 AND assurance < 1)
) STRICT;

-- What cold comes to a place, and the load its bench bears; no row where neither is known.
CREATE TABLE place_limits (
  place_id INTEGER PRIMARY KEY REFERENCES place (id),
  kilograms_a_square_metre REAL CHECK (kilograms_a_square_metre > 0),
  frost TEXT NOT NULL CHECK (frost IN ('not known', 'no frost', 'light frost', 'hard frost'))
) STRICT;

CREATE TABLE pin (
  lot_id INTEGER PRIMARY KEY REFERENCES lot (id),
  place_id INTEGER NOT NULL REFERENCES place (id)
) STRICT;
