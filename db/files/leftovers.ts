import { readdirSync, rmSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { backupFolderOf, exportFolderOf } from './backup.ts';

/**
 * Takes away what a killed backup, export, import, restore or first opening left half done: copies of the records that
 * nobody would find, those of an erased player among them. To be called under the setup lock, so that nobody is
 * just writing one. What cannot be deleted stays: it is in nobody's way.
 */
export function removeLeftovers(file: string): void {
  const own = basename(file);
  const isOwn = (name: string) =>
    PREPARED.some((ending) => SIDES.some((side) => name === `${own}${ending}${side}`)) ||
    name.startsWith(`${own}${COPY}`);
  sweep(dirname(file), isOwn);
  const isPart = (name: string) => SIDES.some((side) => name.endsWith(`.loftledger.part${side}`));
  sweep(backupFolderOf(file), isPart);
  sweep(exportFolderOf(file), isPart);
}

/** What is put together beside the database before it takes its place. */
const PREPARED = ['.new', '.restore', '.import'];
const SIDES = ['', '-wal', '-shm', '-journal'];
/** Of a folder beside the database, for the copy of a file that is looked at. */
export const COPY = '.looked-at-';

function sweep(folder: string, isLeftover: (name: string) => boolean): void {
  let names: string[];
  try {
    names = readdirSync(folder);
  } catch {
    return;
  }
  for (const name of names.filter(isLeftover)) {
    try {
      rmSync(join(folder, name), { recursive: true, force: true });
    } catch {
      // A read-only folder, or a file that another program holds.
    }
  }
}
