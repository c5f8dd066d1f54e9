-- SPDX-License-Identifier: GPL-3.0-or-later
-- Each entry gets a link that vouches for it and for all before it. The entries of an older book are
-- chained by the program, in the transaction of the last step.

CREATE TABLE entry_link (
  entry_id INTEGER PRIMARY KEY REFERENCES entry (id),
  hash TEXT NOT NULL CHECK (length(hash) = 64)
) STRICT;

CREATE TRIGGER entry_link_stays BEFORE UPDATE ON entry_link BEGIN SELECT RAISE(ABORT, 'a link is never changed'); END;
CREATE TRIGGER entry_link_remains BEFORE DELETE ON entry_link BEGIN SELECT RAISE(ABORT, 'a link is never deleted'); END;
