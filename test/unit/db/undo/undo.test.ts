import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { logicalDump } from '../../../../db/schema/dump.ts';
import { StorageError } from '../../../../db/errors.ts';
import { seedArchetypes } from '../../../../db/repositories/prices/archetypes.ts';
import {
  createBag,
  deleteBag,
  listBags,
  setBagState,
  updateBag,
} from '../../../../db/repositories/bags/bags.ts';
import { recordCarry } from '../../../../db/repositories/bags/carries.ts';
import {
  addClub,
  deleteClub,
  listClubs,
  orderClubs,
  readClub,
  updateClub,
} from '../../../../db/repositories/bags/clubs.ts';
import { addCourse, deleteCourse, updateCourse } from '../../../../db/repositories/courses.ts';
import { deleteLot, listLots } from '../../../../db/repositories/bags/lots.ts';
import { keepLatestPlan, pickPlan, readLatestPlan, savePlan } from '../../../../db/repositories/plans.ts';
import {
  createPlayer,
  deletePlayer,
  readPlayer,
  touchPlayer,
  updatePlayer,
} from '../../../../db/repositories/bags/players.ts';
import {
  addPriceNote,
  deletePriceNote,
  updatePriceNote,
} from '../../../../db/repositories/prices/price-notes.ts';
import { deleteSetting, getSetting, setSetting } from '../../../../db/repositories/settings.ts';
import { addShotImport, deleteShotImport } from '../../../../db/repositories/bags/shots.ts';
import { rewriteBag, writeBag } from '../../../../db/repositories/bags/whole-bag.ts';
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
const band = (n: number) => ({ lowMinor: n, likelyMinor: n + 1, highMinor: n + 2, currency: 'EUR' });
const PLAN = {
  status: 'ok',
  openFindings: 1,
  input: { a: 1 },
  output: { b: [2] },
  programVersion: '0.1.0',
} as const;

// What a random edit works on: ids may be of rows that are gone, and then the edit is refused and rolled back.
type Draw = { kind: number; a: number; b: number; x: number; text: string };
const draw: fc.Arbitrary<Draw> = fc.record({
  kind: fc.nat(21),
  a: fc.nat(5),
  b: fc.nat(9),
  x: fc.double({ min: 1, max: 400, noNaN: true }),
  text: fc.string({ unit: 'binary', maxLength: 12 }),
});

function pick(db: Db, table: string, n: number): number {
  const ids = db.prepare<[], { id: number }>(`SELECT id FROM ${table} ORDER BY id`).all();
  return ids[n % Math.max(ids.length, 1)]?.id ?? 0;
}

function edit(db: Db, { kind, a, b, x, text }: Draw): void {
  const player = () => pick(db, 'player', a);
  const bag = () => pick(db, 'bag', a);
  const club = () => pick(db, 'club', a * 7 + b);
  const edits: (() => unknown)[] = [
    () => createPlayer(db, { ...PLAYER, name: text, handicap: x / 10 }, NOW),
    () =>
      updatePlayer(db, player(), {
        driverSpeedMph: x / 3,
        missNote: text,
        pain: b % 2 === 0,
        targetHandicap: null,
      }),
    () => (b === 0 ? deletePlayer(db, player()) : updatePlayer(db, player(), { missNote: text })),
    () => writeBag(db, player(), FULL_BAG, LATER),
    () =>
      createBag(db, player(), { state: 'now', distanceUnit: 'yd', speedUnit: 'mph', currency: 'EUR' }, NOW),
    () => updateBag(db, bag(), { name: text, budget: money(Math.floor(x)), cashBeforeSales: b % 2 === 0 }),
    () => setBagState(db, bag(), b % 2 === 0 ? 'now' : 'planned'),
    () => deleteBag(db, bag()),
    () =>
      addClub(db, bag(), {
        key: `c${b}`,
        kind: 'iron',
        carryYd: x,
        ...(a > 2 ? { lotKey: `l${b % 3}` } : {}),
      }),
    () =>
      updateClub(db, club(), {
        carryYd: x,
        loftDeg: x / 10,
        label: text,
        lotKey: b % 2 === 0 ? null : `l${b % 3}`,
        place: 'bag',
      }),
    () => updateClub(db, club(), { place: 'sold', sold: money(b), soldOn: '2026-03-04', carryYd: null }),
    () => deleteClub(db, club()),
    () =>
      orderClubs(
        db,
        bag(),
        listClubs(db, bag())
          .map((c) => c.id)
          .reverse(),
      ),
    () => deleteLot(db, pick(db, 'lot', b)),
    () =>
      recordCarry(
        db,
        club(),
        { onDate: `2026-05-0${(b % 9) + 1}`, source: 'measured', carryYd: x, shots: b },
        NOW,
      ),
    () =>
      addPriceNote(
        db,
        { archetypeId: 'hybrid-22-t3', band: band(b), place: text, ...(a > 2 ? { bagId: bag() } : {}) },
        NOW,
      ),
    () =>
      b < 3
        ? deletePriceNote(db, pick(db, 'price_note', a))
        : updatePriceNote(db, pick(db, 'price_note', a), { remark: text }),
    () => (b < 2 ? deleteSetting(db, `s${a}`) : setSetting(db, `s${a}`, { x, text })),
    () =>
      b === 0
        ? deleteCourse(db, pick(db, 'course', a))
        : b < 5
          ? updateCourse(db, pick(db, 'course', a), { holes: [{ par: 5, lengthYd: x }] })
          : addCourse(
              db,
              {
                name: `n${text}`,
                holes: [
                  { par: 3, lengthYd: x },
                  { par: 4, lengthYd: x },
                ],
              },
              NOW,
            ),
    () =>
      b === 0
        ? deleteShotImport(db, pick(db, 'shot_import', a))
        : addShotImport(
            db,
            {
              playerId: player(),
              distanceUnit: 'yd',
              speedUnit: 'mph',
              rowsRead: 2,
              rowsSkipped: 0,
              mapping: { carry: text },
            },
            [
              { rowNumber: 2, carryYd: x, clubId: club() },
              { rowNumber: 3, clubLabel: text },
            ],
            NOW,
          ),
    () =>
      b < 3
        ? pickPlan(db, pick(db, 'plan', a))
        : savePlan(
            db,
            { ...PLAN, bagId: bag(), cash: money(b) },
            [{ stage: 'now', cash: money(b), net: money(-b), swaps: [{ text }] }],
            LATER,
          ),
    () => rewriteBag(db, bag(), { ...FULL_BAG, clubs: FULL_BAG.clubs.slice(0, b % 4) }, LATER),
  ];
  edits[kind]?.();
}

/** Runs an edit as a step; a refused one must leave everything as it was. */
function attempt(db: Db, chosen: Draw): void {
  try {
    undoable(db, step(`edit ${chosen.kind}`), () => {
      edit(db, chosen);
    });
  } catch (error) {
    if (!(error instanceof StorageError)) throw error;
  }
}

describe('any random edits', () => {
  test('undone one by one give back each state byte for byte, and redone each state again', () => {
    const kindsThatWrote = new Set<number>();
    fc.assert(
      fc.property(fc.array(draw, { minLength: 150, maxLength: UNDO_STEPS, size: 'max' }), (draws) => {
        const db = memoryDb();
        const states = [logicalDump(db)];
        for (const chosen of draws) {
          attempt(db, chosen);
          const state = logicalDump(db);
          // A step that changed nothing is not kept.
          if (history(db).undo.length >= states.length) {
            states.push(state);
            kindsThatWrote.add(chosen.kind);
          } else expect(state).toBe(states.at(-1));
        }
        const last = states.length - 1;
        expect(last).toBeGreaterThan(50);
        for (let n = last; n > 0; n -= 1) {
          expect(undo(db)).not.toBeNull();
          expect(logicalDump(db)).toBe(states[n - 1]);
        }
        expect(undo(db)).toBeNull();
        for (let n = 1; n <= last; n += 1) {
          expect(redo(db)).not.toBeNull();
          expect(logicalDump(db)).toBe(states[n]);
        }
        expect(redo(db)).toBeNull();
        for (let n = last; n > 0; n -= 1) undo(db);
        expect(logicalDump(db)).toBe(states[0]);
        db.close();
      }),
      { seed: 20261126, numRuns: 3, endOnFailure: true },
    );
    expect([...kindsThatWrote].sort((a, b) => a - b)).toEqual(Array.from({ length: 22 }, (_, n) => n));
  });

  test('mixed with undo and redo as a user would, the log always agrees with the states seen', () => {
    const action = fc.oneof(
      { weight: 3, arbitrary: draw },
      { weight: 2, arbitrary: fc.constantFrom('undo', 'redo') },
    );
    fc.assert(
      fc.property(fc.array(action, { minLength: 60, maxLength: 120, size: 'max' }), (actions) => {
        const db = memoryDb();
        let past = [logicalDump(db)];
        let future: string[] = [];
        for (const chosen of actions) {
          if (chosen === 'undo') {
            const moved = undo(db) !== null;
            expect(moved).toBe(past.length > 1);
            if (moved) future.push(past.pop() ?? '');
          } else if (chosen === 'redo') {
            const moved = redo(db) !== null;
            expect(moved).toBe(future.length > 0);
            if (moved) past.push(future.pop() ?? '');
          } else if (typeof chosen !== 'string') {
            attempt(db, chosen);
            if (history(db).undo.length === past.length) {
              past = [...past, logicalDump(db)];
              future = [];
            }
          }
          expect(logicalDump(db)).toBe(past.at(-1));
        }
        db.close();
      }),
      { seed: 4, numRuns: 5, endOnFailure: true },
    );
  });

  test('numbers come back bit for bit', () => {
    const db = memoryDb();
    const id = createPlayer(db, PLAYER, NOW);
    fc.assert(
      fc.property(
        fc.double({ min: -20, max: 99, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (a, b) => {
          updatePlayer(db, id, { handicap: a, airHumidity: b });
          const before = readPlayer(db, id);
          undoable(db, step('x'), () => updatePlayer(db, id, { handicap: 1, airHumidity: null }));
          undo(db);
          expect(readPlayer(db, id)).toEqual(before);
        },
      ),
      { seed: 7, numRuns: 300 },
    );
  });
});

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
