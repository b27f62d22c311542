import { codeOf, guarded, StorageError } from '../errors.ts';
import type { Db } from '../sqlite.ts';

/** quick: structure; full: every index entry against its table as well. */
export type CheckLevel = 'quick' | 'full';

const RESTORE = 'Restore a backup; keep the damaged file until you have looked at the result.';
const PROBLEMS_SHOWN = 5;

/**
 * Lets SQLite check the whole file and every foreign key. Takes time in proportion to the file.
 * @throws StorageError 'damaged' with the first problems.
 */
export function checkDatabase(db: Db, file: string, level: CheckLevel): void {
  lookingAt(file, () => {
    const pragma = level === 'full' ? 'integrity_check' : 'quick_check';
    const rows = db.pragma(`${pragma}(${PROBLEMS_SHOWN})`) as Record<string, string>[];
    const problems = rows.flatMap((row) => Object.values(row)).filter((text) => text !== 'ok');
    if (problems.length > 0) {
      throw new StorageError('damaged', `Checking ${file}: ${problems.join('; ')}`, RESTORE, file);
    }
    checkLinks(db, file);
  });
}

/**
 * Runs fn, which only looks at a file. An error in SQL there (a function that does not exist, say) comes from the file's
 * own schema, where a byte was changed: the program's statements do not name what is not there.
 * @throws StorageError
 */
export function lookingAt<T>(file: string, fn: () => T): T {
  return guarded(file, 'Checking', () => {
    try {
      return fn();
    } catch (error) {
      if (codeOf(error) !== 'SQLITE_ERROR') throw error;
      const detail = error instanceof Error ? error.message : String(error);
      throw new StorageError('damaged', `Checking ${file}: ${detail}`, RESTORE, file, error);
    }
  });
}

type BrokenLink = { table: string; rowid: number | null; parent: string };

/** Every reference leads to a row. @throws StorageError 'damaged' naming the first that do not. */
export function checkLinks(db: Db, file: string): void {
  const broken = db.pragma('foreign_key_check') as BrokenLink[];
  if (broken.length === 0) return;
  const shown = broken
    .slice(0, PROBLEMS_SHOWN)
    .map(({ table, rowid, parent }) => `row ${rowid ?? '?'} of ${table} names a ${parent} that is gone`);
  const more = broken.length > shown.length ? ` and ${broken.length - shown.length} more` : '';
  throw new StorageError('damaged', `Checking ${file}: ${shown.join('; ')}${more}`, RESTORE, file);
}
