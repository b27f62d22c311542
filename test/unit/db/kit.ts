import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import { StorageError } from '../../../db/errors.ts';
import { applyMigrations } from '../../../db/schema/migrate.ts';
import { loadMigrations } from '../../../db/migration-files.ts';
import { openDatabase } from '../../../db/open.ts';
import {
  addOwnArchetype,
  seedArchetypes,
  type ArchetypeFields,
} from '../../../db/repositories/prices/archetypes.ts';
import type { PlayerFields } from '../../../db/repositories/bags/players.ts';
import type { WholeBag } from '../../../db/repositories/bags/whole-bag.ts';
import { connect, type Db } from '../../../db/sqlite.ts';

export const NOW = '2026-11-26T04:20:00.000Z';
export const LATER = '2026-11-27T05:30:00.000Z';
export const MIGRATIONS = loadMigrations();
export const NEWEST = MIGRATIONS.length;

/** A folder that goes when the test ends. */
export function tempFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'loftledger-test-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** An opened database in memory with a small catalogue. */
export function memoryDb(): Db {
  const { db } = openDatabase({ file: ':memory:', now: NOW, migrations: MIGRATIONS });
  onTestFinished(() => {
    db.close();
  });
  seedArchetypes(db, CATALOGUE, NOW);
  return db;
}

/** Opens a file and closes it when the test ends. */
export function openTemp(file: string, options: Partial<Parameters<typeof openDatabase>[0]> = {}) {
  const opened = openDatabase({ file, now: NOW, migrations: MIGRATIONS, ...options });
  onTestFinished(() => {
    opened.db.close();
  });
  return opened;
}

/** A database as a program of an older version left it: the first `version` migrations, nothing else. */
export function databaseAt(file: string, version: number): Db {
  const db = connect(file);
  onTestFinished(() => {
    db.close();
  });
  db.transaction(() => {
    applyMigrations(db, MIGRATIONS, version);
  })();
  return db;
}

/** The StorageError that fn throws. */
export function storageError(fn: () => unknown): StorageError {
  try {
    fn();
  } catch (error) {
    if (error instanceof StorageError) return error;
    throw error;
  }
  throw new Error('nothing was thrown');
}

/** What SQLite does for each statement that fn prepares, a line each. */
export function queryPlans(db: Db, fn: () => unknown): string[] {
  const prepare = db.prepare.bind(db);
  const texts: string[] = [];
  db.prepare = ((sql: string) => {
    texts.push(sql);
    return prepare(sql);
  }) as Db['prepare'];
  try {
    fn();
  } finally {
    db.prepare = prepare;
  }
  return texts.flatMap((sql) => {
    const names = [...new Set(sql.match(/@\w+/g))].map((name) => [name.slice(1), null]);
    const plan = prepare<unknown[], { detail: string }>(`EXPLAIN QUERY PLAN ${sql}`);
    return plan.all(Object.fromEntries(names)).map((row) => row.detail);
  });
}

export const PLAYER: PlayerFields = {
  name: 'Invented Player',
  handicap: 18,
  handed: 'right',
  ground: 'soft',
};

export const CATALOGUE: ArchetypeFields[] = [
  { id: 'hybrid-22-t3', kind: 'hybrid', loftDeg: 22, forgiveness: 3, spinTier: 'mid', lengthIn: 40 },
  { id: 'driver-9-t2-low', kind: 'driver', loftDeg: 9, forgiveness: 2, spinTier: 'low', lengthIn: 45 },
  {
    id: 'irons-7-9-30-t3',
    kind: 'irons',
    loftDeg: 30,
    forgiveness: 3,
    spinTier: 'mid',
    lengthIn: 37,
    members: [
      { kind: 'iron', number: '7', loftDeg: 30 },
      { kind: 'iron', number: '8', loftDeg: 34 },
      { kind: 'wedge', number: 'PW', loftDeg: 44 },
    ],
  },
];

export function addOwn(db: Db, id: string): void {
  addOwnArchetype(db, { ...(CATALOGUE[0] as ArchetypeFields), id });
}

const band = (lowMinor: number, likelyMinor: number, highMinor: number, currency = 'GBP') => ({
  lowMinor,
  likelyMinor,
  highMinor,
  currency,
});

/** A bag that gives everything that a bag file can give. */
export const FULL_BAG: WholeBag = {
  name: 'Summer',
  state: 'now',
  units: { distance: 'm', speed: 'km/h', currency: 'GBP' },
  clubs: [
    {
      key: '7i',
      kind: 'iron',
      label: 'old seven',
      loftDeg: 33.5,
      loftMeasured: true,
      lieDeg: 62.25,
      lengthIn: 37,
      carryYd: 141.30000000000001,
      carrySdYd: 6.2,
      shots: 24,
      totalYd: 152.2,
      ballSpeedMph: 108.1,
      launchDeg: 17.3,
      spinRpm: 6400,
      forgiveness: 3,
      spinTier: 'high',
      flex: 'R',
      yearMade: 2016,
      goTo: true,
      lotKey: 'irons',
      sell: band(500, 900, 1500),
    },
    { key: 'driver', kind: 'driver', goTo: false, loftMeasured: false },
    { key: 'p', kind: 'putter' },
    { key: '8i', kind: 'iron', lotKey: 'unlisted' },
  ],
  lots: [{ key: 'irons', sell: band(5000, 9000, 15000) }, { key: 'spare' }],
  prices: [
    { archetypeId: 'hybrid-22-t3', band: band(3000, 4500, 6000), seenOn: '2026-10-02' },
    { archetypeId: 'driver-9-t2-low', band: band(0, 0, 1) },
    { archetypeId: 'hybrid-22-t3', band: band(2000, 2500, 3500, 'EUR') },
  ],
  costs: {
    delivery: { minor: 800, currency: 'GBP' },
    regrip: { minor: 0, currency: 'GBP' },
    sellFeePercent: 12.5,
    sellPostage: { minor: 650, currency: 'GBP' },
  },
  budget: { amount: { minor: 25000, currency: 'GBP' }, cashBeforeSales: false },
  choices: { changePutter: false },
  course: {
    holes: [
      { par: 4, lengthYd: 380.5 },
      { par: 3, lengthYd: 160 },
    ],
  },
};
