import {
  copyFileSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { connect } from '../../../../db/sqlite.ts';
import { NEWEST, openTemp, storageError, tempFolder } from '../../../unit/db/kit.ts';
import { fingerprints, database, afterPowerCut, expectRefusal } from './kit.ts';

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
