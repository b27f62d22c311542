import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { logicalDump } from '../../../../db/schema/dump.ts';
import { seedArchetypes } from '../../../../db/repositories/prices/archetypes.ts';
import { deleteBag, listBags } from '../../../../db/repositories/bags/bags.ts';
import { recordCarry } from '../../../../db/repositories/bags/carries.ts';
import {
  addClub,
  deleteClub,
  listClubs,
  readClub,
  updateClub,
} from '../../../../db/repositories/bags/clubs.ts';
import { listLots } from '../../../../db/repositories/bags/lots.ts';
import { keepLatestPlan, readLatestPlan, savePlan } from '../../../../db/repositories/plans.ts';
import {
  createPlayer,
  deletePlayer,
  readPlayer,
  touchPlayer,
  updatePlayer,
} from '../../../../db/repositories/bags/players.ts';
import { getSetting, setSetting } from '../../../../db/repositories/settings.ts';
import { addShotImport } from '../../../../db/repositories/bags/shots.ts';
import { writeBag } from '../../../../db/repositories/bags/whole-bag.ts';
import { USER_TABLES } from '../../../../db/schema/schema.ts';
import type { Db } from '../../../../db/sqlite.ts';
import { clearHistory, history, redo, undo, UNDO_STEPS, undoable } from '../../../../db/undo/undo.ts';
import {
  addOwn,
  CATALOGUE,
  FULL_BAG,
  LATER,
  memoryDb,
  NOW,
  openTemp,
  PLAYER,
  storageError,
  tempFolder,
} from '../kit.ts';

const step = (label: string) => ({ label, at: NOW });
const money = (minor: number) => ({ minor, currency: 'GBP' });
const PLAN = {
  status: 'ok',
  openFindings: 1,
  input: { a: 1 },
  output: { b: [2] },
  programVersion: '0.1.0',
} as const;

// What a random edit works on: ids may be of rows that are gone, and then the edit is refused and rolled back.
function pick(db: Db, table: string, n: number): number {
  const ids = db.prepare<[], { id: number }>(`SELECT id FROM ${table} ORDER BY id`).all();
  return ids[n % Math.max(ids.length, 1)]?.id ?? 0;
}

describe('steps', () => {
  test('are named newest first, and a new write clears redo', () => {
    const db = memoryDb();
    for (const name of ['a', 'b', 'c'])
      undoable(db, { label: name, at: LATER }, () => createPlayer(db, { ...PLAYER, name }, NOW));
    expect(history(db).undo.map((s) => s.label)).toEqual(['c', 'b', 'a']);
    expect(undo(db)).toMatchObject({ label: 'c', at: LATER });
    expect(undo(db)).toMatchObject({ label: 'b' });
    expect(history(db).redo.map((s) => s.label)).toEqual(['b', 'c']);
    undoable(db, step('d'), () => createPlayer(db, { ...PLAYER, name: 'd' }, NOW));
    expect(history(db)).toMatchObject({ undo: [{ label: 'd' }, { label: 'a' }], redo: [] });
    expect(redo(db)).toBeNull();
  });

  test('200 are kept, the oldest go first', () => {
    const db = memoryDb();
    for (let n = 0; n < UNDO_STEPS + 5; n += 1) undoable(db, step(`${n}`), () => setSetting(db, 'n', n));
    expect(history(db).undo).toHaveLength(200);
    expect(history(db).undo.at(-1)?.label).toBe('5');
    while (undo(db) !== null);
    expect(getSetting(db, 'n')).toBe(4);
    expect(db.prepare('SELECT count(*) FROM undo_log').pluck().get()).toBe(200);
  });

  test('one that changes nothing, or is refused, is not kept and does not clear redo', () => {
    const db = memoryDb();
    const id = createPlayer(db, PLAYER, NOW);
    undoable(db, step('a'), () => updatePlayer(db, id, { missNote: 'x' }));
    undo(db);
    undoable(db, step('same'), () => updatePlayer(db, id, { name: PLAYER.name }));
    undoable(db, step('read'), () => readPlayer(db, id));
    const error = storageError(() =>
      undoable(db, step('refused'), () => {
        updatePlayer(db, id, { missNote: 'half' });
        updatePlayer(db, id, { handicap: 500 });
      }),
    );
    expect(error.code).toBe('constraint');
    expect(readPlayer(db, id).missNote).toBeUndefined();
    expect(history(db)).toMatchObject({ undo: [], redo: [{ label: 'a' }] });
  });

  test('what fn returns comes out; one within another joins it; a promise is refused', () => {
    const db = memoryDb();
    const id = undoable(db, step('outer'), () => {
      const player = createPlayer(db, PLAYER, NOW);
      undoable(db, step('inner'), () => updatePlayer(db, player, { missNote: 'x' }));
      return player;
    });
    expect(history(db).undo.map((s) => s.label)).toEqual(['outer']);
    undo(db);
    expect(storageError(() => readPlayer(db, id)).code).toBe('missing');
    expect(() => undoable(db, step('later'), () => Promise.resolve())).toThrow('promise');
    expect(history(db).undo).toEqual([]);
  });

  test('undo within a step is refused, and the step with it', () => {
    const db = memoryDb();
    undoable(db, step('a'), () => createPlayer(db, PLAYER, NOW));
    expect(storageError(() => undoable(db, step('b'), () => undo(db))).code).toBe('bug');
    expect(history(db).undo.map((s) => s.label)).toEqual(['a']);
  });

  test('survive closing and opening', () => {
    const file = join(tempFolder(), 'data.loftledger');
    const first = openTemp(file).db;
    const id = undoable(first, step('add'), () => createPlayer(first, PLAYER, NOW));
    undoable(first, step('note'), () => updatePlayer(first, id, { missNote: 'x' }));
    undo(first);
    first.close();
    const second = openTemp(file).db;
    expect(history(second)).toMatchObject({ undo: [{ label: 'add' }], redo: [{ label: 'note' }] });
    redo(second);
    expect(readPlayer(second, id).missNote).toBe('x');
    undo(second);
    undo(second);
    expect(storageError(() => readPlayer(second, id)).code).toBe('missing');
  });

  test('can be forgotten', () => {
    const db = memoryDb();
    const id = undoable(db, step('a'), () => createPlayer(db, PLAYER, NOW));
    clearHistory(db);
    expect(undo(db)).toBeNull();
    expect(readPlayer(db, id).name).toBe(PLAYER.name);
    expect(db.prepare('SELECT count(*) FROM undo_log').pluck().get()).toBe(0);
  });
});

describe('writes outside of steps', () => {
  test('are not recorded: the catalogue, the latest plan, last looked at', () => {
    const db = memoryDb();
    const player = createPlayer(db, PLAYER, NOW);
    const bag = writeBag(db, player, FULL_BAG, NOW);
    seedArchetypes(db, CATALOGUE.slice(1), LATER);
    keepLatestPlan(db, { ...PLAN, bagId: bag }, NOW);
    touchPlayer(db, player, LATER);
    expect(history(db)).toEqual({ undo: [], redo: [] });
  });

  test('stay when a step on the same row is undone, which gives back only what it changed', () => {
    const db = memoryDb();
    const id = createPlayer(db, PLAYER, NOW);
    undoable(db, step('note'), () => updatePlayer(db, id, { missNote: 'x' }));
    touchPlayer(db, id, LATER);
    undo(db);
    expect(readPlayer(db, id)).toMatchObject({ lastLookedAt: LATER });
    expect(readPlayer(db, id).missNote).toBeUndefined();
  });

  test('that hang on a row go with it and come back with it', () => {
    const db = memoryDb();
    const player = createPlayer(db, PLAYER, NOW);
    const bag = undoable(db, step('bag'), () => writeBag(db, player, FULL_BAG, NOW));
    keepLatestPlan(db, { ...PLAN, bagId: bag }, NOW);
    const full = logicalDump(db);
    undo(db);
    expect(listBags(db, player)).toEqual([]);
    redo(db);
    expect(logicalDump(db)).toBe(full);
    expect(readLatestPlan(db, bag)?.status).toBe('ok');
  });

  test('that removed the row make the step a conflict, which changes nothing', () => {
    const db = memoryDb();
    const player = createPlayer(db, PLAYER, NOW);
    const bag = writeBag(db, player, FULL_BAG, NOW);
    const club = pick(db, 'club', 0);
    undoable(db, step('club'), () => {
      updatePlayer(db, player, { missNote: 'x' });
      updateClub(db, club, { label: 'x' });
    });
    deleteClub(db, club);
    const dump = logicalDump(db);
    const error = storageError(() => undo(db));
    expect(error).toMatchObject({ code: 'undo-conflict' });
    expect(error.message).toContain(`the club with id ${club} is gone`);
    expect(error.remedy).toContain('Clear the history');
    expect(logicalDump(db)).toBe(dump);
    expect(listClubs(db, bag)).toHaveLength(3);
    // and recording is off again
    updateClub(db, pick(db, 'club', 0), { label: 'y' });
    expect(history(db).undo).toHaveLength(1);
  });

  test('that took the row’s owner, or its key, make a deleted row’s return a conflict', () => {
    const db = memoryDb();
    const bag = writeBag(db, createPlayer(db, PLAYER, NOW), FULL_BAG, NOW);
    const club = pick(db, 'club', 2);
    const { key } = readClub(db, club);
    undoable(db, step('out'), () => deleteClub(db, club));
    addClub(db, bag, { key, kind: 'iron' });
    expect(storageError(() => undo(db)).code).toBe('undo-conflict');
    deleteBag(db, bag);
    expect(storageError(() => undo(db)).code).toBe('undo-conflict');
  });
});

test('a cascade is one step: player, bags, clubs, sets, shots, carries, plans, own prices', () => {
  const db = memoryDb();
  addOwn(db, 'mine');
  const player = createPlayer(db, PLAYER, NOW);
  const bag = writeBag(db, player, FULL_BAG, NOW);
  const club = pick(db, 'club', 0);
  const shots = addShotImport(
    db,
    { playerId: player, distanceUnit: 'yd', speedUnit: 'mph', rowsRead: 1, rowsSkipped: 0 },
    [{ rowNumber: 2, clubId: club, carryYd: 150.5 }],
    NOW,
  );
  recordCarry(db, club, { onDate: '2026-05-01', source: 'measured', carryYd: 150.5, importId: shots }, NOW);
  savePlan(db, { ...PLAN, bagId: bag }, [{ stage: 'now', cash: money(1), net: money(1), swaps: [] }], NOW);
  const full = logicalDump(db);
  const own = USER_TABLES.filter((table) => table !== 'setting' && table !== 'archetype');
  undoable(db, step('delete'), () => deletePlayer(db, player));
  expect(
    logicalDump(db, own)
      .split('\n')
      .filter((line) => line.startsWith('[')),
  ).toEqual([]);
  undo(db);
  expect(logicalDump(db)).toBe(full);
  expect(
    listLots(db, bag)
      .map((lot) => lot.key)
      .sort(),
  ).toEqual(['irons', 'spare', 'unlisted']);
  redo(db);
  undo(db);
  expect(logicalDump(db)).toBe(full);
});

test('links may be broken within a step, and within its undoing, as long as they hold at the end', () => {
  const db = memoryDb();
  const bag = writeBag(db, createPlayer(db, PLAYER, NOW), FULL_BAG, NOW);
  const full = logicalDump(db);
  undoable(db, step('set first, clubs second'), () => {
    db.pragma('defer_foreign_keys = ON');
    const lot = db
      .prepare(`DELETE FROM lot WHERE bag_id = ? AND key = 'irons' RETURNING id`)
      .pluck()
      .get(bag);
    db.prepare('UPDATE club SET lot_id = NULL WHERE lot_id = ?').run(lot);
  });
  expect(listLots(db, bag)).toHaveLength(2);
  undo(db);
  expect(logicalDump(db)).toBe(full);
});

test('a log that names a table or column of no ours is refused', () => {
  const db = memoryDb();
  undoable(db, step('a'), () => createPlayer(db, PLAYER, NOW));
  db.prepare(`UPDATE undo_log SET table_name = 'sqlite_schema'`).run();
  expect(storageError(() => undo(db)).message).toContain('no table sqlite_schema');
  db.prepare(
    `UPDATE undo_log SET table_name = 'player', op = 'delete', after_json = NULL, before_json = '{"id":1,"x\\"":2}'`,
  ).run();
  expect(storageError(() => undo(db)).message).toContain('no column x"');
});
