-- price_note_newest: the newest notes on an archetype in one currency, which are those that a band is made of.
CREATE INDEX price_note_newest ON price_note (archetype_id, currency, bag_id, seen_on);

-- club_by_name: a club is found by what its owner calls it.
CREATE INDEX club_by_name ON club (ifnull(label, key) COLLATE NOCASE, id);

-- price_note_said: all that a note says in words, between blanks, so that ' xy' is a word that begins with xy.
CREATE VIEW price_note_said AS
  SELECT id,
         ' ' || replace(archetype_id, '-', ' ') || ' ' || ifnull(condition, '') || ' '
             || replace(replace(replace(ifnull(place, '') || ' ' || ifnull(remark, ''), char(9), ' '), char(10), ' '), char(13), ' ')
             || ' ' AS said
    FROM price_note;

-- price_note_index: which notes hold three letters in a row. Positions are not kept: the few notes that hold all of
-- a word's threes are read and looked at. It is made of price_note alone, so dumps and imports leave it out.
CREATE VIRTUAL TABLE price_note_index USING fts5 (
  said,
  content = 'price_note_said',
  content_rowid = 'id',
  tokenize = 'trigram remove_diacritics 1',
  detail = 'none'
);
-- What a deleted note said must not stay in the index until some later merge.
INSERT INTO price_note_index (price_note_index, rank) VALUES ('secure-delete', 1);
INSERT INTO price_note_index (price_note_index) VALUES ('rebuild');

CREATE TRIGGER price_note_index_insert AFTER INSERT ON price_note BEGIN
  INSERT INTO price_note_index (rowid, said)
  SELECT id, said FROM price_note_said WHERE id = NEW.id;
END;
-- Before, as the index must be told the words that it knows, which the view gives only while the row is there.
CREATE TRIGGER price_note_index_delete BEFORE DELETE ON price_note BEGIN
  INSERT INTO price_note_index (price_note_index, rowid, said)
  SELECT 'delete', id, said FROM price_note_said WHERE id = OLD.id;
END;
CREATE TRIGGER price_note_index_before_update BEFORE UPDATE OF id, archetype_id, condition, place, remark ON price_note BEGIN
  INSERT INTO price_note_index (price_note_index, rowid, said)
  SELECT 'delete', id, said FROM price_note_said WHERE id = OLD.id;
END;
CREATE TRIGGER price_note_index_after_update AFTER UPDATE OF id, archetype_id, condition, place, remark ON price_note BEGIN
  INSERT INTO price_note_index (rowid, said)
  SELECT id, said FROM price_note_said WHERE id = NEW.id;
END;
