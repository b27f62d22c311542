import { describe, expect, test } from 'vitest';
import { logicalDump } from '../../../../db/schema/dump.ts';
import {
  addOwnArchetype,
  deleteOwnArchetype,
  findArchetype,
  listArchetypes,
  seedArchetypes,
  updateOwnArchetype,
  type ArchetypeFields,
} from '../../../../db/repositories/prices/archetypes.ts';
import { createBag } from '../../../../db/repositories/bags/bags.ts';
import {
  addCostLine,
  costLinesOf,
  deleteCostLine,
  updateCostLine,
} from '../../../../db/repositories/prices/cost-lines.ts';
import {
  addCourse,
  deleteCourse,
  listCourses,
  readCourse,
  updateCourse,
} from '../../../../db/repositories/courses.ts';
import {
  deletePlan,
  keepLatestPlan,
  listPlans,
  pickPlan,
  readLatestPlan,
  readPlan,
  savePlan,
  type PlanFields,
  type Stage,
} from '../../../../db/repositories/plans.ts';
import { createPlayer, deletePlayer } from '../../../../db/repositories/bags/players.ts';
import {
  addPriceNote,
  deletePriceNote,
  notesOfBag,
  notesOnArchetype,
  readPriceNote,
  sharedNotes,
  updatePriceNote,
} from '../../../../db/repositories/prices/price-notes.ts';
import {
  deleteSetting,
  getSetting,
  setSetting,
  settingsUnder,
} from '../../../../db/repositories/settings.ts';
import type { Db } from '../../../../db/sqlite.ts';
import { CATALOGUE, LATER, memoryDb, NOW, PLAYER, storageError } from '../kit.ts';

const [HYBRID, DRIVER, SET] = CATALOGUE as [ArchetypeFields, ArchetypeFields, ArchetypeFields];
const gbp = (minor: number) => ({ minor, currency: 'GBP' });
const band = (n: number, currency = 'GBP') => ({
  lowMinor: n,
  likelyMinor: n + 1,
  highMinor: n + 2,
  currency,
});

function newBag(db: Db): number {
  const units = { distanceUnit: 'yd', speedUnit: 'mph', currency: 'GBP' } as const;
  return createBag(db, createPlayer(db, PLAYER, NOW), { ...units, state: 'now' }, NOW);
}

describe('archetypes', () => {
  test('read back as seeded, by kind and loft', () => {
    const db = memoryDb();
    expect(listArchetypes(db)).toEqual([DRIVER, HYBRID, SET].map((a) => ({ ...a, source: 'seed' })));
    expect(findArchetype(db, 'no')).toBeUndefined();
  });

  test('seeding again writes nothing; a changed row follows; one that left is retired, and may return', () => {
    const db = memoryDb();
    const dump = logicalDump(db);
    expect(seedArchetypes(db, CATALOGUE, LATER)).toEqual({ added: [], changed: [], retired: [], own: [] });
    expect(logicalDump(db)).toBe(dump);
    addPriceNote(db, { archetypeId: SET.id, band: band(1) }, NOW);
    const longer = { ...HYBRID, lengthIn: 40.5 };
    expect(seedArchetypes(db, [longer, DRIVER], LATER)).toEqual({
      added: [],
      changed: [HYBRID.id],
      retired: [SET.id],
      own: [],
    });
    expect(findArchetype(db, HYBRID.id)?.lengthIn).toBe(40.5);
    expect(findArchetype(db, SET.id)).toEqual({ ...SET, source: 'seed', retiredAt: LATER });
    expect(listArchetypes(db).map((a) => a.id)).toEqual([DRIVER.id, HYBRID.id]);
    expect(listArchetypes(db, { retired: true })).toHaveLength(3);
    expect(notesOnArchetype(db, SET.id)).toHaveLength(1);
    expect(seedArchetypes(db, [longer, DRIVER], NOW).retired).toEqual([]);
    expect(findArchetype(db, SET.id)?.retiredAt).toBe(LATER);
    expect(seedArchetypes(db, CATALOGUE, NOW)).toMatchObject({ changed: [HYBRID.id, SET.id] });
    expect(findArchetype(db, SET.id)).toEqual({ ...SET, source: 'seed' });
  });

  test('the user’s own are never touched by seeding, even under an id that the catalogue takes later', () => {
    const db = memoryDb();
    const own = { ...HYBRID, id: 'hybrid-24-t4', label: 'mine', lengthIn: 39 };
    addOwnArchetype(db, own);
    expect(seedArchetypes(db, [...CATALOGUE, { ...HYBRID, id: own.id }], LATER).own).toEqual([own.id]);
    expect(findArchetype(db, own.id)).toEqual({ ...own, source: 'own' });
    seedArchetypes(db, [], LATER);
    expect(findArchetype(db, own.id)).toEqual({ ...own, source: 'own' });
    updateOwnArchetype(db, { ...own, loftDeg: 25 });
    expect(findArchetype(db, own.id)?.loftDeg).toBe(25);
    expect(storageError(() => updateOwnArchetype(db, { ...HYBRID, loftDeg: 5 })).message).toBe(
      `There is no own archetype ${HYBRID.id}`,
    );
    expect(storageError(() => deleteOwnArchetype(db, HYBRID.id)).code).toBe('missing');
    expect(storageError(() => addOwnArchetype(db, HYBRID)).code).toBe('constraint');
    addPriceNote(db, { archetypeId: own.id, band: band(1) }, NOW);
    deleteOwnArchetype(db, own.id);
    expect(sharedNotes(db, { limit: 10 })).toEqual([]);
  });

  test('refusals: an id twice, a tier of 5, a set without members; the list goes in whole or not at all', () => {
    const db = memoryDb();
    const dump = logicalDump(db);
    const fresh = { ...HYBRID, id: 'fresh' };
    expect(storageError(() => seedArchetypes(db, [fresh, DRIVER, fresh], NOW)).message).toContain(
      'the id fresh twice',
    );
    const five = { ...HYBRID, id: 'five', forgiveness: 5 } as unknown as ArchetypeFields;
    expect(storageError(() => seedArchetypes(db, [fresh, five], NOW)).message).toContain('forgiveness is 5');
    expect(storageError(() => seedArchetypes(db, [{ ...HYBRID, id: 'x', kind: 'irons' }], NOW)).code).toBe(
      'constraint',
    );
    expect(logicalDump(db)).toBe(dump);
  });
});

describe('price notes', () => {
  test('read back as written; everybody’s and a bag’s own are apart', () => {
    const db = memoryDb();
    const bag = newBag(db);
    const full = {
      archetypeId: HYBRID.id,
      band: band(100, 'EUR'),
      seenOn: '2026-05-01',
      condition: 'light wear',
      place: 'shop in town',
      remark: '',
    } as const;
    const shared = addPriceNote(db, full, LATER);
    const later = addPriceNote(db, { archetypeId: HYBRID.id, band: band(5), seenOn: '2026-06-01' }, NOW);
    const undated = addPriceNote(db, { archetypeId: HYBRID.id, band: band(7) }, NOW);
    const own = addPriceNote(
      db,
      { archetypeId: HYBRID.id, band: band(6), bagId: bag, seenOn: '2026-05-15' },
      NOW,
      1,
    );
    expect(readPriceNote(db, shared)).toEqual({ ...full, id: shared, createdAt: LATER });
    expect(notesOnArchetype(db, HYBRID.id).map((n) => n.id)).toEqual([later, shared, undated]);
    expect(notesOnArchetype(db, HYBRID.id, bag).map((n) => n.id)).toEqual([later, own, shared, undated]);
    expect(notesOfBag(db, bag).map((n) => n.id)).toEqual([own]);
    expect(sharedNotes(db, { limit: 2, offset: 1 }).map((n) => n.id)).toEqual([later, shared]);
    updatePriceNote(db, shared, { band: band(1), condition: 'worn', place: null });
    expect(readPriceNote(db, shared)).toEqual({
      id: shared,
      createdAt: LATER,
      archetypeId: HYBRID.id,
      band: band(1),
      seenOn: '2026-05-01',
      condition: 'worn',
      remark: '',
    });
    deletePriceNote(db, shared);
    expect(storageError(() => readPriceNote(db, shared)).code).toBe('missing');
    expect(storageError(() => updatePriceNote(db, later, { condition: 'mint' as 'worn' })).message).toContain(
      'condition is "mint"',
    );
  });
});

describe('cost lines', () => {
  test('a bag has one of each standing kind and any number of the others; defaults are apart', () => {
    const db = memoryDb();
    const bag = newBag(db);
    const delivery = { kind: 'delivery', amount: gbp(800), enabled: true } as const;
    const id = addCostLine(db, bag, delivery);
    addCostLine(db, null, delivery);
    addCostLine(db, bag, { kind: 'bend', label: 'a', amount: gbp(1), enabled: false }, 1);
    addCostLine(db, bag, { kind: 'bend', label: 'b', percent: 3.5, enabled: false }, 2);
    expect(storageError(() => addCostLine(db, bag, delivery)).code).toBe('constraint');
    expect(storageError(() => addCostLine(db, null, delivery)).code).toBe('constraint');
    expect(costLinesOf(db, bag).map((line) => line.kind)).toEqual(['delivery', 'bend', 'bend']);
    expect(costLinesOf(db, null)).toHaveLength(1);
    updateCostLine(db, id, { amount: null, percent: 4 });
    expect(costLinesOf(db, bag)[0]).toEqual({ id, kind: 'delivery', percent: 4, enabled: true });
    expect(storageError(() => updateCostLine(db, id, { percent: null })).code).toBe('constraint');
    deleteCostLine(db, id);
    expect(costLinesOf(db, bag)).toHaveLength(2);
  });
});

describe('plans', () => {
  const plan: Omit<PlanFields, 'bagId'> = {
    name: 'A',
    status: 'partly',
    openFindings: 2,
    cash: gbp(4500),
    net: gbp(-300),
    input: { bag: [1, null] },
    output: { x: 'ü' },
    programVersion: '0.1.0',
  };
  const stages: Stage[] = [
    { stage: 'now', cash: gbp(1), net: gbp(2), swaps: [{ buy: 'x' }], ladder: [] },
    { stage: 'handicap', handicapAtMost: -1.5, cash: gbp(0), net: gbp(0), swaps: [], doneOn: '2026-08-01' },
    { stage: 'season', season: 'spring', cash: gbp(0), net: gbp(0), swaps: [] },
  ];

  test('saved ones read back with their stages; the latest is a cache, one a bag', () => {
    const db = memoryDb();
    const bag = newBag(db);
    const id = savePlan(db, { ...plan, bagId: bag }, stages, NOW);
    expect(readPlan(db, id)).toEqual({ ...plan, bagId: bag, id, madeAt: NOW, picked: false, stages });
    const second = savePlan(db, { ...plan, bagId: bag, name: 'B' }, [], LATER);
    keepLatestPlan(db, { ...plan, bagId: bag, status: 'ok' }, NOW);
    const latest = keepLatestPlan(db, { ...plan, bagId: bag, status: 'stopped' }, LATER);
    expect(readLatestPlan(db, bag)).toMatchObject({ id: latest, status: 'stopped' });
    expect(db.prepare(`SELECT count(*) FROM plan WHERE kind = 'latest'`).pluck().get()).toBe(1);
    expect(listPlans(db, bag).map((p) => p.name)).toEqual(['B', 'A']);
    expect(listPlans(db, bag)[0]).not.toHaveProperty('input');
    pickPlan(db, id);
    pickPlan(db, second);
    expect(listPlans(db, bag).map((p) => p.picked)).toEqual([true, false]);
    deletePlan(db, second);
    expect(listPlans(db, bag)).toHaveLength(1);
    expect(readLatestPlan(db, newBag(db))).toBeUndefined();
  });

  test('a stage that waits for a handicap must say which', () => {
    const db = memoryDb();
    const waits: Stage = { stage: 'handicap', cash: gbp(0), net: gbp(0), swaps: [] };
    expect(storageError(() => savePlan(db, { ...plan, bagId: newBag(db) }, [waits], NOW)).code).toBe(
      'constraint',
    );
    expect(db.prepare('SELECT count(*) FROM plan').pluck().get()).toBe(0);
  });
});

describe('settings', () => {
  test('hold any JSON; not set is not null', () => {
    const db = memoryDb();
    for (const value of [null, 0, '', false, [], { air: { temperatureC: 15.1 } }]) {
      setSetting(db, 'a.b', value);
      expect(getSetting(db, 'a.b')).toEqual(value);
    }
    setSetting(db, 'a%', 1);
    setSetting(db, 'b', 2);
    expect([...settingsUnder(db, 'a.')]).toEqual([['a.b', { air: { temperatureC: 15.1 } }]]);
    expect([...settingsUnder(db).keys()]).toEqual(['a%', 'a.b', 'b']);
    deleteSetting(db, 'b');
    deleteSetting(db, 'b');
    expect(getSetting(db, 'b')).toBeUndefined();
  });
});

describe('courses', () => {
  test('everybody’s and a player’s own; holes are replaced whole; a deleted player takes theirs along', () => {
    const db = memoryDb();
    const player = createPlayer(db, PLAYER, NOW);
    const holes = [
      { par: 4, lengthYd: 380.5 },
      { par: 3, lengthYd: 150 },
    ];
    const home = addCourse(db, { playerId: player, name: 'home', holes }, NOW);
    const open = addCourse(db, { name: 'Away', holes: [] }, LATER);
    addCourse(db, { holes }, NOW);
    expect(readCourse(db, home)).toEqual({ id: home, playerId: player, name: 'home', holes, createdAt: NOW });
    expect(listCourses(db).map((c) => c.id)).toEqual([open]);
    expect(listCourses(db, player).map((c) => c.id)).toEqual([open, home]);
    updateCourse(db, home, { holes: [{ par: 5, lengthYd: 500 }] });
    updateCourse(db, home, { name: 'Home' });
    expect(readCourse(db, home)).toMatchObject({ name: 'Home', holes: [{ par: 5, lengthYd: 500 }] });
    expect(
      storageError(() =>
        updateCourse(db, home, {
          holes: [
            { par: 4, lengthYd: 1 },
            { par: 12, lengthYd: 1 },
          ],
        }),
      ).message,
    ).toContain('par is 12');
    expect(readCourse(db, home).holes).toHaveLength(1);
    deletePlayer(db, player);
    expect(listCourses(db, player).map((c) => c.id)).toEqual([open]);
    deleteCourse(db, open);
    expect(storageError(() => readCourse(db, open)).code).toBe('missing');
  });
});
