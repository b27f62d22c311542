import { expect, test } from 'vitest';
import { guarded, StorageError, toStorageError } from '../../../db/errors.ts';
import { SqliteError } from '../../../db/sqlite.ts';
import { storageError } from './kit.ts';

test.each([
  ['SQLITE_FULL', 'disk-full'],
  ['SQLITE_BUSY_SNAPSHOT', 'busy'],
  ['SQLITE_READONLY_DBMOVED', 'read-only'],
  ['SQLITE_CANTOPEN_ISDIR', 'read-only'],
  ['SQLITE_CORRUPT_INDEX', 'damaged'],
  ['SQLITE_NOTADB', 'foreign-file'],
  ['SQLITE_CONSTRAINT_CHECK', 'constraint'],
  ['SQLITE_IOERR_WRITE', 'io'],
  ['SQLITE_IOERR_SHMSIZE', 'disk-full'],
  ['SQLITE_ERROR', 'bug'],
  ['SQLITE_MISUSE', 'bug'],
] as const)('SQLite’s %s is %s', (code, ours) => {
  const cause = new SqliteError('what it said', code);
  const error = toStorageError(cause, 'f.loftledger', 'Opening');
  expect(error).toMatchObject({ code: ours, file: 'f.loftledger', cause });
  expect(error.message).toMatch(/^Opening f\.loftledger: .*what it said/);
  expect(error.remedy).toMatch(/\.$/);
});

test.each([
  ['ENOSPC', 'disk-full'],
  ['EACCES', 'read-only'],
  ['EROFS', 'read-only'],
  ['ENOENT', 'missing'],
  ['EISDIR', 'foreign-file'],
  ['EMFILE', 'io'],
] as const)('the system’s %s is %s', (code, ours) => {
  const cause = Object.assign(new Error('what it said'), { code });
  expect(toStorageError(cause, 'f', 'Opening')).toMatchObject({ code: ours });
});

test('anything else admits our bug; a StorageError passes as it is', () => {
  expect(toStorageError(new TypeError('x'), 'f', 'Opening')).toMatchObject({ code: 'bug' });
  expect(toStorageError('text', 'f', 'Opening').message).toBe('Opening f: text');
  const own = new StorageError('busy', 'm', 'r', 'f');
  expect(
    storageError(() =>
      guarded('g', 'Doing', () => {
        throw own;
      }),
    ),
  ).toBe(own);
});
