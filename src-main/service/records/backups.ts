import path from 'node:path';
import type { BackupLine } from '../../contract/calls/program/files.ts';
import { backupFolderOf, listBackups, makeBackup, type Backup } from '../../../db/files/backup.ts';
import { StorageError } from '../../../db/errors.ts';
import { restoreBackup } from '../../../db/files/restore.ts';
import type { Replaced } from '../../../db/files/replace.ts';
import type { Db } from '../../../db/sqlite.ts';
import { DATABASE_NAME } from './data-folder.ts';

/** Backups of the records of a data folder. */
export const databaseFile = (folder: string): string => path.join(folder, DATABASE_NAME);

export function backupsOf(file: string): Backup[] {
  return listBackups(backupFolderOf(file));
}

export function backUp(db: Db, file: string, now: string): Backup {
  return makeBackup(db, { dir: backupFolderOf(file), now, reason: 'by-hand' });
}

/** @throws StorageError 'missing' */
export function backupOf(file: string, sequence: number): Backup {
  const found = backupsOf(file).find((backup) => backup.sequence === sequence);
  if (found !== undefined) return found;
  throw new StorageError('missing', `There is no backup ${String(sequence)}`, 'Look at the list again.', '');
}

/** Puts a backup in the place of closed records. */
export function restore(file: string, backup: string, now: string): Replaced {
  return restoreBackup({ file, backup, now });
}

/** What a window is told of a backup: no path. */
export function backupLine({ sequence, takenAt, reason, bytes }: Backup): BackupLine {
  return { sequence, takenAt, reason, bytes };
}
