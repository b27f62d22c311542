import { describe, expect, test } from 'vitest';
import { createBag, deleteBag } from '../../../../db/repositories/bags/bags.ts';
import { readHandover, updateHandover } from '../../../../db/repositories/handover.ts';
import { createPlayer } from '../../../../db/repositories/bags/players.ts';
import type { Db } from '../../../../db/sqlite.ts';
import { redo, undo, undoable } from '../../../../db/undo/undo.ts';
import { memoryDb, NOW, PLAYER, storageError } from '../kit.ts';

function bagIn(db: Db): number {
  const units = { distanceUnit: 'yd', speedUnit: 'mph', currency: 'GBP' } as const;
  return createBag(db, createPlayer(db, PLAYER, NOW), { state: 'now', ...units }, NOW);
}
const rows = (db: Db) => db.prepare('SELECT count(*) FROM handover').pluck().get();

describe('what a coach adds to a document', () => {
  test('is nothing at first, then what was set, field by field', () => {
    const db = memoryDb();
    const [bag, other] = [bagIn(db), bagIn(db)];
    expect(readHandover(db, bag)).toEqual({});
    updateHandover(db, bag, { coverNote: 'Dear A,\n\nwell played.' });
    updateHandover(db, bag, { language: 'de', retestOn: '2027-02-28' });
    expect(readHandover(db, bag)).toEqual({
      coverNote: 'Dear A,\n\nwell played.',
      language: 'de',
      retestOn: '2027-02-28',
    });
    updateHandover(db, bag, { language: null });
    updateHandover(db, bag, {});
    expect(readHandover(db, bag)).toEqual({ coverNote: 'Dear A,\n\nwell played.', retestOn: '2027-02-28' });
    expect(readHandover(db, other)).toEqual({});
  });

  test('is taken back and done again like any edit, the first one too', () => {
    const db = memoryDb();
    const bag = bagIn(db);
    const step = (fields: Parameters<typeof updateHandover>[2]) =>
      undoable(db, { label: 'x', at: NOW }, () => updateHandover(db, bag, fields));
    step({ coverNote: 'one' });
    step({ coverNote: 'two', language: 'de' });
    undo(db);
    expect(readHandover(db, bag)).toEqual({ coverNote: 'one' });
    undo(db);
    expect([readHandover(db, bag), rows(db)]).toEqual([{}, 0]);
    redo(db);
    redo(db);
    expect(readHandover(db, bag)).toEqual({ coverNote: 'two', language: 'de' });
  });

  test('goes with its bag, and is refused for none', () => {
    const db = memoryDb();
    const bag = bagIn(db);
    updateHandover(db, bag, { coverNote: 'x' });
    deleteBag(db, bag);
    expect(rows(db)).toBe(0);
    expect(storageError(() => readHandover(db, bag)).code).toBe('missing');
    expect(storageError(() => updateHandover(db, bag, { coverNote: 'x' })).code).toBe('missing');
  });

  test('the last guard refuses what is no day, no language and no note', () => {
    const db = memoryDb();
    const bag = bagIn(db);
    for (const fields of [{ retestOn: '2027-02-30' }, { language: 'German' }, { coverNote: '' }]) {
      expect(storageError(() => updateHandover(db, bag, fields)).code).toBe('constraint');
    }
  });
});
