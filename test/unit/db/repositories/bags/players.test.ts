import { expect, test } from 'vitest';
import { createBag } from '../../../../../db/repositories/bags/bags.ts';
import { addDiaryEntry } from '../../../../../db/repositories/bags/diary.ts';
import { addClub } from '../../../../../db/repositories/bags/clubs.ts';
import { keepLatestPlan } from '../../../../../db/repositories/plans.ts';
import {
  archivePlayer,
  createPlayer,
  deletePlayer,
  listPlayers,
  readPlayer,
  roster,
  touchPlayer,
  unarchivePlayer,
  updatePlayer,
  type PlayerFields,
} from '../../../../../db/repositories/bags/players.ts';
import { LATER, memoryDb, NOW, PLAYER, storageError } from '../../kit.ts';

const FULL: PlayerFields = {
  name: 'Ö "x" <b>',
  handicap: -2.4,
  targetHandicap: 0,
  driverSpeedMph: 93.1,
  handed: 'left',
  ground: 'firm',
  flighted: false,
  miss: ['thin', 'left'],
  missNote: 'under pressure',
  pain: false,
  airTemperatureC: -1.5,
  airHumidity: 0,
  airAltitudeM: 1600,
};

test('a player reads back as written, with all fields or the fewest', () => {
  const db = memoryDb();
  const full = createPlayer(db, FULL, NOW);
  const least = createPlayer(db, { ...PLAYER, miss: [] }, LATER);
  expect(readPlayer(db, full)).toEqual({ ...FULL, id: full, createdAt: NOW });
  expect(readPlayer(db, least)).toEqual({ ...PLAYER, miss: [], id: least, createdAt: LATER });
});

test('a patch changes what it names and null clears', () => {
  const db = memoryDb();
  const id = createPlayer(db, FULL, NOW);
  updatePlayer(db, id, { pain: null, missNote: 'healed', miss: null });
  const { pain: _pain, miss: _miss, ...rest } = FULL;
  expect(readPlayer(db, id)).toEqual({ ...rest, missNote: 'healed', id, createdAt: NOW });
  updatePlayer(db, id, {});
  expect(storageError(() => updatePlayer(db, id, { name: null })).code).toBe('constraint');
  expect(storageError(() => updatePlayer(db, 99, { missNote: 'x' })).message).toBe('There is no player 99');
  expect(storageError(() => updatePlayer(db, 99, {})).code).toBe('missing');
});

test('lists go by name without regard to case; the archived apart', () => {
  const db = memoryDb();
  const ids = ['b', 'A', 'c', 'a'].map((name) => createPlayer(db, { ...PLAYER, name }, NOW));
  expect(listPlayers(db).map((p) => p.name)).toEqual(['A', 'a', 'b', 'c']);
  archivePlayer(db, ids[0] ?? 0, LATER);
  expect(listPlayers(db).map((p) => p.name)).toEqual(['A', 'a', 'c']);
  expect(listPlayers(db, { archived: true })).toMatchObject([{ name: 'b', archivedAt: LATER }]);
  unarchivePlayer(db, ids[0] ?? 0);
  expect(listPlayers(db)).toHaveLength(4);
});

test('the roster has the bag of now, its budget and its open findings', () => {
  const db = memoryDb();
  const a = createPlayer(db, { ...PLAYER, name: 'a' }, NOW);
  const b = createPlayer(db, { ...PLAYER, name: 'b' }, NOW);
  const units = { distanceUnit: 'yd', speedUnit: 'mph', currency: 'GBP' } as const;
  createBag(db, a, { ...units, state: 'planned', budget: { minor: 1, currency: 'GBP' } }, NOW);
  const bag = createBag(db, a, { ...units, state: 'now', budget: { minor: 20000, currency: 'GBP' } }, NOW);
  addClub(db, bag, { key: 'a', kind: 'iron' });
  addClub(db, bag, { key: 'b', kind: 'iron' }, { place: 'shelf' });
  const plan = { bagId: bag, status: 'ok', input: {}, output: {}, programVersion: '0.1.0' } as const;
  keepLatestPlan(db, { ...plan, openFindings: 5 }, NOW);
  keepLatestPlan(db, { ...plan, openFindings: 3 }, LATER);
  touchPlayer(db, a, LATER);
  for (const onDate of ['2026-01-02', '2026-03-04', '2025-12-31'])
    addDiaryEntry(db, a, { onDate, text: 'x' }, NOW);
  expect(roster(db)).toEqual([
    {
      id: a,
      name: 'a',
      handicap: 18,
      lastLookedAt: LATER,
      bagId: bag,
      clubs: 1,
      openFindings: 3,
      status: 'ok',
      plannedAt: LATER,
      budget: { minor: 20000, currency: 'GBP' },
      notedOn: '2026-03-04',
    },
    { id: b, name: 'b', handicap: 18, clubs: 0 },
  ]);
});

test('a deleted player is gone, and deleting again says so', () => {
  const db = memoryDb();
  const id = createPlayer(db, PLAYER, NOW);
  deletePlayer(db, id);
  expect(storageError(() => readPlayer(db, id))).toMatchObject({ code: 'missing' });
  expect(storageError(() => deletePlayer(db, id)).code).toBe('missing');
  expect(createPlayer(db, PLAYER, NOW)).toBeGreaterThan(id);
});

test('refusals name the column and the value', () => {
  const db = memoryDb();
  const bad = (part: object) => storageError(() => createPlayer(db, { ...PLAYER, ...part }, NOW)).message;
  expect(bad({ handicap: 500 })).toContain('handicap is 500');
  expect(bad({ handicap: NaN })).toContain('handicap is NaN');
  expect(bad({ handed: 'both' })).toContain('handed is "both"');
  expect(bad({ driverSpeedMph: 900 })).toContain('driver_speed_mph is 900');
  expect(bad({ airHumidity: 50 })).toContain('air_humidity is 50');
  expect(storageError(() => createPlayer(db, PLAYER, 'yesterday')).message).toContain(
    'created_at is "yesterday"',
  );
  expect(listPlayers(db)).toEqual([]);
});

test('hostile names are kept as text', () => {
  const db = memoryDb();
  for (const name of [
    "'); DROP TABLE player;--",
    '<script>alert(1)</script>',
    '=1+1',
    '\u0000nul',
    '😀',
    'a'.repeat(1000),
  ]) {
    expect(readPlayer(db, createPlayer(db, { ...PLAYER, name }, NOW)).name).toBe(name);
  }
  expect(readPlayer(db, createPlayer(db, { ...PLAYER, name: 'half \ud800' }, NOW)).name).toBe('half \ufffd');
});
