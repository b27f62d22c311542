import { guarded, StorageError } from './errors.ts';
import type { Db } from './sqlite.ts';

/** Whether the write-ahead log could be emptied; not so while another process reads. */
export type Erased = { logEmptied: boolean };

/**
 * Erases a player for good: bags, clubs, shots, plans with their snapshots, the bag's own prices, and the undo
 * history of everybody, since its rows may name the player. The file is then rebuilt and the log emptied, so
 * that no byte stays in a free page. Backups and exports are other files: list them to the user.
 * @throws StorageError 'missing' when there is no such player.
 */
export function erasePlayer(db: Db, playerId: number): Erased {
  return guarded(db.name, 'Erasing a player in', () => {
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
    }).immediate();
    db.exec('VACUUM');
    const [state] = db.pragma('wal_checkpoint(TRUNCATE)') as { busy: number }[];
    return { logEmptied: state?.busy === 0 };
  });
}
