import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { tryLock, withSetupLock } from '../../../../db/files/lock.ts';
import { storageError, tempFolder } from '../kit.ts';

test('one holds the lock of a folder; released it is free; releasing twice is fine', () => {
  const folder = join(tempFolder(), 'new');
  const first = tryLock(folder);
  expect(first?.file).toBe(join(folder, 'instance.lock'));
  expect(tryLock(folder)).toBeNull();
  expect(tryLock(join(folder, 'other'))).not.toBeNull();
  first?.release();
  first?.release();
  const second = tryLock(folder);
  expect(second).not.toBeNull();
  second?.release();
});

test('a folder that cannot be is an error, not "held by another"', () => {
  const folder = tempFolder();
  writeFileSync(join(folder, 'file'), '');
  expect(storageError(() => tryLock(join(folder, 'file')))).toMatchObject({ code: 'read-only' });
  expect(storageError(() => tryLock(join(folder, 'file', 'x'))).code).toBe('read-only');
});

test('the setup lock is given back when its work fails', () => {
  const file = join(tempFolder(), 'data.loftledger');
  expect(() =>
    withSetupLock(file, () => {
      throw new Error('no');
    }),
  ).toThrow('no');
  expect(withSetupLock(file, () => 7)).toBe(7);
});
