import { createHash } from 'node:crypto';
import { closeSync, copyFileSync, openSync, readdirSync, readFileSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { expect } from 'vitest';
import { seedArchetypes } from '../../../../db/repositories/prices/archetypes.ts';
import { createPlayer } from '../../../../db/repositories/bags/players.ts';
import { writeBag } from '../../../../db/repositories/bags/whole-bag.ts';
import type { Db } from '../../../../db/sqlite.ts';
import {
  CATALOGUE,
  FULL_BAG,
  NOW,
  openTemp,
  PLAYER,
  storageError,
  tempFolder,
} from '../../../unit/db/kit.ts';

/** Every file of a folder with a fingerprint of its bytes. The databases must be closed. */
export function fingerprints(folder: string): Record<string, string> {
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

export function fill(db: Db): void {
  seedArchetypes(db, CATALOGUE, NOW);
  db.transaction(() => {
    for (let n = 0; n < 40; n += 1) {
      const player = { ...PLAYER, name: `player ${n}`, missNote: 'n'.repeat(500) };
      writeBag(db, createPlayer(db, player, NOW), FULL_BAG, NOW);
    }
  })();
}

/** A closed database with data in it. */
export function database(): { folder: string; file: string } {
  const folder = tempFolder();
  const file = join(folder, 'data.loftledger');
  const { db } = openTemp(file);
  fill(db);
  db.close();
  return { folder, file };
}

/** Numbers (from 1) of the pages that the free list's trunks list as leaves. Format: SQLite file format, 1.5. */
export function sparePages(file: string): Set<number> {
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
export function afterPowerCut(): { folder: string; file: string } {
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

export function overwrite(file: string, at: number, bytes: Uint8Array): void {
  const fd = openSync(file, 'r+');
  writeSync(fd, bytes, 0, bytes.length, at);
  closeSync(fd);
}

/** Refused, with a way out, and not one byte changed, whether to write or to read. */
export function expectRefusal(folder: string, file: string, code: string, message: RegExp): void {
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
