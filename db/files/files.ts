import {
  chmodSync,
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  renameSync,
  rmSync,
  statSync,
} from 'node:fs';
import { dirname } from 'node:path';

const WINDOWS = process.platform === 'win32';

/** Flushes a closed file to the disk. Never call it on a database that this process has open: closing any
 * descriptor of a file drops the process's POSIX locks on it. */
export function fsyncFile(file: string): void {
  const fd = openSync(file, 'r+');
  try {
    fsyncSync(fd);
  } finally {
    closeSync(fd);
  }
}

/** Makes a rename in the folder last. Windows has no such call and needs none. */
export function fsyncFolder(folder: string): void {
  if (WINDOWS) return;
  const fd = openSync(folder, 'r');
  try {
    fsyncSync(fd);
  } finally {
    closeSync(fd);
  }
}

/** Puts a finished, closed file in its place in one step: fsync, rename, fsync the folder. */
export function publish(prepared: string, target: string): void {
  fsyncFile(prepared);
  renameSync(prepared, target);
  fsyncFolder(dirname(target));
}

/** A folder for the user alone: bags carry notes on health. */
export function makePrivateFolder(folder: string): void {
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
  } catch (error) {
    // On a read-only disk Node finds fault with the folder above (ENOENT); the system itself says what it is.
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') mkdirSync(firstMissing(folder), { mode: 0o700 });
    throw error;
  }
}

/** The uppermost part of a path that is not there. */
function firstMissing(folder: string): string {
  const above = dirname(folder);
  return above === folder || existsSync(above) ? folder : firstMissing(above);
}

export function makePrivateFile(file: string): void {
  if (!WINDOWS) chmodSync(file, 0o600);
}

/** Deletes a database's side files, or a whole database with them. Missing ones are fine. */
export function removeSideFiles(file: string): void {
  for (const side of ['-wal', '-shm', '-journal']) rmSync(file + side, { force: true });
}

export function removeDatabase(file: string): void {
  rmSync(file, { force: true });
  removeSideFiles(file);
}

/** Bytes of a file, null when there is none. Only a look: no descriptor is opened. */
export function sizeOf(file: string): number | null {
  return statSync(file, { throwIfNoEntry: false })?.size ?? null;
}

export function exists(file: string): boolean {
  return existsSync(file);
}

/** An ISO time as a part of a file name. */
export function stampOf(now: string): string {
  return now.replaceAll(/[^0-9TZ+-]/g, '-');
}
