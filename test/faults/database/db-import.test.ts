import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { exportDatabase } from '../../../db/files/backup.ts';
import { logicalDump } from '../../../db/schema/dump.ts';
import { checkImport, copyRowsFrom, importDatabase } from '../../../db/files/import.ts';
import { seedArchetypes } from '../../../db/repositories/prices/archetypes.ts';
import { createPlayer } from '../../../db/repositories/bags/players.ts';
import { writeBag } from '../../../db/repositories/bags/whole-bag.ts';
import { connect, type Db } from '../../../db/sqlite.ts';
import {
  CATALOGUE,
  FULL_BAG,
  LATER,
  memoryDb,
  NEWEST,
  NOW,
  openTemp,
  PLAYER,
  storageError,
  tempFolder,
} from '../../unit/db/kit.ts';

/** An export with a player and a bag, then changed by hostile hands. */
function hostileFile(folder: string, change: (db: Db) => void): string {
  const file = join(folder, 'hostile.loftledger');
  const db = memoryDb();
  writeBag(db, createPlayer(db, PLAYER, NOW), FULL_BAG, NOW);
  exportDatabase(db, file);
  const theirs = connect(file);
  theirs.unsafeMode(true);
  theirs.pragma('foreign_keys = OFF');
  change(theirs);
  theirs.close();
  return file;
}

/** Rewrites the text of a table in the schema, as only a hostile program would. */
function rewriteTable(db: Db, table: string, edit: (sql: string) => string): void {
  db.pragma('writable_schema = ON');
  const sql = db.prepare(`SELECT sql FROM sqlite_schema WHERE name = ?`).pluck().get(table) as string;
  expect(edit(sql)).not.toBe(sql);
  db.prepare(`UPDATE sqlite_schema SET sql = ? WHERE name = ?`).run(edit(sql), table);
  db.pragma('writable_schema = RESET');
}

const withoutChecks = (sql: string) => sql.replace(/CHECK \(handicap BETWEEN -20 AND 99\)/, '');

const CHANGES: [string, (db: Db) => void, code: string, message: RegExp][] = [
  ['a newer schema', (db) => db.pragma(`user_version = ${NEWEST + 1}`), 'newer-database', /newer version/],
  ['another application id', (db) => db.pragma('application_id = 7'), 'foreign-file', /another program/],
  ['version 0', (db) => db.pragma('user_version = 0'), 'foreign-file', /another program/],
  [
    'a trigger',
    (db) => db.exec('CREATE TRIGGER t AFTER INSERT ON player BEGIN DELETE FROM bag; END'),
    'foreign-file',
    /trigger t is not ours/,
  ],
  [
    'a trigger of ours that does something else',
    (db) =>
      db.exec(`DROP TRIGGER price_note_index_insert;
        CREATE TRIGGER price_note_index_insert AFTER INSERT ON price_note BEGIN DELETE FROM bag; END`),
    'foreign-file',
    /trigger price_note_index_insert does not do what ours does/,
  ],
  [
    'an index of words that is made of another table',
    (db) =>
      db.exec(`DROP TABLE price_note_index;
        CREATE VIRTUAL TABLE price_note_index USING fts5 (said, content = 'player', tokenize = 'trigram', detail = none)`),
    'foreign-file',
    /table price_note_index does not do what ours does/,
  ],
  [
    'an index of words that is torn',
    (db) => db.exec(`UPDATE price_note_index_data SET block = x'00' WHERE id > 10`),
    'damaged',
    /price_note_index/,
  ],
  ['a view', (db) => db.exec('CREATE VIEW v AS SELECT 1 AS x'), 'foreign-file', /view v is not ours/],
  ['a table more', (db) => db.exec('CREATE TABLE extra (x)'), 'foreign-file', /table extra is not ours/],
  [
    'a virtual table more',
    (db) => db.exec('CREATE VIRTUAL TABLE f USING fts5(x)'),
    'foreign-file',
    /is not ours/,
  ],
  ['a table less', (db) => db.exec('DROP TABLE path_stage'), 'foreign-file', /table path_stage is missing/],
  [
    'a view in the place of a table',
    (db) => db.exec('DROP TABLE setting; CREATE VIEW setting AS SELECT 1 AS key, 2 AS value'),
    'foreign-file',
    /table setting is missing/,
  ],
  [
    'a virtual table in the place of a table',
    (db) => db.exec('DROP TABLE setting; CREATE VIRTUAL TABLE setting USING fts5(key, value)'),
    'foreign-file',
    /table setting is virtual/,
  ],
  [
    'a column more',
    (db) => db.exec('ALTER TABLE player ADD COLUMN x TEXT'),
    'foreign-file',
    /table player has the columns/,
  ],
  [
    'a column less',
    (db) => db.exec('ALTER TABLE shot DROP COLUMN apex_yd'),
    'foreign-file',
    /table shot has the columns/,
  ],
  [
    'a computed column',
    (db) =>
      db.exec(
        `DROP TABLE setting; CREATE TABLE setting (key TEXT NOT NULL PRIMARY KEY, value TEXT AS (hex(zeroblob(900000000)))) STRICT, WITHOUT ROWID`,
      ),
    'foreign-file',
    /value TEXT computed/,
  ],
  [
    'a value beyond its range, the rule still there',
    (db) => db.exec('PRAGMA ignore_check_constraints = ON; UPDATE player SET handicap = 500'),
    'damaged',
    /CHECK constraint failed in player/,
  ],
  [
    'a value beyond its range, the rule taken out',
    (db) => {
      rewriteTable(db, 'player', withoutChecks);
      db.exec('UPDATE player SET handicap = 500');
    },
    'bad-rows',
    /rows of player.*handicap BETWEEN/,
  ],
  [
    'a letter of the schema changed, so that a rule calls what does not exist (database files 248)',
    (db) => rewriteTable(db, 'setting', (sql) => sql.replace('json_valid', 'json_valmd')),
    'damaged',
    /no such function: json_valmd|unknown function/,
  ],
  [
    'an infinite number',
    (db) => {
      rewriteTable(db, 'player', withoutChecks);
      db.exec('UPDATE player SET handicap = 9e999');
    },
    'bad-rows',
    /handicap/,
  ],
  [
    'text where a number is due',
    (db) => {
      rewriteTable(db, 'club', (sql) =>
        sql.replace(/ STRICT$/, '').replace(/CHECK \(shots BETWEEN 0 AND 10000000\)/, ''),
      );
      db.exec(`UPDATE club SET shots = 'many'`);
    },
    'bad-rows',
    /cannot store TEXT value in INTEGER column club\.shots/,
  ],
  [
    'two clubs of one key',
    (db) => {
      rewriteTable(db, 'lot', (sql) => sql.replace('UNIQUE (bag_id, key)', 'UNIQUE (bag_id, key, id)'));
      db.exec('REINDEX');
      db.exec(`UPDATE lot SET key = 'same'`);
    },
    'bad-rows',
    /UNIQUE constraint failed: lot/,
  ],
  [
    'JSON too deep to read',
    (db) => {
      rewriteTable(db, 'setting', (sql) => sql.replace('CHECK (json_valid(value))', ''));
      db.prepare('INSERT INTO setting VALUES (?, ?)').run('deep', '['.repeat(200_000));
    },
    'bad-rows',
    /rows of setting/,
  ],
  [
    'a link that leads nowhere',
    (db) => db.exec('UPDATE bag SET player_id = 77'),
    'damaged',
    /names a player that is gone/,
  ],
];

describe('an import is refused and nothing changes, neither here nor in the file, for', () => {
  test.each(CHANGES)('%s', (_, change, code, message) => {
    const folder = tempFolder();
    const source = hostileFile(folder, change);
    const print = () => createHash('sha256').update(readFileSync(source)).digest('hex');
    const before = print();
    const file = join(folder, 'mine', 'data.loftledger');
    const mine = openTemp(file).db;
    seedArchetypes(mine, CATALOGUE, NOW);
    writeBag(mine, createPlayer(mine, { ...PLAYER, name: 'mine' }, NOW), FULL_BAG, NOW);
    const dump = logicalDump(mine);
    mine.close();

    const error = storageError(() => importDatabase({ file, source, now: LATER }));
    expect(error.message).toMatch(message);
    expect(error).toMatchObject({ code, file: source });
    expect(error.remedy).toMatch(/\w+\.$/);
    expect(logicalDump(openTemp(file).db)).toBe(dump);
    expect(print()).toBe(before);
    expect(readdirSync(folder).sort()).toEqual(['hostile.loftledger', 'mine']);
    expect(readdirSync(join(folder, 'mine')).filter((name) => /import|backup/.test(name))).toEqual([]);

    const fresh = openTemp(':memory:').db;
    const empty = logicalDump(fresh);
    expect(storageError(() => copyRowsFrom(fresh, source)).code).toBe(code);
    expect(logicalDump(fresh)).toBe(empty);
    expect(fresh.pragma('database_list')).toHaveLength(2); // main and temp: the file is not left attached
    if (code !== 'bad-rows') expect(storageError(() => checkImport(source)).code).toBe(code);
  });

  test('what is no database at all', () => {
    const folder = tempFolder();
    const source = join(folder, 'x.loftledger');
    expect(storageError(() => checkImport(source))).toMatchObject({ code: 'missing', file: source });
    writeFileSync(source, '');
    expect(storageError(() => checkImport(source)).code).toBe('empty-file');
    writeFileSync(source, '{"format":"loftledger-bag"}'.repeat(100));
    expect(storageError(() => checkImport(source)).code).toBe('foreign-file');
    expect(storageError(() => checkImport(folder)).code).toBe('foreign-file');
    expect(readdirSync(folder)).toEqual(['x.loftledger']);
  });

  test('one that was cut short, or has a torn page', () => {
    const folder = tempFolder();
    const source = hostileFile(folder, () => undefined);
    const whole = readFileSync(source);
    truncateSync(source, whole.length - 4096);
    expect(storageError(() => checkImport(source)).message).toMatch(/cut short/);
    for (let page = 1; page < whole.length / 4096; page += 1) {
      const torn = Buffer.from(whole);
      torn.fill(0x5a, page * 4096, page * 4096 + 64);
      writeFileSync(source, torn);
      expect(storageError(() => checkImport(source)).code).toBe('damaged');
    }
    writeFileSync(source, whole);
    expect(checkImport(source).rows).toMatchObject({ player: 1, club: 4 });
  });
});

test('hostile text comes through as the text it is', () => {
  const folder = tempFolder();
  const names = [`'); DROP TABLE player;--`, '=1+1', '<img src=x onerror=alert(1)>', '\u202Egnp.exe'];
  const source = hostileFile(folder, (db) => {
    for (const name of names) createPlayer(db, { ...PLAYER, name }, NOW);
  });
  const fresh = openTemp(':memory:').db;
  copyRowsFrom(fresh, source);
  const found = fresh.prepare('SELECT name FROM player ORDER BY id').pluck().all();
  expect(found).toEqual([PLAYER.name, ...names]);
});
