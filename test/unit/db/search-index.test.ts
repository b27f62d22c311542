import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { erasePlayer } from '../../../db/erase.ts';
import { migrate } from '../../../db/schema/migrate.ts';
import { seedArchetypes } from '../../../db/repositories/prices/archetypes.ts';
import { createPlayer } from '../../../db/repositories/bags/players.ts';
import {
  addPriceNote,
  deletePriceNote,
  updatePriceNote,
  type PriceNoteFields,
} from '../../../db/repositories/prices/price-notes.ts';
import { writeBag } from '../../../db/repositories/bags/whole-bag.ts';
import type { Db } from '../../../db/sqlite.ts';
import { redo, undo, undoable } from '../../../db/undo/undo.ts';
import {
  CATALOGUE,
  databaseAt,
  FULL_BAG,
  memoryDb,
  MIGRATIONS,
  NOW,
  openTemp,
  PLAYER,
  tempFolder,
} from './kit.ts';

const band = { lowMinor: 1, likelyMinor: 2, highMinor: 3, currency: 'GBP' };
const NOTE: PriceNoteFields = { archetypeId: 'hybrid-22-t3', band, place: 'Car boot, Épsom' };

function found(db: Db, threes: string): number[] {
  const sql = 'SELECT rowid FROM price_note_index WHERE price_note_index MATCH ? ORDER BY rowid';
  return db.prepare<[string], number>(sql).pluck().all(threes);
}

/** FTS5 compares the index with what the view says now. */
const agrees = (db: Db) =>
  db.exec(`INSERT INTO price_note_index (price_note_index, rank) VALUES ('integrity-check', 1)`);

test('notes made before the index are in it', () => {
  const db = databaseAt(':memory:', 7);
  db.exec(`INSERT INTO archetype (id, source, kind, loft_deg, forgiveness, spin_tier, length_in)
           VALUES ('hybrid-22-t3', 'seed', 'hybrid', 22, 3, 'mid', 40.25);
           INSERT INTO price_note (id, archetype_id, low_minor, likely_minor, high_minor, currency, place, created_at)
           VALUES (7, 'hybrid-22-t3', 1, 2, 3, 'EUR', 'flea market', '${NOW}')`);
  migrate(db, { file: ':memory:', migrations: MIGRATIONS, now: NOW, backupDir: null });
  expect(found(db, '"fle"')).toEqual([7]);
  agrees(db);
});

test('follows every change of a note, its undoing and its cascades', () => {
  const db = memoryDb();
  const id = addPriceNote(db, NOTE, NOW);
  expect(found(db, '"boo"')).toEqual([id]);
  expect(found(db, '" hy" AND "brd"')).toEqual([]);
  expect(found(db, '"eps"')).toEqual([id]); // letters with accents are found without
  undoable(db, { label: 'change', at: NOW }, () => updatePriceNote(db, id, { place: 'club\nnoticeboard' }));
  expect([found(db, '"boo"'), found(db, '" no"')]).toEqual([[], [id]]);
  undo(db);
  expect([found(db, '"boo"'), found(db, '"tic"')]).toEqual([[id], []]);
  redo(db);
  undoable(db, { label: 'out', at: NOW }, () => deletePriceNote(db, id));
  expect(found(db, '"tic"')).toEqual([]);
  undo(db);
  expect(found(db, '"tic"')).toEqual([id]);
  const bag = writeBag(db, createPlayer(db, PLAYER, NOW), FULL_BAG, NOW);
  expect(found(db, '"dri"')).toHaveLength(1);
  db.prepare('DELETE FROM bag WHERE id = ?').run(bag);
  expect(found(db, '"dri"')).toEqual([]);
  agrees(db);
});

test('what an erased player’s own notes said is gone from the index', () => {
  const folder = tempFolder();
  const { db } = openTemp(join(folder, 'data.loftledger'));
  seedArchetypes(db, CATALOGUE, NOW);
  const player = createPlayer(db, PLAYER, NOW);
  const bagId = writeBag(db, player, FULL_BAG, NOW);
  for (let i = 0; i < 50; i += 1) {
    addPriceNote(db, { ...NOTE, bagId, remark: `zqj zqk zqx ${i}` }, NOW);
    addPriceNote(db, NOTE, NOW);
  }
  expect(found(db, '"zqj"')).toHaveLength(50);
  erasePlayer(db, player);
  agrees(db);
  db.close();
  const bytes = readdirSync(folder).map((name) => readFileSync(join(folder, name), 'latin1'));
  expect(bytes.join('')).not.toContain('zqj');
});
