import { chmodSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { listBackups, makeBackup } from '../../../../db/files/backup.ts';
import { checkDatabase } from '../../../../db/schema/check.ts';
import { LARGE_BYTES } from '../../../../db/open.ts';
import { createPlayer, listPlayers } from '../../../../db/repositories/bags/players.ts';
import { setSetting } from '../../../../db/repositories/settings.ts';
import { restoreBackup } from '../../../../db/files/restore.ts';
import { undoable } from '../../../../db/undo/undo.ts';
import { MIGRATIONS, NEWEST, NOW, openTemp, PLAYER, storageError, tempFolder } from '../../../unit/db/kit.ts';
import { database, afterPowerCut, overwrite } from './kit.ts';

test('after a power cut all that was committed is there, the log is folded in, and the check is the full one', () => {
  const { folder, file } = afterPowerCut();
  const opened = openTemp(file);
  expect(opened.unclean).toBe(true);
  expect(listPlayers(opened.db)).toHaveLength(40);
  opened.db.close();
  expect(readdirSync(folder)).not.toContain('data.loftledger-wal');
  expect(openTemp(file).unclean).toBe(false);
});

test('a log whose tail was torn loses no commit before the tear', () => {
  const living = tempFolder();
  const { db } = openTemp(join(living, 'data.loftledger'));
  for (let n = 0; n < 30; n += 1) createPlayer(db, { ...PLAYER, name: String(n).padStart(2, '0') }, NOW);
  const wal = readFileSync(join(living, 'data.loftledger-wal'));
  const main = readFileSync(join(living, 'data.loftledger'));
  db.close();
  let last = -1;
  for (const keep of [0, 31, 1000, 5000, 20_000, 50_000, wal.length - 1, wal.length]) {
    const folder = tempFolder();
    const file = join(folder, 'data.loftledger');
    writeFileSync(file, main);
    writeFileSync(`${file}-wal`, wal.subarray(0, keep));
    const names = listPlayers(openTemp(file).db).map((player) => player.name);
    expect(names).toEqual(Array.from({ length: names.length }, (_, n) => String(n).padStart(2, '0')));
    expect(names.length).toBeGreaterThanOrEqual(last);
    last = names.length;
  }
  expect(last).toBe(30);
});

test('what a kill left half done does not stand in the way, and is gone after the next opening', () => {
  const folder = tempFolder();
  const file = join(folder, 'data.loftledger');
  openTemp(file).db.close();
  const before = readdirSync(folder).sort();
  for (const left of ['.new', '.new-journal', '.restore', '.restore-wal', '.import', '.import-journal'])
    writeFileSync(file + left, 'half');
  const copy = `${file}.looked-at-aB3xYz`;
  mkdirSync(copy);
  writeFileSync(join(copy, 'copy.loftledger'), 'half');
  const notOurs = join(folder, 'other.loftledger.import');
  writeFileSync(notOurs, 'somebody else’s');
  for (const name of ['backups', 'exports']) {
    mkdirSync(join(folder, name));
    writeFileSync(join(folder, name, '000001_2026-11-26T04-20-00-000Z_by-hand.loftledger.part'), 'half');
    writeFileSync(join(folder, name, '000001_2026-11-26T04-20-00-000Z_by-hand.loftledger.part-journal'), '');
    writeFileSync(join(folder, name, 'notes.part'), 'somebody else’s');
  }
  const dir = join(folder, 'backups');
  expect(listBackups(dir)).toEqual([]);
  const { db } = openTemp(file);
  expect(listPlayers(db)).toEqual([]);
  expect(readdirSync(folder).filter((name) => !/-(wal|shm)$/.test(name))).toEqual(
    [...before, 'backups', 'exports', 'other.loftledger.import'].sort(),
  );
  expect(readdirSync(dir)).toEqual(['notes.part']);
  expect(readdirSync(join(folder, 'exports'))).toEqual(['notes.part']);
  const { file: backup } = makeBackup(db, { dir, now: NOW, reason: 'by-hand' });
  db.close();
  expect(restoreBackup({ file, backup, now: NOW }).backup?.sequence).toBe(2);
});

test('a first opening that was killed half way does not stand in the way either', () => {
  const folder = tempFolder();
  const file = join(folder, 'data.loftledger');
  for (const left of ['.new', '.new-journal']) writeFileSync(file + left, 'half');
  expect(listPlayers(openTemp(file).db)).toEqual([]);
  expect(readdirSync(folder).filter((name) => name.includes('.new'))).toEqual([]);
});

test('a large file leaves its check for after first paint', () => {
  const { file } = database();
  const { db } = openTemp(file);
  db.transaction(() => {
    for (let n = 0; n < 35; n += 1) setSetting(db, `big${n}`, 'x'.repeat(2_000_000));
  })();
  db.close();
  expect(statSync(file).size).toBeGreaterThan(LARGE_BYTES);
  const opened = openTemp(file);
  expect(opened.pendingCheck).toBe('quick');
  checkDatabase(opened.db, file, 'quick');
  opened.db.close();
  const page = Math.floor(statSync(file).size / 4096 / 2);
  overwrite(file, page * 4096, new Uint8Array(4096).fill(0xff));
  const damaged = openTemp(file);
  expect(damaged.pendingCheck).toBe('quick');
  expect(storageError(() => checkDatabase(damaged.db, file, 'quick')).code).toBe('damaged');
  damaged.db.close();
  expect(storageError(() => openTemp(file, { check: 'quick' })).code).toBe('damaged');
});

test('a database that another is writing to says so, and waits no longer than asked', () => {
  const { file } = database();
  const writer = openTemp(file).db;
  const other = openTemp(file, { busyTimeoutMs: 20 }).db;
  writer.exec('BEGIN IMMEDIATE');
  const error = storageError(() => createPlayer(other, PLAYER, NOW));
  expect(error).toMatchObject({ code: 'busy' });
  expect(error.remedy).toContain('try again');
  writer.exec('COMMIT');
  createPlayer(other, PLAYER, NOW);
});

test('a full disk refuses the edit, keeps all before it, and the database goes on', () => {
  const { file } = database();
  const { db } = openTemp(file);
  const pages = db.pragma('page_count', { simple: true }) as number;
  db.pragma(`max_page_count = ${pages + 2}`);
  const error = storageError(() =>
    undoable(db, { label: 'long', at: NOW }, () => {
      for (let n = 0; n < 100; n += 1) createPlayer(db, { ...PLAYER, missNote: 'x'.repeat(9_000) }, NOW);
    }),
  );
  expect(error).toMatchObject({ code: 'disk-full' });
  expect(error.remedy).toContain('Free some space');
  expect(listPlayers(db)).toHaveLength(40);
  db.pragma('max_page_count = 1000000');
  createPlayer(db, PLAYER, NOW);
  db.close();
  expect(listPlayers(openTemp(file).db)).toHaveLength(41);
});

test('a path through a file is refused by name', () => {
  const folder = tempFolder();
  writeFileSync(join(folder, 'file'), '');
  expect(storageError(() => openTemp(join(folder, 'file', 'data.loftledger')))).toMatchObject({
    code: 'read-only',
  });
});

// The superuser may write anywhere, and Windows keeps no such bits.
const bitsHold = process.platform !== 'win32' && process.getuid?.() !== 0;
test.runIf(bitsHold)('a folder that cannot be written is refused, and can still be read', () => {
  const { folder, file } = database();
  chmodSync(folder, 0o500);
  try {
    expect(storageError(() => openTemp(file))).toMatchObject({ code: 'read-only' });
  } finally {
    chmodSync(folder, 0o700);
  }
});

test('the tests know the newest schema', () => {
  expect(MIGRATIONS.at(-1)?.number).toBe(NEWEST);
});
