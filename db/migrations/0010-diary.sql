-- diary_entry: what a coach notes about a player, dated, any number of them. Health data like pain and miss_note.
CREATE TABLE diary_entry (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  player_id INTEGER NOT NULL REFERENCES player (id) ON DELETE CASCADE,
  on_date TEXT NOT NULL CHECK (date(on_date) = on_date AND length(on_date) = 10),
  text TEXT NOT NULL CHECK (text <> '' AND length(text) <= 100000),
  written_at TEXT NOT NULL CHECK (written_at GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]T*')
) STRICT;
CREATE INDEX diary_entry_by_player ON diary_entry (player_id, on_date, id);

-- The one undated text that a player had becomes their first entry, letter for letter, on the day that they were
-- entered, as no other day is known of it. date() also mends a day that no calendar has.
INSERT INTO diary_entry (player_id, on_date, text, written_at)
SELECT id, ifnull(date(substr(created_at, 1, 10)), '2000-01-01'), notes, created_at
  FROM player WHERE notes <> '' ORDER BY id;
ALTER TABLE player DROP COLUMN notes;

-- Found by its words as price notes are: see 0008.
CREATE VIEW diary_entry_said AS
  SELECT id,
         ' ' || replace(replace(replace(text, char(9), ' '), char(10), ' '), char(13), ' ') || ' ' AS said
    FROM diary_entry;

CREATE VIRTUAL TABLE diary_entry_index USING fts5 (
  said,
  content = 'diary_entry_said',
  content_rowid = 'id',
  tokenize = 'trigram remove_diacritics 1',
  detail = 'none'
);
INSERT INTO diary_entry_index (diary_entry_index, rank) VALUES ('secure-delete', 1);
INSERT INTO diary_entry_index (diary_entry_index) VALUES ('rebuild');

CREATE TRIGGER diary_entry_index_insert AFTER INSERT ON diary_entry BEGIN
  INSERT INTO diary_entry_index (rowid, said)
  SELECT id, said FROM diary_entry_said WHERE id = NEW.id;
END;
CREATE TRIGGER diary_entry_index_delete BEFORE DELETE ON diary_entry BEGIN
  INSERT INTO diary_entry_index (diary_entry_index, rowid, said)
  SELECT 'delete', id, said FROM diary_entry_said WHERE id = OLD.id;
END;
CREATE TRIGGER diary_entry_index_before_update BEFORE UPDATE OF id, text ON diary_entry BEGIN
  INSERT INTO diary_entry_index (diary_entry_index, rowid, said)
  SELECT 'delete', id, said FROM diary_entry_said WHERE id = OLD.id;
END;
CREATE TRIGGER diary_entry_index_after_update AFTER UPDATE OF id, text ON diary_entry BEGIN
  INSERT INTO diary_entry_index (rowid, said)
  SELECT id, said FROM diary_entry_said WHERE id = NEW.id;
END;
