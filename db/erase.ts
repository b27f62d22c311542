import { codeOf, guarded, StorageError } from './errors.ts';
import type { Db } from './sqlite.ts';

/**
 * Whether every byte is gone. Not so while another process reads the records, or while the disk has no room to rebuild
 * them: then it is tried again at each opening.
 */
export type Erased = { logEmptied: boolean };

/** In `meta` from the erasure until every byte is gone, a kill in between included. */
const PENDING = 'wipe-pending';

/**
 * Erases a player for good: bags, clubs, shots, plans with their snapshots, the bag's own prices, and the undo
 * history of everybody, since its rows may name the player. The file is then rebuilt and the log emptied, so
 * that no byte stays in a free page. Backups and exports are other files: list them to the user.
 * @throws StorageError 'missing' when there is no such player.
 */
export function erasePlayer(db: Db, playerId: number): Erased {
  guarded(db.name, 'Erasing a player in', () => {
    db.transaction(() => {
      const { changes } = db.prepare('DELETE FROM player WHERE id = ?').run(playerId);
      if (changes === 0) {
        throw new StorageError(
          'missing',
          `There is no player ${playerId}`,
          'Look at the list again.',
          db.name,
        );
      }
      db.prepare('DELETE FROM undo_step').run();
      db.prepare('INSERT OR REPLACE INTO meta (key, value) VALUES (?, ?)').run(PENDING, 'yes');
    }).immediate();
  });
  return { logEmptied: wipe(db) };
}

/** At opening: what an erasure could not finish, or a kill cut off. */
export function finishErasure(db: Db): void {
  if (db.prepare('SELECT 1 FROM meta WHERE key = ?').get(PENDING) !== undefined) wipe(db);
}

/** What may hinder the rebuilding for a while: the rows are erased all the same. */
const FOR_NOW = /^SQLITE_(?:FULL|BUSY|LOCKED|IOERR)/;

/** @returns whether every byte is gone. */
function wipe(db: Db): boolean {
  return guarded(db.name, 'Rebuilding', () => {
    try {
      db.exec('VACUUM');
      const [state] = db.pragma('wal_checkpoint(TRUNCATE)') as { busy: number }[];
      if (state?.busy !== 0) return false;
      db.prepare('DELETE FROM meta WHERE key = ?').run(PENDING);
      return true;
    } catch (error) {
      if (FOR_NOW.test(codeOf(error))) return false;
      throw error;
    }
  });
}
