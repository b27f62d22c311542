-- lot: clubs bought or sold together. key is the id in the bag file; listed says that its `sets` named it.
CREATE TABLE lot (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  bag_id INTEGER NOT NULL REFERENCES bag (id) ON DELETE CASCADE,
  key TEXT NOT NULL CHECK (length(key) BETWEEN 1 AND 200),
  position INTEGER NOT NULL DEFAULT 0 CHECK (position >= 0),
  listed INTEGER NOT NULL CHECK (listed IN (0, 1)),
  sell_low_minor INTEGER CHECK (sell_low_minor BETWEEN 0 AND 1000000000000),
  sell_likely_minor INTEGER CHECK (sell_likely_minor BETWEEN 0 AND 1000000000000),
  sell_high_minor INTEGER CHECK (sell_high_minor BETWEEN 0 AND 1000000000000),
  sell_currency TEXT CHECK (sell_currency GLOB '[A-Z][A-Z][A-Z]'),
  UNIQUE (bag_id, key),
  UNIQUE (bag_id, id), -- what club (bag_id, lot_id) refers to
  CHECK (sell_low_minor <= sell_likely_minor AND sell_likely_minor <= sell_high_minor),
  CHECK (
    (sell_currency IS NULL) + (sell_low_minor IS NULL) + (sell_likely_minor IS NULL) + (sell_high_minor IS NULL)
    IN (0, 4)
  )
) STRICT;

-- club: what the bag holds, and what it held (place 'shelf' or 'sold').
CREATE TABLE club (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  bag_id INTEGER NOT NULL REFERENCES bag (id) ON DELETE CASCADE,
  key TEXT NOT NULL CHECK (length(key) BETWEEN 1 AND 200),
  position INTEGER NOT NULL DEFAULT 0 CHECK (position >= 0),
  place TEXT NOT NULL DEFAULT 'bag' CHECK (place IN ('bag', 'shelf', 'sold')),
  kind TEXT NOT NULL CHECK (kind IN ('driver', 'fairway', 'hybrid', 'iron', 'wedge', 'putter')),
  label TEXT CHECK (length(label) <= 1000),
  loft_deg REAL CHECK (loft_deg BETWEEN -20 AND 90),
  loft_measured INTEGER CHECK (loft_measured IN (0, 1)),
  lie_deg REAL CHECK (lie_deg BETWEEN 30 AND 100),
  length_in REAL CHECK (length_in BETWEEN 10 AND 60),
  carry_yd REAL CHECK (carry_yd > 0 AND carry_yd <= 500),
  carry_sd_yd REAL CHECK (carry_sd_yd BETWEEN 0 AND 500),
  shots INTEGER CHECK (shots BETWEEN 0 AND 10000000),
  total_yd REAL CHECK (total_yd > 0 AND total_yd <= 700),
  ball_speed_mph REAL CHECK (ball_speed_mph > 0 AND ball_speed_mph <= 300),
  launch_deg REAL CHECK (launch_deg BETWEEN -90 AND 90),
  spin_rpm REAL CHECK (spin_rpm BETWEEN 0 AND 30000),
  forgiveness INTEGER CHECK (forgiveness BETWEEN 1 AND 4),
  spin_tier TEXT CHECK (spin_tier IN ('low', 'mid', 'high')),
  flex TEXT CHECK (flex IN ('L', 'A', 'R', 'S', 'X')),
  year_made INTEGER CHECK (year_made BETWEEN 1800 AND 2200),
  go_to INTEGER CHECK (go_to IN (0, 1)),
  lot_id INTEGER,
  sell_low_minor INTEGER CHECK (sell_low_minor BETWEEN 0 AND 1000000000000),
  sell_likely_minor INTEGER CHECK (sell_likely_minor BETWEEN 0 AND 1000000000000),
  sell_high_minor INTEGER CHECK (sell_high_minor BETWEEN 0 AND 1000000000000),
  sell_currency TEXT CHECK (sell_currency GLOB '[A-Z][A-Z][A-Z]'),
  archetype_id TEXT REFERENCES archetype (id) ON DELETE SET NULL, -- what it was bought as
  bought_minor INTEGER CHECK (bought_minor BETWEEN 0 AND 1000000000000),
  bought_currency TEXT CHECK (bought_currency GLOB '[A-Z][A-Z][A-Z]'),
  bought_on TEXT CHECK (date(bought_on) = bought_on AND length(bought_on) = 10),
  sold_minor INTEGER CHECK (sold_minor BETWEEN 0 AND 1000000000000),
  sold_currency TEXT CHECK (sold_currency GLOB '[A-Z][A-Z][A-Z]'),
  sold_on TEXT CHECK (date(sold_on) = sold_on AND length(sold_on) = 10),
  UNIQUE (bag_id, key),
  -- a club's set is a set of its own bag; a set goes only after its clubs have left it
  FOREIGN KEY (bag_id, lot_id) REFERENCES lot (bag_id, id),
  CHECK (sell_low_minor <= sell_likely_minor AND sell_likely_minor <= sell_high_minor),
  CHECK (
    (sell_currency IS NULL) + (sell_low_minor IS NULL) + (sell_likely_minor IS NULL) + (sell_high_minor IS NULL)
    IN (0, 4)
  ),
  CHECK ((bought_minor IS NULL) = (bought_currency IS NULL)),
  CHECK ((sold_minor IS NULL) = (sold_currency IS NULL))
) STRICT;
CREATE INDEX club_by_bag ON club (bag_id, place, position);
CREATE INDEX club_by_lot ON club (bag_id, lot_id);
CREATE INDEX club_by_archetype ON club (archetype_id);
