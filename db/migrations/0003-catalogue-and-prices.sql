-- archetype: 'seed' rows follow the catalogue; 'own' rows are the user's, and no update touches them.
-- A seed row that left the catalogue stays, marked retired, since notes and clubs may name it.
CREATE TABLE archetype (
  id TEXT NOT NULL PRIMARY KEY CHECK (length(id) BETWEEN 1 AND 100),
  source TEXT NOT NULL CHECK (source IN ('seed', 'own')),
  kind TEXT NOT NULL CHECK (kind IN ('driver', 'fairway', 'hybrid', 'iron', 'irons', 'wedge', 'putter')),
  loft_deg REAL NOT NULL CHECK (loft_deg BETWEEN -20 AND 90), -- of a set: its 7-iron's
  forgiveness INTEGER NOT NULL CHECK (forgiveness BETWEEN 1 AND 4),
  spin_tier TEXT NOT NULL CHECK (spin_tier IN ('low', 'mid', 'high')),
  length_in REAL NOT NULL CHECK (length_in BETWEEN 10 AND 60),
  members_json TEXT CHECK (json_valid(members_json) AND json_type(members_json) = 'array'),
  label TEXT CHECK (length(label) <= 1000),
  retired_at TEXT CHECK (retired_at GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]T*'),
  CHECK ((kind = 'irons') = (members_json IS NOT NULL))
) STRICT;
CREATE INDEX archetype_by_kind ON archetype (kind, loft_deg);

-- price_note: one used price somebody saw. With a bag_id it came in that bag's file and speaks for that bag alone.
CREATE TABLE price_note (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  archetype_id TEXT NOT NULL REFERENCES archetype (id) ON DELETE CASCADE,
  bag_id INTEGER REFERENCES bag (id) ON DELETE CASCADE,
  position INTEGER NOT NULL DEFAULT 0 CHECK (position >= 0),
  low_minor INTEGER NOT NULL CHECK (low_minor BETWEEN 0 AND 1000000000000),
  likely_minor INTEGER NOT NULL CHECK (likely_minor BETWEEN 0 AND 1000000000000),
  high_minor INTEGER NOT NULL CHECK (high_minor BETWEEN 0 AND 1000000000000),
  currency TEXT NOT NULL CHECK (currency GLOB '[A-Z][A-Z][A-Z]'),
  seen_on TEXT CHECK (date(seen_on) = seen_on AND length(seen_on) = 10),
  condition TEXT CHECK (condition IN ('unmarked', 'light wear', 'played', 'worn', 'damaged')),
  place TEXT CHECK (length(place) <= 10000), -- where, in the user's own words
  remark TEXT CHECK (length(remark) <= 10000),
  created_at TEXT NOT NULL CHECK (created_at GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]T*'),
  CHECK (low_minor <= likely_minor AND likely_minor <= high_minor),
  CHECK (bag_id IS NOT NULL OR position = 0) -- so that the index orders everybody's notes by age
) STRICT;
CREATE INDEX price_note_by_archetype ON price_note (archetype_id, seen_on);
CREATE INDEX price_note_by_bag ON price_note (bag_id, position);

-- cost_line: what a purchase or a sale costs beside the club, always the user's own assumption.
-- With no bag_id it is a default that new bags start from.
CREATE TABLE cost_line (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  bag_id INTEGER REFERENCES bag (id) ON DELETE CASCADE,
  kind TEXT NOT NULL
    CHECK (kind IN ('delivery', 'regrip', 'sell-fee', 'sell-postage', 'bend', 'shaft', 'other')),
  label TEXT CHECK (length(label) <= 1000),
  amount_minor INTEGER CHECK (amount_minor BETWEEN 0 AND 1000000000000),
  amount_currency TEXT CHECK (amount_currency GLOB '[A-Z][A-Z][A-Z]'),
  percent REAL CHECK (percent BETWEEN 0 AND 100),
  enabled INTEGER NOT NULL CHECK (enabled IN (0, 1)),
  position INTEGER NOT NULL DEFAULT 0 CHECK (position >= 0),
  CHECK ((amount_minor IS NULL) = (amount_currency IS NULL)),
  CHECK ((amount_minor IS NULL) <> (percent IS NULL))
) STRICT;
CREATE UNIQUE INDEX cost_line_one_of_a_kind ON cost_line (ifnull(bag_id, 0), kind)
  WHERE kind IN ('delivery', 'regrip', 'sell-fee', 'sell-postage');
CREATE INDEX cost_line_by_bag ON cost_line (bag_id, position);
