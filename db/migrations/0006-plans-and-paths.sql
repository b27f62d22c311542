-- plan: an answer with the question it answers. 'saved' is the user's; 'latest' is a cache, one a bag.
CREATE TABLE plan (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  bag_id INTEGER NOT NULL REFERENCES bag (id) ON DELETE CASCADE,
  kind TEXT NOT NULL CHECK (kind IN ('saved', 'latest')),
  name TEXT CHECK (length(name) <= 1000),
  status TEXT NOT NULL CHECK (
    status IN ('nothing-needed', 'ok', 'partly', 'over-budget', 'ask-first', 'coach-first', 'stopped')
  ),
  open_findings INTEGER NOT NULL CHECK (open_findings >= 0),
  cash_minor INTEGER CHECK (cash_minor BETWEEN -1000000000000 AND 1000000000000),
  cash_currency TEXT CHECK (cash_currency GLOB '[A-Z][A-Z][A-Z]'),
  net_minor INTEGER CHECK (net_minor BETWEEN -1000000000000 AND 1000000000000), -- negative: sales bring in more
  net_currency TEXT CHECK (net_currency GLOB '[A-Z][A-Z][A-Z]'),
  input_json TEXT NOT NULL CHECK (json_valid(input_json)),
  output_json TEXT NOT NULL CHECK (json_valid(output_json)),
  program_version TEXT NOT NULL CHECK (length(program_version) BETWEEN 1 AND 100),
  picked INTEGER NOT NULL DEFAULT 0 CHECK (picked IN (0, 1)), -- the path chosen side by side
  made_at TEXT NOT NULL CHECK (made_at GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]T*'),
  CHECK ((cash_minor IS NULL) = (cash_currency IS NULL)),
  CHECK ((net_minor IS NULL) = (net_currency IS NULL))
) STRICT;
CREATE INDEX plan_by_bag ON plan (bag_id, made_at);
CREATE UNIQUE INDEX plan_one_latest ON plan (bag_id) WHERE kind = 'latest';

-- path_stage: a plan in stages, now and when a condition holds.
CREATE TABLE path_stage (
  plan_id INTEGER NOT NULL REFERENCES plan (id) ON DELETE CASCADE,
  position INTEGER NOT NULL CHECK (position >= 0),
  stage TEXT NOT NULL CHECK (stage IN ('now', 'handicap', 'sale', 'season')),
  handicap_at_most REAL CHECK (handicap_at_most BETWEEN -20 AND 99),
  season TEXT CHECK (length(season) <= 1000),
  cash_minor INTEGER NOT NULL CHECK (cash_minor BETWEEN -1000000000000 AND 1000000000000),
  cash_currency TEXT NOT NULL CHECK (cash_currency GLOB '[A-Z][A-Z][A-Z]'),
  net_minor INTEGER NOT NULL CHECK (net_minor BETWEEN -1000000000000 AND 1000000000000),
  net_currency TEXT NOT NULL CHECK (net_currency GLOB '[A-Z][A-Z][A-Z]'),
  swaps_json TEXT NOT NULL CHECK (json_valid(swaps_json) AND json_type(swaps_json) = 'array'),
  ladder_json TEXT CHECK (json_valid(ladder_json) AND json_type(ladder_json) = 'array'),
  done_on TEXT CHECK (date(done_on) = done_on AND length(done_on) = 10),
  PRIMARY KEY (plan_id, position),
  CHECK (stage <> 'handicap' OR handicap_at_most IS NOT NULL)
) STRICT;
