-- Ranges here are the last guard and wider than those of the file formats, which give the better message.
-- NULL means "not given", which is not the same as 0 or no: an exported bag must say what the imported one said.
CREATE TABLE player (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  name TEXT NOT NULL CHECK (length(name) <= 1000),
  handicap REAL NOT NULL CHECK (handicap BETWEEN -20 AND 99), -- better than scratch is negative
  target_handicap REAL CHECK (target_handicap BETWEEN -20 AND 99),
  driver_speed_mph REAL CHECK (driver_speed_mph BETWEEN 10 AND 200),
  handed TEXT NOT NULL CHECK (handed IN ('right', 'left')),
  ground TEXT NOT NULL CHECK (ground IN ('soft', 'firm')),
  flighted INTEGER CHECK (flighted IN (0, 1)),
  miss_json TEXT CHECK (json_valid(miss_json) AND json_type(miss_json) = 'array'),
  miss_note TEXT CHECK (length(miss_note) <= 10000),
  pain INTEGER CHECK (pain IN (0, 1)),
  notes TEXT CHECK (length(notes) <= 100000),
  air_temperature_c REAL CHECK (air_temperature_c BETWEEN -60 AND 60),
  air_humidity REAL CHECK (air_humidity BETWEEN 0 AND 1),
  air_altitude_m REAL CHECK (air_altitude_m BETWEEN -500 AND 9000),
  created_at TEXT NOT NULL CHECK (created_at GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]T*'),
  last_looked_at TEXT CHECK (last_looked_at GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]T*'),
  archived_at TEXT CHECK (archived_at GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]T*')
) STRICT;
CREATE INDEX player_by_name ON player (name COLLATE NOCASE, id);

-- course: a named one may be everybody's (player_id NULL); one that came in a bag file has no name.
CREATE TABLE course (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  player_id INTEGER REFERENCES player (id) ON DELETE CASCADE,
  name TEXT CHECK (length(name) BETWEEN 1 AND 1000),
  created_at TEXT NOT NULL CHECK (created_at GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]T*')
) STRICT;
CREATE INDEX course_by_player ON course (player_id);

CREATE TABLE course_hole (
  course_id INTEGER NOT NULL REFERENCES course (id) ON DELETE CASCADE,
  number INTEGER NOT NULL CHECK (number BETWEEN 1 AND 99),
  par INTEGER NOT NULL CHECK (par BETWEEN 1 AND 9),
  length_yd REAL NOT NULL CHECK (length_yd > 0 AND length_yd <= 2000),
  PRIMARY KEY (course_id, number)
) STRICT;

CREATE TABLE bag (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  player_id INTEGER NOT NULL REFERENCES player (id) ON DELETE CASCADE,
  state TEXT NOT NULL CHECK (state IN ('now', 'planned', 'archived')),
  name TEXT CHECK (length(name) <= 1000),
  -- the units its owner reads in; what is stored stays in yards, mph and minor units
  distance_unit TEXT NOT NULL CHECK (distance_unit IN ('yd', 'm')),
  speed_unit TEXT NOT NULL CHECK (speed_unit IN ('mph', 'km/h', 'm/s')),
  currency TEXT NOT NULL CHECK (currency GLOB '[A-Z][A-Z][A-Z]'),
  budget_minor INTEGER CHECK (budget_minor BETWEEN 0 AND 1000000000000),
  budget_currency TEXT CHECK (budget_currency GLOB '[A-Z][A-Z][A-Z]'),
  cash_before_sales INTEGER CHECK (cash_before_sales IN (0, 1)),
  change_putter INTEGER CHECK (change_putter IN (0, 1)),
  course_id INTEGER REFERENCES course (id) ON DELETE SET NULL,
  created_at TEXT NOT NULL CHECK (created_at GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]T*'),
  CHECK ((budget_minor IS NULL) = (budget_currency IS NULL)),
  CHECK (cash_before_sales IS NULL OR budget_minor IS NOT NULL)
) STRICT;
CREATE INDEX bag_by_player ON bag (player_id, state);
CREATE INDEX bag_by_course ON bag (course_id);
CREATE UNIQUE INDEX bag_one_now ON bag (player_id) WHERE state = 'now';
