import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { join } from 'node:path';
import { StorageError } from './errors.ts';

/** One step of the schema. Once released, its text never changes. */
export type Migration = { number: number; name: string; sql: string };

const DEFAULT_FOLDER = fileURLToPath(new URL('./migrations/', import.meta.url));

/**
 * All migrations of a folder, in order. Files are named `0001-what.sql`.
 * @throws StorageError 'bug' for a gap, a number twice, or a name that does not fit.
 */
export function loadMigrations(folder: string = DEFAULT_FOLDER): readonly Migration[] {
  const migrations = readdirSync(folder)
    .filter((file) => file.endsWith('.sql'))
    .sort()
    .map((file) => {
      const match = /^(\d{4})-([a-z0-9-]+)\.sql$/.exec(file);
      if (match?.[1] === undefined || match[2] === undefined) {
        throw wrongMigrations(folder, `${file} is not named like 0001-what.sql`);
      }
      return { number: Number(match[1]), name: match[2], sql: readFileSync(join(folder, file), 'utf8') };
    });
  checkOrder(migrations, folder);
  return migrations;
}

/** Numbers start at 1 and rise by one. */
export function checkOrder(migrations: readonly Migration[], folder = 'the program'): void {
  if (migrations.length === 0) throw wrongMigrations(folder, 'there are none');
  migrations.forEach((migration, index) => {
    if (migration.number !== index + 1) {
      throw wrongMigrations(
        folder,
        `number ${index + 1} expected, ${migration.number} (${migration.name}) found`,
      );
    }
  });
}

function wrongMigrations(folder: string, what: string): StorageError {
  const remedy = 'The program is not whole: install it again.';
  return new StorageError('bug', `Migrations of ${folder}: ${what}`, remedy, folder);
}
