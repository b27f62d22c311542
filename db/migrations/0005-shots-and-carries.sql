-- shot_import: one file of shots (one session). The header signature finds the user's column mapping again.
CREATE TABLE shot_import (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  player_id INTEGER NOT NULL REFERENCES player (id) ON DELETE CASCADE,
  file_name TEXT CHECK (length(file_name) <= 1000),
  header_signature TEXT CHECK (length(header_signature) <= 1000),
  mapping_json TEXT CHECK (json_valid(mapping_json) AND json_type(mapping_json) = 'object'),
  distance_unit TEXT NOT NULL CHECK (distance_unit IN ('yd', 'm')),
  speed_unit TEXT NOT NULL CHECK (speed_unit IN ('mph', 'km/h', 'm/s')),
  session_on TEXT CHECK (date(session_on) = session_on AND length(session_on) = 10),
  rows_read INTEGER NOT NULL CHECK (rows_read >= 0),
  rows_skipped INTEGER NOT NULL CHECK (rows_skipped BETWEEN 0 AND rows_read),
  imported_at TEXT NOT NULL CHECK (imported_at GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]T*')
) STRICT;
CREATE INDEX shot_import_by_player ON shot_import (player_id, imported_at);

-- shot: a deleted club leaves its shots to their session, under the label that the file gave.
CREATE TABLE shot (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  import_id INTEGER NOT NULL REFERENCES shot_import (id) ON DELETE CASCADE,
  club_id INTEGER REFERENCES club (id) ON DELETE SET NULL,
  row_number INTEGER NOT NULL CHECK (row_number >= 0), -- in the file, the header being row 1
  club_label TEXT CHECK (length(club_label) <= 1000),
  carry_yd REAL CHECK (carry_yd >= 0 AND carry_yd <= 500),
  total_yd REAL CHECK (total_yd >= 0 AND total_yd <= 700),
  side_yd REAL CHECK (side_yd BETWEEN -500 AND 500), -- right of the target is positive
  apex_yd REAL CHECK (apex_yd BETWEEN 0 AND 300),
  landing_deg REAL CHECK (landing_deg BETWEEN -90 AND 90),
  club_speed_mph REAL CHECK (club_speed_mph >= 0 AND club_speed_mph <= 250),
  ball_speed_mph REAL CHECK (ball_speed_mph >= 0 AND ball_speed_mph <= 300),
  launch_deg REAL CHECK (launch_deg BETWEEN -90 AND 90),
  spin_rpm REAL CHECK (spin_rpm BETWEEN 0 AND 30000),
  attack_deg REAL CHECK (attack_deg BETWEEN -90 AND 90),
  dynamic_loft_deg REAL CHECK (dynamic_loft_deg BETWEEN -90 AND 90),
  left_out INTEGER NOT NULL DEFAULT 0 CHECK (left_out IN (0, 1)) -- by the user's decision, never silently
) STRICT;
CREATE INDEX shot_by_import ON shot (import_id, row_number);
CREATE INDEX shot_by_club ON shot (club_id, import_id);

-- club_carry: the dated history of a club's carry; the newest is the one that club.carry_yd repeats.
CREATE TABLE club_carry (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  club_id INTEGER NOT NULL REFERENCES club (id) ON DELETE CASCADE,
  on_date TEXT NOT NULL CHECK (date(on_date) = on_date AND length(on_date) = 10),
  source TEXT NOT NULL CHECK (source IN ('stated', 'measured')),
  carry_yd REAL NOT NULL CHECK (carry_yd > 0 AND carry_yd <= 500),
  carry_sd_yd REAL CHECK (carry_sd_yd BETWEEN 0 AND 500),
  shots INTEGER CHECK (shots BETWEEN 0 AND 10000000),
  total_yd REAL CHECK (total_yd > 0 AND total_yd <= 700),
  import_id INTEGER REFERENCES shot_import (id) ON DELETE SET NULL,
  recorded_at TEXT NOT NULL CHECK (recorded_at GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]T*')
) STRICT;
CREATE INDEX club_carry_by_club ON club_carry (club_id, on_date);
CREATE INDEX club_carry_by_import ON club_carry (import_id);
