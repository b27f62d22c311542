import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { importDatabase } from '../../../db/files/import.ts';
import { logicalDump } from '../../../db/schema/dump.ts';
import { applyMigrations, migrate } from '../../../db/schema/migrate.ts';
import { loadMigrations, type Migration } from '../../../db/migration-files.ts';
import { openDatabase } from '../../../db/open.ts';
import { columnsOf, keyOf, schemaProblems, USER_TABLES } from '../../../db/schema/schema.ts';
import { APPLICATION_ID, connect, pragmaNumber, type Db } from '../../../db/sqlite.ts';
import { databaseAt, memoryDb, MIGRATIONS, NEWEST, NOW, openTemp, storageError, tempFolder } from './kit.ts';

// One row or two for each table, as plain SQL, since repositories follow the newest schema only.
const ROWS: Record<string, string> = {
  meta: `INSERT INTO meta VALUES ('k', 'v')`,
  setting: `INSERT INTO setting VALUES ('theme', '"lamp-lit"')`,
  player: `INSERT INTO player (id, name, handicap, handed, ground, miss_json, pain, created_at)
           VALUES (1, 'A', -2.5, 'left', 'firm', '["left"]', 1, '${NOW}'), (2, 'B', 54, 'right', 'soft', NULL, NULL, '${NOW}')`,
  course: `INSERT INTO course (id, player_id, name, created_at) VALUES (1, 1, NULL, '${NOW}')`,
  course_hole: `INSERT INTO course_hole VALUES (1, 1, 4, 380.25), (1, 2, 3, 150)`,
  bag: `INSERT INTO bag (id, player_id, state, distance_unit, speed_unit, currency, budget_minor, budget_currency, course_id, created_at)
        VALUES (1, 1, 'now', 'yd', 'mph', 'GBP', 20000, 'GBP', 1, '${NOW}'), (2, 1, 'archived', 'm', 'm/s', 'JPY', NULL, NULL, NULL, '${NOW}')`,
  archetype: `INSERT INTO archetype (id, source, kind, loft_deg, forgiveness, spin_tier, length_in)
              VALUES ('hybrid-22-t3', 'seed', 'hybrid', 22, 3, 'mid', 40.25), ('mine', 'own', 'wedge', 54, 1, 'high', 35)`,
  price_note: `INSERT INTO price_note (id, archetype_id, bag_id, low_minor, likely_minor, high_minor, currency, seen_on, created_at)
               VALUES (1, 'hybrid-22-t3', NULL, 1, 2, 3, 'EUR', '2026-02-28', '${NOW}'), (2, 'mine', 1, 5, 5, 5, 'GBP', NULL, '${NOW}')`,
  cost_line: `INSERT INTO cost_line (id, bag_id, kind, amount_minor, amount_currency, percent, enabled)
              VALUES (1, NULL, 'delivery', 900, 'GBP', NULL, 1), (2, 1, 'sell-fee', NULL, NULL, 12.5, 0)`,
  lot: `INSERT INTO lot (id, bag_id, key, listed) VALUES (1, 1, 'irons', 1)`,
  club: `INSERT INTO club (id, bag_id, key, kind, carry_yd, lot_id) VALUES (1, 1, '7i', 'iron', 141.3, 1), (2, 2, '7i', 'iron', NULL, NULL)`,
  shot_import: `INSERT INTO shot_import (id, player_id, distance_unit, speed_unit, rows_read, rows_skipped, imported_at)
                VALUES (1, 1, 'm', 'km/h', 10, 1, '${NOW}')`,
  shot: `INSERT INTO shot (id, import_id, club_id, row_number, carry_yd) VALUES (1, 1, 1, 2, 139.9), (2, 1, NULL, 3, 0)`,
  club_carry: `INSERT INTO club_carry (id, club_id, on_date, source, carry_yd, import_id, recorded_at)
               VALUES (1, 1, '2026-05-01', 'measured', 141.3, 1, '${NOW}')`,
  plan: `INSERT INTO plan (id, bag_id, kind, status, open_findings, input_json, output_json, program_version, made_at)
         VALUES (1, 1, 'saved', 'ok', 2, '{}', '{"a":[1]}', '0.1.0', '${NOW}')`,
  path_stage: `INSERT INTO path_stage (plan_id, position, stage, cash_minor, cash_currency, net_minor, net_currency, swaps_json)
               VALUES (1, 0, 'now', 4500, 'GBP', -100, 'GBP', '[]')`,
  handover: `INSERT INTO handover VALUES (1, 'A word before.', 'de', '2027-02-28'), (2, NULL, NULL, NULL)`,
  diary_entry: `INSERT INTO diary_entry (id, player_id, on_date, text, written_at)
                VALUES (1, 1, '2026-05-01', 'Grip stronger.

See again.', '${NOW}'), (2, 1, '2026-05-01', 'x', '${NOW}')`,
  undo_step: `INSERT INTO undo_step (id, stack, label, at) VALUES (1, 'undo', 'add a club', '${NOW}')`,
  undo_log: `INSERT INTO undo_log (step_id, table_name, op, after_json) VALUES (1, 'club', 'insert', '{"id":1}')`,
};

// Columns that a migration takes away; where what was in them went has a test of its own.
const GONE = ['player.notes'];

/** Whole rows, table by table in the order of their keys, but for the columns in GONE. */
const rowsOf = (db: Db, tables: readonly string[]): unknown[] =>
  tables.map((table) => {
    const columns = columnsOf(db, table);
    const names = columns.map(({ name }) => name).filter((name) => !GONE.includes(`${table}.${name}`));
    const sql = `SELECT ${names.join(', ')} FROM ${table} ORDER BY ${keyOf(columns).join(', ')}`;
    return { table, names, rows: db.prepare(sql).raw().all() };
  });

// The search index and its shadow tables are made of price_note: they hold nothing of their own.
const tablesOf = (db: Db): string[] =>
  (db.pragma('table_list') as { schema: string; name: string; type: string }[])
    .filter(({ schema, type, name }) => schema === 'main' && type === 'table' && !name.startsWith('sqlite'))
    .map(({ name }) => name);

const objectsOf = (db: Db) => db.prepare('SELECT count(*) FROM sqlite_schema').pluck().get() as number;

function fill(db: Db): void {
  const present = new Set(tablesOf(db));
  for (const [table, sql] of Object.entries(ROWS)) if (present.has(table)) db.exec(sql);
}

describe('the migration files', () => {
  test('each new migration has a fixture row for its tables', () => {
    expect(Object.keys(ROWS).sort()).toEqual(tablesOf(memoryDb()).sort());
  });

  test.each(MIGRATIONS)(
    'from the version before to $number ($name) every row stays as it was',
    ({ number }) => {
      const db = databaseAt(':memory:', number - 1);
      fill(db);
      const before = tablesOf(db).filter((table) => !table.startsWith('undo_'));
      const objects = objectsOf(db);
      const rows = rowsOf(db, before);
      db.transaction(() => {
        applyMigrations(db, MIGRATIONS, number);
      })();
      expect(rowsOf(db, before)).toEqual(rows);
      expect(pragmaNumber(db, 'user_version')).toBe(number);
      expect(objectsOf(db)).toBeGreaterThan(objects);
      expect(schemaProblems(db, MIGRATIONS, number, { strange: true })).toEqual([]);
    },
  );

  test.each(MIGRATIONS)('a file left at $number is opened with its rows, after a backup', ({ number }) => {
    const file = join(tempFolder(), 'data.loftledger');
    const old = databaseAt(file, number);
    fill(old);
    const kept = tablesOf(old).filter((table) => !table.startsWith('undo_'));
    const rows = rowsOf(old, kept);
    old.close();
    const opened = openTemp(file);
    expect(rowsOf(opened.db, kept)).toEqual(rows);
    expect(opened.upgradedFrom).toBe(number === NEWEST ? null : number);
    expect(opened.backup === null).toBe(number === NEWEST);
  });

  test('a fresh database has every table, and all of them hold the fixture rows', () => {
    const db = databaseAt(':memory:', NEWEST);
    fill(db);
    expect(db.pragma('foreign_key_check')).toEqual([]);
    expect(pragmaNumber(db, 'application_id')).toBe(APPLICATION_ID);
  });

  test('a failing migration leaves the database as it was', () => {
    const db = databaseAt(':memory:', NEWEST);
    fill(db);
    const dump = logicalDump(db);
    const bad: Migration[] = [
      ...MIGRATIONS,
      { number: NEWEST + 1, name: 'good', sql: 'DELETE FROM plan; ALTER TABLE player ADD COLUMN x TEXT;' },
      { number: NEWEST + 2, name: 'bad', sql: 'INSERT INTO nowhere VALUES (1);' },
    ];
    const error = storageError(() => migrate(db, { file: 'f', migrations: bad, now: NOW, backupDir: null }));
    expect(error.code).toBe('bug');
    expect(logicalDump(db)).toBe(dump);
    expect(pragmaNumber(db, 'user_version')).toBe(NEWEST);
    expect(pragmaNumber(db, 'foreign_keys')).toBe(1);
  });

  test('a migration that leaves a link broken is taken back', () => {
    const db = databaseAt(':memory:', NEWEST);
    fill(db);
    const bad = [...MIGRATIONS, { number: NEWEST + 1, name: 'bad', sql: 'DELETE FROM player;' }];
    const error = storageError(() => migrate(db, { file: 'f', migrations: bad, now: NOW, backupDir: null }));
    expect(error.code).toBe('damaged');
    expect(error.message).toContain('names a player that is gone');
    expect(db.prepare('SELECT count(*) FROM player').pluck().get()).toBe(2);
  });

  test('an upgrade forgets the undo history, whose rows have the old shape', () => {
    const db = databaseAt(':memory:', NEWEST);
    fill(db);
    const more = [
      ...MIGRATIONS,
      { number: NEWEST + 1, name: 'more', sql: 'ALTER TABLE club ADD COLUMN x TEXT;' },
    ];
    migrate(db, { file: 'f', migrations: more, now: NOW, backupDir: null });
    expect(
      db.prepare('SELECT (SELECT count(*) FROM undo_step) + (SELECT count(*) FROM undo_log)').pluck().get(),
    ).toBe(0);
  });
});

describe('from 9 to 10, the undated text about a player becomes the first entry of a diary', () => {
  const TEXTS: [id: number, notes: string | null, createdAt: string, day: string | null][] = [
    [1, 'left wrist, since spring\r\n\n  see again', '2026-03-04T23:59:59Z', '2026-03-04'],
    [2, null, NOW, null],
    [3, '', NOW, null],
    [4, ' ', '2026-02-31T00:00:00Z', '2026-03-03'],
    [5, 'ä'.repeat(100_000), '2026-99-99T00:00:00Z', '2000-01-01'],
    [6, '\u0000before it', '2026-03-05T00:00:00Z', '2026-03-05'],
  ];
  const left = (file: string): Db => {
    const db = databaseAt(file, 9);
    const insert = db.prepare(
      `INSERT INTO player (id, name, handicap, handed, ground, notes, created_at, archived_at)
       VALUES (?, ?, 18, 'right', 'soft', ?, ?, ?)`,
    );
    for (const [id, notes, createdAt] of TEXTS) {
      insert.run(id, `player ${String(id)}`, notes, createdAt, id === 4 ? NOW : null);
    }
    return db;
  };
  const wanted = TEXTS.flatMap(([playerId, text, writtenAt, day]) =>
    day === null ? [] : [{ playerId, day, text, writtenAt }],
  );
  const found = (db: Db) =>
    db
      .prepare(
        'SELECT player_id AS playerId, on_date AS day, text, written_at AS writtenAt FROM diary_entry ORDER BY id',
      )
      .all();

  test('letter for letter, on the day that they were entered; nothing else of a player changes', () => {
    const db = left(':memory:');
    const players = rowsOf(db, ['player']);
    migrate(db, { file: ':memory:', migrations: MIGRATIONS, now: NOW, backupDir: null });
    expect(found(db)).toEqual(wanted);
    expect(rowsOf(db, ['player'])).toEqual(players);
    expect(columnsOf(db, 'player').map(({ name }) => name)).not.toContain('notes');
    const index = db.prepare('SELECT rowid FROM diary_entry_index WHERE diary_entry_index MATCH ?').pluck();
    expect(index.all('"wri"')).toEqual([1]);
    db.exec(`INSERT INTO diary_entry_index (diary_entry_index, rank) VALUES ('integrity-check', 1)`);
  });

  test('in a file too, whose backup still has the older form', () => {
    const file = join(tempFolder(), 'data.loftledger');
    left(file).close();
    const { db, backup } = openTemp(file);
    expect(found(db)).toEqual(wanted);
    const kept = connect(backup ?? '', { readonly: true });
    const notes = kept.prepare('SELECT notes FROM player WHERE id = 1').pluck().get();
    kept.close();
    expect(notes).toBe(TEXTS[0]?.[1]);
  });

  test('and in one that is taken in', () => {
    const folder = tempFolder();
    const source = join(folder, 'other.loftledger');
    left(source).close();
    const file = join(folder, 'data.loftledger');
    importDatabase({ file, source, now: NOW });
    expect(found(openTemp(file).db)).toEqual(wanted);
  });
});

describe('loading migrations', () => {
  const folderWith = (...names: string[]): string => {
    const folder = join(tempFolder(), 'migrations');
    mkdirSync(folder);
    for (const name of names) writeFileSync(join(folder, name), 'SELECT 1;');
    return folder;
  };

  test('numbers rise from 1 by one', () => {
    expect(loadMigrations(folderWith('0001-a.sql', '0002-b.sql')).map((m) => m.number)).toEqual([1, 2]);
    expect(storageError(() => loadMigrations(folderWith('0001-a.sql', '0003-c.sql'))).message).toContain(
      '2 expected, 3',
    );
    expect(storageError(() => loadMigrations(folderWith('0002-a.sql'))).message).toContain('1 expected, 2');
    expect(storageError(() => loadMigrations(folderWith('0001-a.sql', '0001-b.sql'))).message).toContain(
      '2 expected, 1',
    );
    expect(storageError(() => loadMigrations(folderWith())).message).toContain('none');
  });

  test('a name that does not fit is refused', () => {
    expect(storageError(() => loadMigrations(folderWith('1-a.sql'))).message).toContain('1-a.sql');
  });
});

describe('the tables', () => {
  test('all are STRICT, and USER_TABLES has all but the program’s own, parents first', () => {
    const db = memoryDb();
    const list = db.pragma('table_list') as { name: string; type: string; schema: string; strict: number }[];
    const ours = list.filter(
      (t) => t.schema === 'main' && t.type === 'table' && !t.name.startsWith('sqlite_'),
    );
    expect(ours.filter((t) => t.strict !== 1)).toEqual([]);
    const own = ['meta', 'undo_log', 'undo_step'];
    expect(ours.map((t) => t.name).sort()).toEqual([...USER_TABLES, ...own].sort());
    for (const [index, table] of USER_TABLES.entries()) {
      const links = db.pragma(`foreign_key_list(${table})`) as { table: string }[];
      for (const { table: parent } of links) {
        expect(USER_TABLES.indexOf(parent as (typeof USER_TABLES)[number])).toBeLessThan(index);
      }
    }
  });

  test('every reference has an index that begins with it, so that a cascade never scans', () => {
    const db = memoryDb();
    const bare: string[] = [];
    for (const table of tablesOf(db)) {
      const links = db.pragma(`foreign_key_list(${table})`) as { id: number; seq: number; from: string }[];
      const indexes = (db.pragma(`index_list(${table})`) as { name: string; partial: number }[]).filter(
        (i) => i.partial === 0,
      );
      const starts = indexes.map(({ name }) =>
        (db.pragma(`index_info(${name})`) as { name: string }[]).map((c) => c.name),
      );
      starts.push(keyOf(columnsOf(db, table)));
      for (const id of new Set(links.map((link) => link.id))) {
        const from = links
          .filter((link) => link.id === id)
          .sort((a, b) => a.seq - b.seq)
          .map((link) => link.from);
        const covered = starts.some((start) =>
          from.every((name) => start.slice(0, from.length).includes(name)),
        );
        if (!covered) bare.push(`${table} (${from.join(', ')})`);
      }
    }
    expect(bare).toEqual([]);
  });

  test('every amount in minor units has its currency beside it', () => {
    const db = memoryDb();
    const missing = USER_TABLES.flatMap((table) => {
      const names = columnsOf(db, table).map((column) => column.name);
      return names
        .filter((name) => name.endsWith('_minor'))
        .map((name) => name.replace(/(low_|likely_|high_)?minor$/, 'currency'))
        .filter((currency) => !names.includes(currency))
        .map((currency) => `${table}.${currency}`);
    });
    expect(missing).toEqual([]);
  });

  test('money is INTEGER; distances, speeds and angles are REAL', () => {
    const db = memoryDb();
    for (const table of USER_TABLES) {
      for (const { name, type } of columnsOf(db, table)) {
        if (name.endsWith('_minor')) expect([table, name, type]).toEqual([table, name, 'INTEGER']);
        if (/_(yd|mph|deg|in|rpm)$/.test(name)) expect([table, name, type]).toEqual([table, name, 'REAL']);
      }
    }
  });
});

test('a schema that differs is named', () => {
  const db = connect(':memory:');
  db.exec(MIGRATIONS.map((m) => m.sql).join('\n'));
  db.exec(
    'DROP INDEX bag_by_player; ALTER TABLE player ADD COLUMN extra TEXT; CREATE VIEW v AS SELECT 1 AS x;',
  );
  const problems = schemaProblems(db, MIGRATIONS, NEWEST, { strange: true });
  expect(problems).toHaveLength(3);
  expect(problems.join('\n')).toMatch(
    /index bag_by_player is missing[^]*table player has the columns[^]*view v is not ours/,
  );
  expect(schemaProblems(db, MIGRATIONS, NEWEST)).toHaveLength(2);
  db.close();
});

test('the database in memory is whole', () => {
  const { db, created } = openDatabase({ file: ':memory:', now: NOW });
  expect(created).toBe(true);
  expect(schemaProblems(db, MIGRATIONS, NEWEST, { strange: true })).toEqual([]);
  db.close();
});
