import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { backupFolderOf, makeBackup } from '../../../db/files/backup.ts';
import { checkDatabase } from '../../../db/schema/check.ts';
import { logicalDump } from '../../../db/schema/dump.ts';
import { StorageError } from '../../../db/errors.ts';
import { openDatabase } from '../../../db/open.ts';
import { seedArchetypes } from '../../../db/repositories/prices/archetypes.ts';
import { createPlayer } from '../../../db/repositories/bags/players.ts';
import { writeBag } from '../../../db/repositories/bags/whole-bag.ts';
import { restoreBackup } from '../../../db/files/restore.ts';
import { mulberry32 } from '../../support/random.ts';
import { CATALOGUE, FULL_BAG, LATER, NOW, PLAYER, tempFolder } from '../../unit/db/kit.ts';
import { overwrite, PAGE_BYTES, pageKinds, type PageKind } from '../support/pages.ts';

/**
 * Bytes that a bad disk has changed, in every kind of page. What holds the file together is checked and missed; the
 * letters of a value are not (SQLite keeps no checksums), so a flip there may change what is read. Whatever was hit: no
 * crash, no endless loop, plain words, the file left as it is, and a backup brings everything back.
 */
const KINDS: readonly PageKind[] = [
  'schema',
  'table leaf',
  'table interior',
  'index leaf',
  'index interior',
  'overflow',
  'free list trunk',
  'free list leaf',
];

let whole: Buffer;
let dump: string;
let backup: Buffer;
let kinds: Map<number, PageKind>;

beforeAll(() => {
  const folder = mkdtempSync(join(tmpdir(), 'loftledger-test-'));
  const file = join(folder, 'data.loftledger');
  const { db } = openDatabase({ file, now: NOW });
  seedArchetypes(db, CATALOGUE, NOW);
  db.transaction(() => {
    for (let n = 0; n < 120; n += 1) {
      const player = {
        ...PLAYER,
        name: `player ${String(n)}`,
        missNote: 'n'.repeat(n % 5 === 0 ? 9000 : 300),
      };
      writeBag(db, createPlayer(db, player, NOW), FULL_BAG, NOW);
    }
  })();
  // Room on the free list.
  db.prepare('DELETE FROM player WHERE id % 2 = 0').run();
  dump = logicalDump(db);
  backup = readFileSync(makeBackup(db, { dir: backupFolderOf(file), now: NOW, reason: 'by-hand' }).file);
  db.close();
  whole = readFileSync(file);
  kinds = pageKinds(file);
  rmSync(folder, { recursive: true, force: true });
});

/** A folder with the database, of which these bytes have been changed. */
function damaged(at: number, bytes: Uint8Array): string {
  const file = join(tempFolder(), 'data.loftledger');
  writeFileSync(file, whole);
  overwrite(file, at, bytes);
  return file;
}

/** Opens as the program does and reads all. @returns what was refused, or what was read. */
function openAndRead(file: string): { refused: StorageError } | { read: string } {
  try {
    const { db } = openDatabase({ file, now: LATER });
    onTestFinished(() => {
      db.close();
    });
    const read = logicalDump(db);
    db.close();
    return { read };
  } catch (error) {
    if (error instanceof StorageError) return { refused: error };
    throw error;
  }
}

function expectPlain(error: StorageError, file: string): void {
  expect(['damaged', 'foreign-file', 'newer-database', 'empty-file']).toContain(error.code);
  expect(error.message).toContain(file);
  expect(error.remedy).toMatch(/[Rr]estore a backup|another file|Update the program/);
}

test('the file has pages of every kind', () => {
  expect(new Set(kinds.values())).toEqual(new Set(KINDS));
});

describe.each(KINDS)('%s', (kind) => {
  const pages = () => [...kinds].filter(([, is]) => is === kind).map(([page]) => page);

  test('single bits, 40 of them: refused in plain words or read, never a crash', () => {
    const random = mulberry32(kind.length * 7919);
    const some = pages();
    for (let n = 0; n < 40; n += 1) {
      const page = some[Math.floor(random() * some.length)] ?? 1;
      const at = (page - 1) * PAGE_BYTES + Math.floor(random() * PAGE_BYTES);
      const file = damaged(at, Uint8Array.of((whole[at] ?? 0) ^ (1 << Math.floor(random() * 8))));
      const before = readFileSync(file);
      const result = openAndRead(file);
      if (!('refused' in result)) continue;
      expectPlain(result.refused, file);
      // Read-only looks may put a log of no bytes beside it, never a byte into it.
      expect(readFileSync(file).equals(before)).toBe(true);
    }
  });

  test.skipIf(kind === 'free list leaf')(
    'its head overwritten is refused, and a backup brings all back',
    () => {
      const page = pages().at(-1) ?? 1;
      // Past the header of the file where that is on the page, which has tests of its own.
      const at = page === 1 ? 100 : (page - 1) * PAGE_BYTES;
      const file = damaged(at, Buffer.alloc(8, 0xa5));
      const result = openAndRead(file);
      if (!('refused' in result)) {
        // An overflow page has no head but the number of the next.
        throw new Error(`${kind}, page ${String(page)}: opened`);
      }
      expectPlain(result.refused, file);
      const source = join(tempFolder(), 'backup.loftledger');
      writeFileSync(source, backup);
      const replaced = restoreBackup({ file, backup: source, now: LATER });
      const { db } = openDatabase({ file, now: LATER });
      expect(logicalDump(db)).toBe(dump);
      checkDatabase(db, file, 'full');
      db.close();
      // What was damaged is kept, under another name or as a backup.
      expect(replaced.movedAside ?? replaced.backup?.file).toBeDefined();
    },
  );
});

test('a free list leaf overwritten hurts nothing', () => {
  const [page] = [...kinds].find(([, kind]) => kind === 'free list leaf') ?? [1];
  const file = damaged((page - 1) * PAGE_BYTES, Buffer.alloc(PAGE_BYTES, 0xa5));
  expect(openAndRead(file)).toEqual({ read: dump });
});

test('150 scattered flips of several bytes: the same', () => {
  const random = mulberry32(20_261_126);
  let refused = 0;
  for (let n = 0; n < 150; n += 1) {
    const at = Math.floor(random() * (whole.length - 8));
    const file = damaged(
      at,
      Uint8Array.from({ length: 1 + Math.floor(random() * 8) }, () => Math.floor(random() * 256)),
    );
    const result = openAndRead(file);
    if ('refused' in result) {
      refused += 1;
      expectPlain(result.refused, file);
    }
  }
  expect(refused).toBeGreaterThan(10);
});
