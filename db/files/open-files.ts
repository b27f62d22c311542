import { realpathSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Db } from '../sqlite.ts';

// Why keep count: on POSIX systems, closing any descriptor of a file drops all locks that the process holds
// on it. So a file that SQLite has open here must not be read or copied through node:fs.
// https://www.sqlite.org/howtocorrupt.html#_posix_advisory_locks_canceled_by_a_separate_thread_doing_close_
const openHere = new Map<string, Set<Db>>();

function realName(file: string): string {
  try {
    return realpathSync(file);
  } catch {
    return resolve(file);
  }
}

/** To be called for each connection that stays open. */
export function noteOpen(file: string, db: Db): void {
  const name = realName(file);
  const set = openHere.get(name) ?? new Set<Db>();
  set.add(db);
  openHere.set(name, set);
}

/** True when this thread has the file open through SQLite. */
export function isOpenHere(file: string): boolean {
  const name = realName(file);
  const set = openHere.get(name);
  if (set === undefined) return false;
  for (const db of set) if (!db.open) set.delete(db);
  if (set.size > 0) return true;
  openHere.delete(name);
  return false;
}
