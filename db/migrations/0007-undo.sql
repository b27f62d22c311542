-- undo_step: one edit of the user, on the stack it can be taken from. Newest on top: the highest id.
CREATE TABLE undo_step (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  stack TEXT NOT NULL CHECK (stack IN ('undo', 'redo')),
  label TEXT NOT NULL CHECK (length(label) BETWEEN 1 AND 1000),
  at TEXT NOT NULL CHECK (at GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]T*')
) STRICT;
CREATE INDEX undo_step_by_stack ON undo_step (stack, id);

-- undo_log: what was done to one row, with as much of the row as taking it back needs.
CREATE TABLE undo_log (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  step_id INTEGER NOT NULL REFERENCES undo_step (id) ON DELETE CASCADE,
  table_name TEXT NOT NULL,
  op TEXT NOT NULL CHECK (op IN ('insert', 'update', 'delete')),
  before_json TEXT CHECK (json_valid(before_json)), -- the whole row; NULL for an insert
  after_json TEXT CHECK (json_valid(after_json)), -- the whole row; of an insert its key; NULL for a delete
  CHECK ((op = 'insert') = (before_json IS NULL)),
  CHECK ((op = 'delete') = (after_json IS NULL))
) STRICT;
CREATE INDEX undo_log_by_step ON undo_log (step_id, id);
