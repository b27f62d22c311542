import { copyFileSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { BACKUPS_KEPT, exportDatabase, listBackups, makeBackup } from '../../../../db/files/backup.ts';
import { logicalDump } from '../../../../db/schema/dump.ts';
import { checkImport, copyRowsFrom, importDatabase } from '../../../../db/files/import.ts';
import { createPlayer, listPlayers } from '../../../../db/repositories/bags/players.ts';
import { setSetting } from '../../../../db/repositories/settings.ts';
import { writeBag } from '../../../../db/repositories/bags/whole-bag.ts';
import { seedArchetypes } from '../../../../db/repositories/prices/archetypes.ts';
import { restoreBackup } from '../../../../db/files/restore.ts';
import { connect, pragmaNumber, type Db } from '../../../../db/sqlite.ts';
import { history, undoable } from '../../../../db/undo/undo.ts';
import {
  CATALOGUE,
  databaseAt,
  FULL_BAG,
  LATER,
  memoryDb,
  MIGRATIONS,
  NEWEST,
  NOW,
  openTemp,
  PLAYER,
  storageError,
  tempFolder,
} from '../kit.ts';

function filled(file: string, name = PLAYER.name): Db {
  const { db } = openTemp(file);
  seedArchetypes(db, CATALOGUE, NOW);
  writeBag(db, createPlayer(db, { ...PLAYER, name }, NOW), FULL_BAG, NOW);
  return db;
}

describe('backups', () => {
  test('hold all that is committed, in one file, and open as databases', () => {
    const folder = tempFolder();
    const db = filled(join(folder, 'data.loftledger'));
    const backup = makeBackup(db, { dir: join(folder, 'b'), now: NOW, reason: 'by-hand' });
    expect(readdirSync(join(folder, 'b'))).toEqual(['000001_2026-11-26T04-20-00-000Z_by-hand.loftledger']);
    expect(listBackups(join(folder, 'b'))).toEqual([backup]);
    expect(backup.bytes).toBeGreaterThan(10_000);
    expect(logicalDump(openTemp(backup.file, { readonly: true }).db)).toBe(logicalDump(db));
  });

  test('the newest five are kept, by number and not by the clock, and other files are left alone', () => {
    const dir = join(tempFolder(), 'b');
    const db = memoryDb();
    for (let n = 0; n < BACKUPS_KEPT + 3; n += 1) {
      setSetting(db, 'n', n);
      // the clock goes back
      makeBackup(db, { dir, now: `20${30 - n}-01-01T00:00:00Z`, reason: 'by-hand' });
      if (n === 0) writeFileSync(join(dir, 'notes.txt'), 'mine');
    }
    expect(BACKUPS_KEPT).toBe(5);
    expect(listBackups(dir).map((backup) => backup.sequence)).toEqual([8, 7, 6, 5, 4]);
    expect(readdirSync(dir)).toHaveLength(6);
    expect(listBackups(join(dir, 'nowhere'))).toEqual([]);
  });

  test('that cannot be written leave nothing behind and remove no older one', () => {
    const folder = tempFolder();
    const dir = join(folder, 'b');
    const db = memoryDb();
    makeBackup(db, { dir, now: NOW, reason: 'by-hand' });
    writeFileSync(join(folder, 'file'), '');
    expect(
      storageError(() => makeBackup(db, { dir: join(folder, 'file', 'x'), now: NOW, reason: 'a' })).code,
    ).toBe('read-only');
    db.exec('BEGIN; DELETE FROM archetype');
    expect(storageError(() => makeBackup(db, { dir, now: NOW, reason: 'b' })).code).toBe('bug');
    db.exec('ROLLBACK');
    expect(readdirSync(dir)).toHaveLength(1);
  });
});

describe('restoring', () => {
  test('brings the backup back, and backs up what stood there', () => {
    const folder = tempFolder();
    const file = join(folder, 'data.loftledger');
    const db = filled(file, 'first');
    const before = logicalDump(db);
    const backup = makeBackup(db, { dir: join(folder, 'backups'), now: NOW, reason: 'by-hand' });
    createPlayer(db, { ...PLAYER, name: 'second' }, NOW);
    const after = logicalDump(db);
    db.close();
    const replaced = restoreBackup({ file, backup: backup.file, now: LATER });
    expect(replaced.movedAside).toBeNull();
    expect(replaced.backup).toMatchObject({ reason: 'before-restore', sequence: 2 });
    const restored = openTemp(file);
    expect(restored.unclean).toBe(false);
    expect(logicalDump(restored.db)).toBe(before);
    expect(logicalDump(openTemp(replaced.backup?.file ?? '', { readonly: true }).db)).toBe(after);
  });

  test('keeps the undo history of the backup', () => {
    const folder = tempFolder();
    const file = join(folder, 'data.loftledger');
    const db = openTemp(file).db;
    undoable(db, { label: 'add', at: NOW }, () => createPlayer(db, PLAYER, NOW));
    const backup = makeBackup(db, { dir: join(folder, 'backups'), now: NOW, reason: 'by-hand' });
    db.close();
    restoreBackup({ file, backup: backup.file, now: LATER });
    expect(history(openTemp(file).db).undo).toMatchObject([{ label: 'add' }]);
  });

  test('a data file copied by hand, its log beside it, serves as a backup and is not changed', () => {
    const folder = tempFolder();
    const theirs = filled(join(folder, 'theirs', 'data.loftledger'));
    const copy = join(folder, 'copy.loftledger');
    copyFileSync(join(folder, 'theirs', 'data.loftledger'), copy);
    copyFileSync(join(folder, 'theirs', 'data.loftledger-wal'), `${copy}-wal`);
    const bytes = () => [copy, `${copy}-wal`].map((name) => readFileSync(name, 'base64'));
    const before = bytes();
    const file = join(folder, 'data.loftledger');
    restoreBackup({ file, backup: copy, now: LATER });
    expect(bytes()).toEqual(before);
    expect(logicalDump(openTemp(file).db)).toBe(logicalDump(theirs));
    expect(storageError(() => restoreBackup({ file: copy, backup: file, now: LATER })).code).toBe('in-use');
  });

  test('a backup with a value that no rule allows is refused before anything is replaced', () => {
    const folder = tempFolder();
    const file = join(folder, 'data.loftledger');
    const db = filled(file);
    const dump = logicalDump(db);
    const backup = makeBackup(db, { dir: join(folder, 'backups'), now: NOW, reason: 'by-hand' }).file;
    db.close();
    const bad = connect(backup);
    bad.exec('PRAGMA ignore_check_constraints = ON; UPDATE player SET handicap = 500');
    bad.close();
    const error = storageError(() => restoreBackup({ file, backup, now: LATER }));
    expect(error).toMatchObject({ code: 'damaged' });
    expect(error.message).toContain('CHECK constraint failed in player');
    expect(logicalDump(openTemp(file).db)).toBe(dump);
  });

  test('an older backup is upgraded when it is opened', () => {
    const folder = tempFolder();
    const file = join(folder, 'data.loftledger');
    filled(file).close();
    const old = join(folder, 'old.loftledger');
    databaseAt(old, NEWEST - 1).close();
    restoreBackup({ file, backup: old, now: LATER });
    expect(openTemp(file).upgradedFrom).toBe(NEWEST - 1);
  });

  test('works where there is no database, and where it is damaged, which is set aside', () => {
    const folder = tempFolder();
    const file = join(folder, 'data.loftledger');
    const backup = makeBackup(memoryDb(), { dir: join(folder, 'backups'), now: NOW, reason: 'by-hand' }).file;
    expect(restoreBackup({ file, backup, now: LATER })).toEqual({ backup: null, movedAside: null });
    writeFileSync(file, 'no database at all, '.repeat(100));
    writeFileSync(`${file}-wal`, 'log');
    const { movedAside } = restoreBackup({ file, backup, now: LATER });
    expect(movedAside).toBe(`${file}.set-aside-2026-11-27T05-30-00-000Z`);
    expect(readdirSync(folder)).toContain('data.loftledger.set-aside-2026-11-27T05-30-00-000Z-wal');
    writeFileSync(file, '');
    expect(restoreBackup({ file, backup, now: LATER }).movedAside).toMatch(/Z-2$/);
    expect(openTemp(file).db.pragma('integrity_check', { simple: true })).toBe('ok');
  });

  test('does not mix in the log of a database that is gone', () => {
    const folder = tempFolder();
    const file = join(folder, 'data.loftledger');
    const db = filled(file, 'gone');
    const backup = makeBackup(memoryDb(), { dir: join(folder, 'backups'), now: NOW, reason: 'by-hand' }).file;
    const lost = join(folder, 'lost', 'data.loftledger');
    mkdirSync(join(folder, 'lost'));
    copyFileSync(`${file}-wal`, `${lost}-wal`);
    expect(storageError(() => openTemp(lost)).code).toBe('orphan-wal');
    restoreBackup({ file: lost, backup, now: LATER });
    expect(readdirSync(join(folder, 'lost'))).not.toContain('data.loftledger-wal');
    expect(listPlayers(openTemp(lost).db)).toEqual([]);
    expect(db.open).toBe(true);
  });

  test('refuses while the database is open, and a backup that is none; nothing changes', () => {
    const folder = tempFolder();
    const file = join(folder, 'data.loftledger');
    const db = filled(file);
    const dump = logicalDump(db);
    const backup = makeBackup(memoryDb(), { dir: join(folder, 'backups'), now: NOW, reason: 'by-hand' }).file;
    expect(storageError(() => restoreBackup({ file, backup, now: LATER })).code).toBe('in-use');
    db.close();
    const bad = join(folder, 'bad.loftledger');
    writeFileSync(bad, 'nothing');
    expect(storageError(() => restoreBackup({ file, backup: bad, now: LATER })).code).toBe('foreign-file');
    expect(storageError(() => restoreBackup({ file, backup: join(folder, 'no'), now: LATER })).code).toBe(
      'missing',
    );
    expect(logicalDump(openTemp(file).db)).toBe(dump);
    expect(readdirSync(folder).filter((name) => name.includes('.restore'))).toEqual([]);
  });
});

describe('exporting and importing', () => {
  test('an export has the data but not the undo history, which holds what was deleted', () => {
    const folder = tempFolder();
    const db = filled(join(folder, 'data.loftledger'));
    const id = undoable(db, { label: 'add', at: NOW }, () =>
      createPlayer(db, { ...PLAYER, missNote: 'SECRETNOTE' }, NOW),
    );
    undoable(db, { label: 'delete', at: NOW }, () => db.prepare('DELETE FROM player WHERE id = ?').run(id));
    const target = join(folder, 'out.loftledger');
    writeFileSync(target, 'an older export');
    expect(exportDatabase(db, target)).toBeGreaterThan(10_000);
    const copy = openTemp(target, { readonly: true }).db;
    expect(logicalDump(copy)).toBe(logicalDump(db));
    expect(history(copy)).toEqual({ undo: [], redo: [] });
    expect(copy.serialize().includes('SECRETNOTE')).toBe(false);
    expect(db.serialize().includes('SECRETNOTE')).toBe(true);
    expect(history(db).undo).toHaveLength(2);
  });

  test('onto the open database itself is refused', () => {
    const file = join(tempFolder(), 'data.loftledger');
    const db = filled(file);
    expect(storageError(() => exportDatabase(db, file)).code).toBe('in-use');
    expect(storageError(() => checkImport(file)).code).toBe('in-use');
    expect(listPlayers(db)).toHaveLength(1);
  });

  test('the rows of an export are copied into a fresh database, and the export is not touched', () => {
    const folder = tempFolder();
    const source = join(folder, 'out.loftledger');
    const db = filled(join(folder, 'data.loftledger'));
    exportDatabase(db, source);
    expect(checkImport(source)).toEqual({
      version: NEWEST,
      rows: {
        player: 1,
        course: 1,
        course_hole: 2,
        bag: 1,
        archetype: 3,
        price_note: 3,
        cost_line: 4,
        lot: 3,
        club: 4,
      },
    });
    const fresh = openTemp(':memory:').db;
    expect(copyRowsFrom(fresh, source).rows['club']).toBe(4);
    expect(logicalDump(fresh)).toBe(logicalDump(db));
    expect(seedArchetypes(fresh, CATALOGUE, LATER)).toEqual({ added: [], changed: [], retired: [], own: [] });
    expect(storageError(() => copyRowsFrom(fresh, source)).code).toBe('not-empty');
    expect(readdirSync(folder).filter((name) => name.startsWith('out'))).toEqual(['out.loftledger']);
  });

  test('an import of an older schema is upgraded in a copy', () => {
    const folder = tempFolder();
    const source = join(folder, 'old.loftledger');
    const old = databaseAt(source, 2);
    old.exec(
      `INSERT INTO player (name, handicap, handed, ground, created_at) VALUES ('old', 1, 'left', 'soft', '${NOW}')`,
    );
    old.close();
    expect(checkImport(source)).toEqual({ version: 2, rows: { player: 1 } });
    const fresh = openTemp(':memory:').db;
    copyRowsFrom(fresh, source);
    expect(listPlayers(fresh).map((player) => player.name)).toEqual(['old']);
    expect(pragmaNumber(databaseAt(source, 2), 'user_version')).toBe(2);
  });

  test('an import that is still in use elsewhere brings what its log holds', () => {
    const folder = tempFolder();
    const theirs = filled(join(folder, 'theirs.loftledger'));
    const copy = join(folder, 'copy.loftledger');
    copyFileSync(join(folder, 'theirs.loftledger'), copy);
    copyFileSync(join(folder, 'theirs.loftledger-wal'), `${copy}-wal`);
    expect(checkImport(copy).rows).toMatchObject({ player: 1, club: 4 });
    expect(theirs.open).toBe(true);
  });

  test('importing replaces the database by a fresh one with the rows, and backs up the old', () => {
    const folder = tempFolder();
    const source = join(folder, 'out.loftledger');
    const file = join(folder, 'mine', 'data.loftledger');
    const theirs = filled(join(folder, 'theirs', 'data.loftledger'), 'theirs');
    exportDatabase(theirs, source);
    const mine = filled(file, 'mine');
    const before = logicalDump(mine);
    expect(storageError(() => importDatabase({ file, source, now: LATER })).code).toBe('in-use');
    mine.close();
    const report = importDatabase({ file, source, now: LATER, migrations: MIGRATIONS });
    expect(report).toMatchObject({ version: NEWEST, movedAside: null, backup: { reason: 'before-import' } });
    expect(logicalDump(openTemp(file).db)).toBe(logicalDump(theirs));
    expect(logicalDump(openTemp(report.backup?.file ?? '', { readonly: true }).db)).toBe(before);
    expect(readdirSync(join(folder, 'mine')).filter((name) => name.includes('.import'))).toEqual([]);
  });
});
