import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { describe, expect, onTestFinished, test } from 'vitest';
import { exportDatabase, makeBackup } from '../../../db/files/backup.ts';
import { importDatabase } from '../../../db/files/import.ts';
import { tryLock } from '../../../db/files/lock.ts';
import { listPlayers, readPlayer } from '../../../db/repositories/bags/players.ts';
import { restoreBackup } from '../../../db/files/restore.ts';
import { history, undo, UNDO_STEPS } from '../../../db/undo/undo.ts';
import {
  databaseAt,
  LATER,
  memoryDb,
  MIGRATIONS,
  NEWEST,
  NOW,
  openTemp,
  storageError,
  tempFolder,
} from '../../unit/db/kit.ts';

const CHILD = join(import.meta.dirname, 'db-child.ts');

/** A child that says JSON lines. It is gone when the test ends. */
function child(what: string, path: string) {
  const process_: ChildProcess = spawn(process.execPath, [CHILD, what, path], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  onTestFinished(() => {
    process_.kill('SIGKILL');
  });
  if (process_.stdout === null) throw new Error('no pipe');
  const lines = createInterface({ input: process_.stdout })[Symbol.asyncIterator]();
  const line = async (): Promise<Record<string, unknown> | null> => {
    const next = await lines.next();
    return next.done === true ? null : (JSON.parse(next.value) as Record<string, unknown>);
  };
  const gone = once(process_, 'exit');
  const kill = async () => {
    process_.kill('SIGKILL');
    await gone;
  };
  return { line, kill, gone };
}

describe('the single-instance lock', () => {
  test('is held by another process until that dies, even by kill -9', async () => {
    const folder = tempFolder();
    const other = child('lock', folder);
    expect(await other.line()).toEqual({ held: true });
    expect(tryLock(folder)).toBeNull();
    await other.kill();
    const lock = tryLock(folder);
    expect(lock).not.toBeNull();
    const third = child('lock', folder);
    expect(await third.line()).toEqual({ held: false });
    lock?.release();
  });
});

describe('several processes at once', () => {
  test('open a fresh folder: all succeed, one has made the database, no edit is lost', async () => {
    for (let round = 0; round < 3; round += 1) {
      const folder = tempFolder();
      const file = join(folder, 'data.loftledger');
      const children = Array.from({ length: 3 }, () => child('open', file));
      const reports = await Promise.all(children.map(({ line }) => line()));
      expect(reports.filter((report) => report?.['created'] === true)).toHaveLength(1);
      const exits = await Promise.all(children.map(({ gone }) => gone));
      expect(exits.map(([code]: unknown[]) => code)).toEqual([0, 0, 0]);
      const opened = openTemp(file);
      expect(listPlayers(opened.db)).toHaveLength(3);
      expect(opened.unclean).toBe(false);
      expect(readdirSync(folder).filter((name) => name.includes('.new'))).toEqual([]);
    }
  });

  test('open an older database: one upgrades it, after one backup', async () => {
    const folder = tempFolder();
    const file = join(folder, 'data.loftledger');
    databaseAt(file, NEWEST - 1).close();
    const children = Array.from({ length: 3 }, () => child('open', file));
    const reports = await Promise.all(children.map(({ line }) => line()));
    expect(reports.map((report) => report?.['upgradedFrom']).sort()).toEqual([NEWEST - 1, null, null]);
    await Promise.all(children.map(({ gone }) => gone));
    expect(listPlayers(openTemp(file).db)).toHaveLength(3);
    expect(readdirSync(join(folder, 'backups'))).toHaveLength(1);
  });
});

describe('backups of several processes at once', () => {
  test('take turns: each has a number of its own, and none takes another’s half for a leftover', async () => {
    const folder = tempFolder();
    const file = join(folder, 'data.loftledger');
    const { db } = openTemp(file);
    const children = Array.from({ length: 3 }, () => child('back-up', file));
    const reports = await Promise.all(children.map(({ line }) => line()));
    const mine = makeBackup(db, { dir: join(folder, 'backups'), now: NOW, reason: 'by-hand' });
    const exits = await Promise.all(children.map(({ gone }) => gone));
    expect(exits.map(([code]: unknown[]) => code)).toEqual([0, 0, 0]);
    const numbers = reports.map((report) => Number(report?.['sequence'])).sort();
    expect(numbers).toEqual([1, 2, 3]);
    expect(mine.sequence).toBe(4);
  });
});

describe('kill -9', () => {
  test('while writing loses nothing that was committed, and undo agrees with the data', async () => {
    for (const wanted of [3, 120, 400]) {
      const folder = tempFolder();
      const file = join(folder, 'data.loftledger');
      const writer = child('write', file);
      const said: Record<string, unknown>[] = [];
      while (said.length < wanted) {
        const line = await writer.line();
        if (line !== null) said.push(line);
      }
      await writer.kill();
      for (let line = await writer.line(); line !== null; line = await writer.line()) said.push(line);
      const { db, unclean } = openTemp(file);
      expect(unclean).toBe(true);
      for (const { id, notes } of said)
        expect(readPlayer(db, Number(id)).missNote).toHaveLength(Number(notes));
      // One more may have been committed and not yet said.
      const players = listPlayers(db).length;
      expect([said.length, said.length + 1]).toContain(players);
      expect(history(db).undo).toHaveLength(Math.min(players, UNDO_STEPS));
      undo(db);
      expect(listPlayers(db)).toHaveLength(players - 1);
    }
  });

  test('during the first opening leaves nothing that stands in the way', async () => {
    for (let delayMs = 0; delayMs < 400; delayMs += 50) {
      const folder = tempFolder();
      const file = join(folder, 'data.loftledger');
      const other = child('open', file);
      await new Promise((done) => setTimeout(done, delayMs));
      await other.kill();
      expect(openTemp(file).db.pragma('integrity_check', { simple: true })).toBe('ok');
    }
  });
});

describe('a database that another process has open', () => {
  test('is not replaced, and loses nothing by the attempt', async () => {
    const folder = tempFolder();
    const file = join(folder, 'data.loftledger');
    const source = join(folder, 'out.loftledger');
    const backup = makeBackup(memoryDb(), { dir: join(folder, 'b'), now: NOW, reason: 'by-hand' }).file;
    exportDatabase(memoryDb(), source);
    const other = child('open-and-stay', file);
    await other.line();
    expect(storageError(() => restoreBackup({ file, backup, now: LATER }))).toMatchObject({
      code: 'in-use',
      file,
    });
    expect(storageError(() => importDatabase({ file, source, now: LATER }))).toMatchObject({
      code: 'in-use',
    });
    const mine = openTemp(file);
    expect(listPlayers(mine.db)).toHaveLength(1);
    mine.db.close();
    await other.kill();
    expect(restoreBackup({ file, backup, now: LATER }).backup).toMatchObject({ reason: 'before-restore' });
    expect(listPlayers(openTemp(file).db)).toEqual([]);
  });

  // The system's own list of locks, one a line: kind, mode, access, process, device:inode, from, to.
  test.runIf(existsSync('/proc/locks'))('keeps its locks while this process opens it again', ({ skip }) => {
    const file = join(tempFolder(), 'data.loftledger');
    openTemp(file);
    const held = () =>
      readFileSync('/proc/locks', 'utf8')
        .split('\n')
        .filter((line) => line.includes(`:${statSync(file).ino} `));
    if (held().length === 0) skip('this file system lists no locks under the file’s own number');
    expect(held()).toHaveLength(1);
    // Closing any descriptor of the file would drop them, so it must not be read through node:fs now.
    openTemp(file).db.close();
    openTemp(file, { readonly: true }).db.close();
    expect(() => openTemp(file, { migrations: MIGRATIONS.slice(0, 3) })).toThrow('newer version');
    expect(held()).toHaveLength(1);
  });
});
