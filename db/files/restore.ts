import { copyFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { backupFolderOf } from './backup.ts';
import { guarded, StorageError } from '../errors.ts';
import { makePrivateFile, makePrivateFolder, removeDatabase } from './files.ts';
import { withSetupLock } from './lock.ts';
import { loadMigrations, type Migration } from '../migration-files.ts';
import { isOpenHere } from './open-files.ts';
import { replaceDatabase, type Replaced } from './replace.ts';
import { connect } from '../sqlite.ts';
import { verifyFile, verifyHeader } from './verify.ts';

export type RestoreOptions = {
  /** The database to bring back. Close it first, in every process. */
  file: string;
  backup: string;
  now: string;
  migrations?: readonly Migration[];
  backupDir?: string;
};

/**
 * Puts a backup in the place of the database, which is itself backed up before, or set aside where it is
 * damaged. A backup of an older schema is upgraded when it is next opened.
 * @throws StorageError 'in-use' where any process has the database open; nothing is changed then.
 */
export function restoreBackup(options: RestoreOptions): Replaced {
  const { file, backup, now } = options;
  const newest = (options.migrations ?? loadMigrations()).length;
  return guarded(backup, 'Restoring', () => {
    if (isOpenHere(backup)) {
      const remedy = 'Choose a backup, or close the database first.';
      throw new StorageError('in-use', `${backup} is open here`, remedy, backup);
    }
    const { walLeft } = verifyHeader(backup, newest);
    makePrivateFolder(dirname(file));
    return withSetupLock(file, () => {
      const prepared = `${file}.restore`;
      removeDatabase(prepared);
      try {
        copyFileSync(backup, prepared);
        if (walLeft) copyFileSync(`${backup}-wal`, `${prepared}-wal`);
        makePrivateFile(prepared);
        foldLog(prepared);
        verifyFile(prepared, newest, backup);
        const backupDir = options.backupDir ?? backupFolderOf(file);
        return replaceDatabase({ file, prepared, now, backupDir, reason: 'before-restore' });
      } finally {
        removeDatabase(prepared);
      }
    });
  });
}

/** Makes one file of a database and its log. A backup of ours has none, but a copied data file may. */
function foldLog(file: string): void {
  const db = connect(file, { mustExist: true });
  try {
    db.pragma('journal_mode = DELETE');
  } finally {
    db.close();
  }
}
