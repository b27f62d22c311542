import { createHash } from 'node:crypto';
import {
  chmodSync,
  closeSync,
  copyFileSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  statSync,
  truncateSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { listBackups, makeBackup } from '../../../db/files/backup.ts';
import { checkDatabase } from '../../../db/schema/check.ts';
import { LARGE_BYTES } from '../../../db/open.ts';
import { seedArchetypes } from '../../../db/repositories/prices/archetypes.ts';
import { createPlayer, listPlayers } from '../../../db/repositories/bags/players.ts';
import { setSetting } from '../../../db/repositories/settings.ts';
import { restoreBackup } from '../../../db/files/restore.ts';
import { writeBag } from '../../../db/repositories/bags/whole-bag.ts';
import { connect, type Db } from '../../../db/sqlite.ts';
import { undoable } from '../../../db/undo/undo.ts';
import {
  CATALOGUE,
  FULL_BAG,
  MIGRATIONS,
  NEWEST,
  NOW,
  openTemp,
  PLAYER,
  storageError,
  tempFolder,
} from '../../unit/db/kit.ts';

/** Every file of a folder with a fingerprint of its bytes. The databases must be closed. */
function fingerprints(folder: string): Record<string, string> {
  const names = readdirSync(folder).filter((name) => !name.endsWith('.setup-lock') && !name.endsWith('-shm'));
  return Object.fromEntries(
    names.map((name) => [
      name,
      createHash('sha256')
        .update(readFileSync(join(folder, name)))
        .digest('hex'),
    ]),
  );
}

function fill(db: Db): void {
  seedArchetypes(db, CATALOGUE, NOW);
  db.transaction(() => {
    for (let n = 0; n < 40; n += 1) {
      const player = { ...PLAYER, name: `player ${n}`, missNote: 'n'.repeat(500) };
      writeBag(db, createPlayer(db, player, NOW), FULL_BAG, NOW);
    }
  })();
}

/** A closed database with data in it. */
function database(): { folder: string; file: string } {
  const folder = tempFolder();
  const file = join(folder, 'data.loftledger');
  const { db } = openTemp(file);
  fill(db);
  db.close();
  return { folder, file };
}

/** Numbers (from 1) of the pages that the free list's trunks list as leaves. Format: SQLite file format, 1.5. */
function sparePages(file: string): Set<number> {
  const bytes = readFileSync(file);
  const spare = new Set<number>();
  for (let trunk = bytes.readUInt32BE(32); trunk !== 0;) {
    const at = (trunk - 1) * 4096;
    const leaves = bytes.readUInt32BE(at + 4);
    for (let i = 0; i < leaves; i += 1) spare.add(bytes.readUInt32BE(at + 8 + 4 * i));
    trunk = bytes.readUInt32BE(at);
  }
  return spare;
}

/** The files as they lie after the power went while the database was open. */
function afterPowerCut(): { folder: string; file: string } {
  const living = tempFolder();
  const { db } = openTemp(join(living, 'data.loftledger'));
  fill(db);
  const folder = tempFolder();
  const file = join(folder, 'data.loftledger');
  // Copied while open: these are the bytes that are on the disk. (Never so in the program: see open-files.ts.)
  copyFileSync(join(living, 'data.loftledger'), file);
  copyFileSync(join(living, 'data.loftledger-wal'), `${file}-wal`);
  db.close();
  return { folder, file };
}

function overwrite(file: string, at: number, bytes: Uint8Array): void {
  const fd = openSync(file, 'r+');
  writeSync(fd, bytes, 0, bytes.length, at);
  closeSync(fd);
}

/** Refused, with a way out, and not one byte changed, whether to write or to read. */
function expectRefusal(folder: string, file: string, code: string, message: RegExp): void {
  for (const readonly of [false, true]) {
    const before = fingerprints(folder);
    const error = storageError(() => openTemp(file, { readonly }));
    expect(error).toMatchObject({ code, file });
    expect(error.message).toMatch(message);
    expect(error.message).toContain(file);
    expect(error.remedy).toMatch(/\w+\.$/);
    expect(fingerprints(folder)).toEqual(before);
  }
}

describe('refused, not one byte changed:', () => {
  test('a database of a newer program', () => {
    const { folder, file } = database();
    const db = connect(file);
    db.pragma(`user_version = ${NEWEST + 1}`);
    db.close();
    expectRefusal(
      folder,
      file,
      'newer-database',
      new RegExp(`schema ${NEWEST + 1}; this one knows up to ${NEWEST}`),
    );
  });

  test('a database of a newer program that died, so that only its log says so', () => {
    const living = tempFolder();
    const newer = openTemp(join(living, 'data.loftledger')).db;
    newer.pragma(`user_version = ${NEWEST + 1}`);
    const folder = tempFolder();
    const file = join(folder, 'data.loftledger');
    copyFileSync(join(living, 'data.loftledger'), file);
    copyFileSync(join(living, 'data.loftledger-wal'), `${file}-wal`);
    newer.close();
    expect(readFileSync(file).readInt32BE(60)).toBe(NEWEST);
    expectRefusal(folder, file, 'newer-database', /newer version/);
  });

  test('a file of zero bytes', () => {
    const folder = tempFolder();
    const file = join(folder, 'data.loftledger');
    writeFileSync(file, '');
    expectRefusal(folder, file, 'empty-file', /0 bytes/);
    expect(statSync(file).size).toBe(0);
  });

  test.each([
    ['text', 'format: something else\n'.repeat(50)],
    ['a few bytes', 'SQLite'],
    ['a header alone', `SQLite format 3\0${'\0'.repeat(200)}`],
    ['noise', Buffer.from(Array.from({ length: 8192 }, (_, n) => (n * 7919) % 251))],
  ])('a foreign file: %s', (_, content) => {
    const folder = tempFolder();
    const file = join(folder, 'data.loftledger');
    writeFileSync(file, content);
    expectRefusal(folder, file, 'foreign-file', /no Loftledger database|another program/);
  });

  test('another program’s SQLite database', () => {
    const folder = tempFolder();
    const file = join(folder, 'data.loftledger');
    const other = connect(file);
    other.exec('CREATE TABLE player (id INTEGER); PRAGMA user_version = 3;');
    other.close();
    expectRefusal(folder, file, 'foreign-file', /database of another program/);
  });

  test('a folder in the place of the file', () => {
    const folder = tempFolder();
    const file = join(folder, 'data.loftledger');
    mkdirSync(file);
    expect(storageError(() => openTemp(file))).toMatchObject({ code: 'foreign-file' });
    expect(readdirSync(file)).toEqual([]);
  });

  test.each([1, 4096, 20_000])('a file cut short by %i bytes', (bytes) => {
    const { folder, file } = database();
    truncateSync(file, statSync(file).size - bytes);
    expectRefusal(folder, file, 'damaged', new RegExp(`cut short: .* ${bytes} fewer`));
  });

  test('the log of a database that is gone', () => {
    const { folder, file } = afterPowerCut();
    copyFileSync(file, join(folder, 'elsewhere'));
    truncateSync(file, 0);
    const empty = tempFolder();
    copyFileSync(`${file}-wal`, join(empty, 'data.loftledger-wal'));
    const before = fingerprints(empty);
    expect(storageError(() => openTemp(join(empty, 'data.loftledger')))).toMatchObject({
      code: 'orphan-wal',
    });
    expect(fingerprints(empty)).toEqual(before);
  });
});

describe('found by the checks:', () => {
  test('a corrupt page, wherever it lies', () => {
    const { file } = database();
    const whole = readFileSync(file);
    const pages = whole.length / 4096;
    expect(pages).toBeGreaterThan(20);
    // A leaf of the free list holds nothing that could be damaged; any other is missed.
    const spare = sparePages(file);
    let found = 0;
    for (let page = 1; page < pages; page += 1) {
      if (spare.has(page + 1)) continue;
      writeFileSync(file, whole);
      // the head of a b-tree page: type, free block, cell count, content start
      overwrite(file, page * 4096, Uint8Array.from([0x55, 0xaa, 0x55, 0xaa, 0x55, 0xaa, 0x55, 0xaa]));
      const error = storageError(() => openTemp(file));
      expect(error.code).toBe('damaged');
      expect(error.remedy).toContain('Restore a backup');
      found += 1;
    }
    expect(found).toBe(pages - 1 - spare.size);
    expect(spare.size).toBeLessThan(pages / 10);
    writeFileSync(file, whole);
    expect(listPlayers(openTemp(file).db)).toHaveLength(40);
  });

  test('an index that does not fit its table, after an unclean exit only, as only then every entry is compared', () => {
    const { folder, file } = database();
    const db = connect(file);
    db.unsafeMode(true);
    db.pragma('writable_schema = ON');
    db.prepare(
      `UPDATE sqlite_schema SET sql = replace(sql, '(player_id, state)', '(state, player_id)') WHERE name = 'bag_by_player'`,
    ).run();
    db.close();
    const clean = openTemp(file);
    expect(clean.unclean).toBe(false);
    clean.db.close();
    writeFileSync(`${file}-wal`, '');
    expect(readdirSync(folder)).toContain('data.loftledger-wal');
    expect(storageError(() => openTemp(file)).code).toBe('damaged');
  });

  test('a row whose owner is gone', () => {
    const { file } = database();
    const db = connect(file);
    db.exec('PRAGMA foreign_keys = OFF; DELETE FROM player WHERE id = 3;');
    db.close();
    const error = storageError(() => openTemp(file));
    expect(error.code).toBe('damaged');
    expect(error.message).toContain('names a player that is gone');
  });

  test('a table that is missing', () => {
    const { file } = database();
    const db = connect(file);
    db.exec('DROP TABLE path_stage');
    db.close();
    expect(storageError(() => openTemp(file))).toMatchObject({ code: 'damaged' });
    expect(storageError(() => openTemp(file, { readonly: true })).message).toContain(
      'table path_stage is missing',
    );
  });
});

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
