import { renameSync } from 'node:fs';
import { makeBackup, type Backup } from './backup.ts';
import { guarded, StorageError, toStorageError } from '../errors.ts';
import { exists, publish, removeSideFiles, stampOf } from './files.ts';
import { withSetupLock } from './lock.ts';
import { isOpenHere } from './open-files.ts';
import { probeFile } from './probe.ts';
import { connect, type Db } from '../sqlite.ts';

export type ReplaceOptions = {
  file: string;
  prepared: string;
  now: string;
  backupDir: string;
  reason: string;
};

/** What became of the database that stood there: a backup of it, or the damaged file under another name. */
export type Replaced = { backup: Backup | null; movedAside: string | null };

/**
 * Puts a prepared, checked, closed database in the place of `file`: nobody may have it open; what stands
 * there is backed up; -wal and -shm go; then one rename, and the folder is flushed. Killed at any point,
 * it leaves the old database or the new one, and never one with the other's log.
 */
export function replaceDatabase(options: ReplaceOptions): Replaced {
  const { file, prepared } = options;
  return guarded(file, 'Replacing', () =>
    withSetupLock(file, () => {
      if (isOpenHere(file)) throw inUse(file);
      const replaced = exists(file) ? keepOld(options) : { backup: null, movedAside: null };
      removeSideFiles(file);
      publish(prepared, file);
      return replaced;
    }),
  );
}

function inUse(file: string, cause?: unknown): StorageError {
  const remedy = 'Close every window and command that uses it, then try again; nothing was changed.';
  return new StorageError('in-use', `${file} is open in another program`, remedy, file, cause);
}

function keepOld({ file, now, backupDir, reason }: ReplaceOptions): Replaced {
  // Opening what is no database would make SQLite drop the log that lies beside it.
  const found = probeFile(file);
  if (found.is !== 'database') return { backup: null, movedAside: setAside(file, now) };
  let db: Db | null = null;
  try {
    db = connect(file, { mustExist: true, busyTimeoutMs: 0 });
    // Leaving WAL mode takes every other connection's absence, and folds the log into the file.
    db.pragma('journal_mode = DELETE');
    return { backup: makeBackup(db, { dir: backupDir, now, reason }), movedAside: null };
  } catch (error) {
    const known = toStorageError(error, file, 'Closing');
    if (known.code === 'busy') throw inUse(file, error);
    if (known.code !== 'damaged' && known.code !== 'foreign-file') throw known;
    db?.close();
    return { backup: null, movedAside: setAside(file, now) };
  } finally {
    db?.close();
  }
}

/** Moves a file that cannot be read away, with its log, which may hold the last edits. */
function setAside(file: string, now: string): string {
  const wanted = `${file}.set-aside-${stampOf(now)}`;
  let name = wanted;
  for (let n = 2; exists(name); n += 1) name = `${wanted}-${n}`;
  renameSync(file, name);
  if (exists(`${file}-wal`)) renameSync(`${file}-wal`, `${name}-wal`);
  return name;
}
