import { makeBackup } from '../files/backup.ts';
import { checkLinks } from './check.ts';
import { guarded } from '../errors.ts';
import type { Migration } from '../migration-files.ts';
import { APPLICATION_ID, pragmaNumber, type Db } from '../sqlite.ts';

export type MigrateOptions = {
  file: string;
  migrations: readonly Migration[];
  now: string;
  /** Where the backup goes; null for a database of no rows yet, or in memory. */
  backupDir: string | null;
};

export type MigrateReport = { from: number; to: number; backup: string | null };

/**
 * Brings a database to the newest schema: first a verified backup on the disk, then one IMMEDIATE
 * transaction for all pending migrations. On any error the database is as it was.
 */
export function migrate(db: Db, options: MigrateOptions): MigrateReport {
  const { file, migrations, now, backupDir } = options;
  return guarded(file, 'Upgrading', () => {
    const from = pragmaNumber(db, 'user_version');
    const to = migrations.length;
    if (from >= to) return { from, to: from, backup: null };
    const backup =
      backupDir === null ? null : makeBackup(db, { dir: backupDir, now, reason: 'before-upgrade' }).file;
    // A migration that rebuilds a table drops the old one, which must not cascade. The pragma does nothing
    // inside a transaction, so it stands outside; links are checked before the commit instead.
    db.pragma('foreign_keys = OFF');
    try {
      db.transaction(() => {
        applyMigrations(db, migrations, to);
        checkLinks(db, file);
      }).immediate();
    } finally {
      db.pragma('foreign_keys = ON');
    }
    return { from, to, backup };
  });
}

/** Applies what is pending up to version `to`. To be called within a transaction. */
export function applyMigrations(db: Db, migrations: readonly Migration[], to: number): void {
  const from = pragmaNumber(db, 'user_version');
  for (const migration of migrations.slice(from, to)) db.exec(migration.sql);
  db.pragma(`user_version = ${to}`);
  db.pragma(`application_id = ${APPLICATION_ID}`);
  // The rows in the undo log have the shape of the old tables.
  if (from > 0 && hasUndo(db)) db.exec('DELETE FROM undo_log; DELETE FROM undo_step');
}

function hasUndo(db: Db): boolean {
  return db.prepare(`SELECT 1 FROM sqlite_schema WHERE name = 'undo_step'`).get() !== undefined;
}
