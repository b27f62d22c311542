-- meta: what the program knows about this file. It is no user data: dumps, undo and imports leave it out.
CREATE TABLE meta (
  key TEXT NOT NULL PRIMARY KEY,
  value TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- setting: one JSON value a key. Amounts of money never live here: they need a currency column (cost_line).
CREATE TABLE setting (
  key TEXT NOT NULL PRIMARY KEY CHECK (length(key) BETWEEN 1 AND 200),
  value TEXT NOT NULL CHECK (json_valid(value))
) STRICT, WITHOUT ROWID;
