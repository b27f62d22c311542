import { dirname, join } from 'node:path';
import { codeOf, guarded, StorageError } from './errors.ts';
import { makePrivateFolder } from './files.ts';
import { connect, type Db } from './sqlite.ts';

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

/**
 * Runs fn while no other process creates, upgrades, opens or replaces the same database.
 * @throws StorageError 'busy' after half a minute.
 */
export function withSetupLock<T>(file: string, fn: () => T): T {
  const lock = guarded(dirname(file), 'Opening the folder', () =>
    lockFile(`${file}.setup-lock`, SETUP_TIMEOUT_MS),
  );
  if (lock === null) {
    const message = `${file}: another process has been opening or upgrading it for half a minute`;
    throw new StorageError('busy', message, 'Close the other program and try again.', file);
  }
  try {
    return fn();
  } finally {
    lock.release();
  }
}
