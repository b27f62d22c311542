import { dirname, join, resolve } from 'node:path';
import { codeOf, guarded, StorageError } from '../errors.ts';
import { makePrivateFolder } from './files.ts';
import { connect, type Db } from '../sqlite.ts';

/** Held until released or until the process ends, however it ends. */
export type Lock = { file: string; release: () => void };

const INSTANCE_LOCK = 'instance.lock';

/**
 * Takes the single-instance lock of a data folder, which both hosts share: a database of no rows, under
 * BEGIN EXCLUSIVE. The system drops it when the process dies, so there is no stale lock to clear.
 * @returns null when another instance holds it.
 */
export function tryLock(folder: string): Lock | null {
  return guarded(folder, 'Locking', () => {
    makePrivateFolder(folder);
    return lockFile(join(folder, INSTANCE_LOCK), 0);
  });
}

function lockFile(file: string, timeoutMs: number): Lock | null {
  const db: Db = connect(file, { busyTimeoutMs: timeoutMs });
  try {
    db.exec('BEGIN EXCLUSIVE');
  } catch (error) {
    db.close();
    if (codeOf(error).startsWith('SQLITE_BUSY')) return null;
    throw error;
  }
  const release = () => {
    if (!db.open) return;
    db.exec('ROLLBACK');
    db.close();
  };
  return { file, release };
}

const SETUP_TIMEOUT_MS = 30_000;
/** Files whose lock this thread has: a replacement makes a backup, which asks for the same lock. */
const held = new Set<string>();

/**
 * Runs fn while no other process creates, upgrades, opens, replaces or copies the same database. A database in
 * memory has nobody to wait for.
 * @throws StorageError 'busy' after half a minute.
 */
export function withSetupLock<T>(file: string, fn: () => T): T {
  const name = resolve(file);
  if (file === ':memory:' || held.has(name)) return fn();
  const lock = guarded(dirname(file), 'Opening the folder', () =>
    lockFile(`${file}.setup-lock`, SETUP_TIMEOUT_MS),
  );
  if (lock === null) {
    const message = `${file}: another process has been opening or copying it for half a minute`;
    throw new StorageError('busy', message, 'Close the other program and try again.', file);
  }
  held.add(name);
  try {
    return fn();
  } finally {
    held.delete(name);
    lock.release();
  }
}
