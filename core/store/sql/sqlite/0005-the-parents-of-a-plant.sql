-- SPDX-License-Identifier: GPL-3.0-or-later
-- Who a plant comes from, where that is known.

ALTER TABLE plant ADD COLUMN seed_parent_id INTEGER REFERENCES plant (id);
ALTER TABLE plant ADD COLUMN pollen_parent_id INTEGER REFERENCES plant (id);
