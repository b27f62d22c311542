import { readdirSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { guarded, StorageError } from '../errors.ts';
import {
  fsyncFolder,
  makePrivateFile,
  makePrivateFolder,
  publish,
  removeDatabase,
  sizeOf,
  stampOf,
} from './files.ts';
import { withSetupLock } from './lock.ts';
import { isOpenHere } from './open-files.ts';
import { connect, pragmaNumber, type Db } from '../sqlite.ts';
import { verifyFile } from './verify.ts';

/**
 * A copy of the database. `takenAt` is the time as its name has it; order goes by `sequence`, not by the
 * clock, which may have been moved back.
 */
export type Backup = { file: string; sequence: number; takenAt: string; reason: string; bytes: number };

export const BACKUPS_KEPT = 5;
const NAME = /^(\d{6})_([0-9TZ+-]+)_([a-z-]+)\.loftledger$/;

/** The folder for backups of a database. */
export function backupFolderOf(file: string): string {
  return join(dirname(file), 'backups');
}

/** The folder for exports that the user gives no place. */
export function exportFolderOf(file: string): string {
  return join(dirname(file), 'exports');
}

export type BackupOptions = { dir: string; now: string; reason: string; keep?: number };

/**
 * Copies the open database, as the last commit left it, into `dir`: written under another name, checked
 * whole, flushed, renamed; then all but the newest `keep` go. `reason` is lower case with hyphens.
 */
export function makeBackup(db: Db, options: BackupOptions): Backup {
  const { dir, now, reason, keep = BACKUPS_KEPT } = options;
  const make = () => {
    makePrivateFolder(dir);
    const sequence = (listBackups(dir)[0]?.sequence ?? 0) + 1;
    const takenAt = stampOf(now);
    const file = join(dir, `${String(sequence).padStart(6, '0')}_${takenAt}_${reason}.loftledger`);
    const bytes = copyOut(db, file);
    for (const old of listBackups(dir).slice(keep)) rmSync(old.file, { force: true });
    return { file, sequence, takenAt, reason, bytes };
  };
  return guarded(dir, 'Backing up to', () => withSetupLock(db.name, make));
}

/** The backups of a folder, newest first. Files of other names are left alone. */
export function listBackups(dir: string): Backup[] {
  return guarded(dir, 'Reading the backups in', () => {
    if (sizeOf(dir) === null) return [];
    return readdirSync(dir)
      .flatMap((name) => {
        const [, sequence, takenAt, reason] = NAME.exec(name) ?? [];
        if (sequence === undefined || takenAt === undefined || reason === undefined) return [];
        const file = join(dir, name);
        return [{ file, sequence: Number(sequence), takenAt, reason, bytes: sizeOf(file) ?? 0 }];
      })
      .sort((a, b) => b.sequence - a.sequence || (a.file < b.file ? 1 : -1));
  });
}

/** Deletes a backup for good. */
export function removeBackup({ file }: Backup): void {
  guarded(file, 'Deleting', () => {
    rmSync(file);
    fsyncFolder(dirname(file));
  });
}

/**
 * Writes a `.loftledger` file to hand on or to keep: the database without the undo history, since that holds
 * what its owner has deleted. An older file of that name is replaced only once the new one is whole.
 * @returns its bytes.
 */
export function exportDatabase(db: Db, target: string): number {
  if (isOpenHere(target)) {
    const remedy = 'Choose another name for the export.';
    throw new StorageError('in-use', `${target} is the open database itself`, remedy, target);
  }
  const forget = (copy: Db) => copy.exec('DELETE FROM undo_log; DELETE FROM undo_step; VACUUM;');
  return guarded(target, 'Exporting to', () => withSetupLock(db.name, () => copyOut(db, target, forget)));
}

/** A verified, flushed copy in one file, in its place in one step. */
function copyOut(db: Db, target: string, edit?: (copy: Db) => void): number {
  const part = `${target}.part`;
  removeDatabase(part);
  try {
    db.prepare('VACUUM INTO ?').run(part);
    makePrivateFile(part);
    if (edit !== undefined) {
      const copy = connect(part, { mustExist: true });
      try {
        edit(copy);
      } finally {
        copy.close();
      }
    }
    verifyFile(part, pragmaNumber(db, 'user_version'));
    publish(part, target);
    return sizeOf(target) ?? 0;
  } finally {
    removeDatabase(part);
  }
}
