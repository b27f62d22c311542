import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { listBackups } from '../../../db/files/backup.ts';
import { logicalDump } from '../../../db/schema/dump.ts';
import type { Migration } from '../../../db/migration-files.ts';
import { closeDatabase } from '../../../db/open.ts';
import { createPlayer, readPlayer } from '../../../db/repositories/bags/players.ts';
import { APPLICATION_ID, pragmaNumber } from '../../../db/sqlite.ts';
import {
  databaseAt,
  LATER,
  memoryDb,
  MIGRATIONS,
  NEWEST,
  NOW,
  openTemp,
  PLAYER,
  storageError,
  tempFolder,
} from './kit.ts';

const MORE: Migration[] = [
  ...MIGRATIONS,
  { number: NEWEST + 1, name: 'more', sql: 'ALTER TABLE player ADD COLUMN extra TEXT;' },
];

describe('opening', () => {
  test('a folder that is not there yet makes it, for the user alone, with nothing half done in it', () => {
    const folder = join(tempFolder(), 'a', 'b');
    const file = join(folder, 'data.loftledger');
    const opened = openTemp(file);
    expect(opened).toMatchObject({
      file,
      created: true,
      upgradedFrom: null,
      backup: null,
      unclean: false,
      pendingCheck: null,
    });
    closeDatabase(opened.db);
    closeDatabase(opened.db);
    expect(readdirSync(folder).sort()).toEqual(['data.loftledger', 'data.loftledger.setup-lock']);
    if (process.platform !== 'win32') {
      expect(statSync(folder).mode & 0o777).toBe(0o700);
      expect(statSync(file).mode & 0o777).toBe(0o600);
    }
    expect(openTemp(file)).toMatchObject({ created: false, unclean: false, upgradedFrom: null });
  });

  test('sets what the database must keep to', () => {
    const { db } = openTemp(join(tempFolder(), 'data.loftledger'));
    expect(db.pragma('journal_mode', { simple: true })).toBe('wal');
    expect(pragmaNumber(db, 'synchronous')).toBe(2); // FULL, https://www.sqlite.org/pragma.html#pragma_synchronous
    expect(pragmaNumber(db, 'foreign_keys')).toBe(1);
    expect(pragmaNumber(db, 'trusted_schema')).toBe(0);
    expect(pragmaNumber(db, 'cell_size_check')).toBe(1);
    expect(pragmaNumber(db, 'recursive_triggers')).toBe(1);
    expect(pragmaNumber(db, 'busy_timeout')).toBe(5000);
    expect(pragmaNumber(db, 'application_id')).toBe(APPLICATION_ID);
    expect(pragmaNumber(db, 'user_version')).toBe(NEWEST);
  });

  test('is defensive: the schema cannot be written as a table', () => {
    const { db } = openTemp(join(tempFolder(), 'data.loftledger'));
    db.pragma('writable_schema = ON');
    expect(() => db.exec(`UPDATE sqlite_schema SET sql = 'x'`)).toThrow('may not be modified');
    expect(() => db.exec(`DELETE FROM sqlite_schema`)).toThrow('may not be modified');
  });

  test('does not let a function of ours be called from the schema', () => {
    const db = memoryDb();
    db.function('ours', () => 1);
    db.exec('CREATE VIEW v AS SELECT ours() AS x');
    expect(() => db.prepare('SELECT x FROM v').all()).toThrow('unsafe use of ours');
  });

  test('in memory needs no file and forgets', () => {
    const db = memoryDb();
    expect(db.memory).toBe(true);
    createPlayer(db, PLAYER, NOW);
    expect(logicalDump(memoryDb())).not.toContain(PLAYER.name);
  });

  test('twice in one process works on the same data', () => {
    const file = join(tempFolder(), 'data.loftledger');
    const one = openTemp(file).db;
    const two = openTemp(file).db;
    const id = createPlayer(one, PLAYER, NOW);
    expect(readPlayer(two, id).name).toBe(PLAYER.name);
  });

  test('checks a large or unclean file as asked', () => {
    const file = join(tempFolder(), 'data.loftledger');
    openTemp(file).db.close();
    const index = { check: 'full' } as const;
    expect(openTemp(file, index).pendingCheck).toBeNull();
  });
});

describe('reading only', () => {
  test('shows the data and refuses to change them', () => {
    const file = join(tempFolder(), 'data.loftledger');
    const writer = openTemp(file).db;
    const id = createPlayer(writer, PLAYER, NOW);
    writer.close();
    const { db, created } = openTemp(file, { readonly: true });
    expect([created, readPlayer(db, id).name]).toEqual([false, PLAYER.name]);
    expect(storageError(() => createPlayer(db, PLAYER, NOW)).code).toBe('read-only');
  });

  test('does not make or upgrade a file', () => {
    const folder = tempFolder();
    const file = join(folder, 'data.loftledger');
    expect(storageError(() => openTemp(file, { readonly: true }))).toMatchObject({ code: 'missing', file });
    expect(readdirSync(folder)).toEqual([]);
    databaseAt(file, NEWEST - 1).close();
    const error = storageError(() => openTemp(file, { readonly: true }));
    expect(error).toMatchObject({ code: 'older-database' });
    expect(error.message).toContain(`schema ${NEWEST - 1}`);
    expect(readdirSync(folder)).toEqual(['data.loftledger']);
  });
});

describe('an older database', () => {
  test('is upgraded after a backup of what it was', () => {
    const file = join(tempFolder(), 'data.loftledger');
    const old = openTemp(file).db;
    const id = createPlayer(old, PLAYER, NOW);
    const dump = logicalDump(old);
    old.close();
    const opened = openTemp(file, { migrations: MORE, now: LATER });
    expect(opened).toMatchObject({ upgradedFrom: NEWEST, created: false });
    expect(pragmaNumber(opened.db, 'user_version')).toBe(NEWEST + 1);
    expect(readPlayer(opened.db, id).name).toBe(PLAYER.name);
    const [backup, ...others] = listBackups(join(file, '..', 'backups'));
    expect(others).toEqual([]);
    expect(backup).toMatchObject({
      file: opened.backup,
      reason: 'before-upgrade',
      sequence: 1,
      takenAt: '2026-11-27T05-30-00-000Z',
    });
    const was = openTemp(backup?.file ?? '', { readonly: true });
    expect(logicalDump(was.db)).toBe(dump);
  });

  test('whose upgrade fails stays as it was, with the backup kept', () => {
    const file = join(tempFolder(), 'data.loftledger');
    const old = openTemp(file).db;
    createPlayer(old, PLAYER, NOW);
    const dump = logicalDump(old);
    old.close();
    const bad = [
      ...MIGRATIONS,
      { number: NEWEST + 1, name: 'bad', sql: 'DELETE FROM player; SELECT nothing FROM nowhere;' },
    ];
    expect(storageError(() => openTemp(file, { migrations: bad })).code).toBe('bug');
    expect(logicalDump(openTemp(file).db)).toBe(dump);
    expect(listBackups(join(file, '..', 'backups'))).toHaveLength(1);
  });
});
