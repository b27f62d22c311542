import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { logicalDump } from '../../../../db/schema/dump.ts';
import { StorageError } from '../../../../db/errors.ts';
import { createBag, deleteBag, setBagState, updateBag } from '../../../../db/repositories/bags/bags.ts';
import { recordCarry } from '../../../../db/repositories/bags/carries.ts';
import {
  addClub,
  deleteClub,
  listClubs,
  orderClubs,
  updateClub,
} from '../../../../db/repositories/bags/clubs.ts';
import { addCourse, deleteCourse, updateCourse } from '../../../../db/repositories/courses.ts';
import { deleteLot } from '../../../../db/repositories/bags/lots.ts';
import { pickPlan, savePlan } from '../../../../db/repositories/plans.ts';
import {
  createPlayer,
  deletePlayer,
  readPlayer,
  updatePlayer,
} from '../../../../db/repositories/bags/players.ts';
import {
  addPriceNote,
  deletePriceNote,
  updatePriceNote,
} from '../../../../db/repositories/prices/price-notes.ts';
import { deleteSetting, setSetting } from '../../../../db/repositories/settings.ts';
import { addShotImport, deleteShotImport } from '../../../../db/repositories/bags/shots.ts';
import { rewriteBag, writeBag } from '../../../../db/repositories/bags/whole-bag.ts';
import type { Db } from '../../../../db/sqlite.ts';
import { history, redo, undo, UNDO_STEPS, undoable } from '../../../../db/undo/undo.ts';
import { FULL_BAG, LATER, memoryDb, NOW, PLAYER } from '../kit.ts';

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
