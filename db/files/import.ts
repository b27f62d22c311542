import { copyFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { backupFolderOf } from './backup.ts';
import { checkDatabase, lookingAt } from '../schema/check.ts';
import { guarded, StorageError, toStorageError } from '../errors.ts';
import { exists, makePrivateFile, makePrivateFolder, removeDatabase } from './files.ts';
import { COPY } from './leftovers.ts';
import { withSetupLock } from './lock.ts';
import { migrate } from '../schema/migrate.ts';
import { loadMigrations, type Migration } from '../migration-files.ts';
import { isOpenHere } from './open-files.ts';
import { replaceDatabase, type Replaced } from './replace.ts';
import { columnsOf, keyOf, schemaProblems, USER_TABLES } from '../schema/schema.ts';
import { connect, quoteName, type Db } from '../sqlite.ts';
import { verifyHeader } from './verify.ts';

/** What a file to import holds: its schema version and the rows of each table that has any. */
export type ImportReport = { version: number; rows: Record<string, number> };

/**
 * Looks whether a `.loftledger` file can be imported, and what it holds. The file is copied first and only the
 * copy is opened, barred from changes, in defensive mode: structure, rules and links are checked, and every table, index,
 * trigger and view must be one of ours.
 * @param copyPrefix of the private folder for the copy, where the system's folder for such is not the place.
 * @throws StorageError 'missing', 'empty-file', 'foreign-file', 'newer-database', 'damaged', 'in-use'.
 */
export function checkImport(
  file: string,
  migrations = loadMigrations(),
  copyPrefix = TEMPORARY,
): ImportReport {
  return withCopy({ file, migrations, copyPrefix }, (copy, version) => {
    const db = connect(copy, { readonly: true, mustExist: true });
    try {
      return { version, rows: countRows(db) };
    } finally {
      db.close();
    }
  });
}

/**
 * Copies every user row of a file into `db`, whose user tables must be empty, in one transaction. A file of an
 * older schema is upgraded in a copy. Every rule of our tables holds for each row. Seed the catalogue afterwards.
 * @throws StorageError as checkImport; 'not-empty'; 'bad-rows' naming the table whose rule a row breaks.
 */
export function copyRowsFrom(
  db: Db,
  file: string,
  migrations = loadMigrations(),
  copyPrefix = TEMPORARY,
): ImportReport {
  const full = Object.keys(countRows(db));
  if (full.length > 0) {
    const message = `Rows can be copied into a fresh database only; this one has some in ${full.join(', ')}`;
    throw new StorageError('not-empty', message, 'Copy into a new database.', db.name);
  }
  return withCopy({ file, migrations, copyPrefix }, (copy, version) => {
    upgradeCopy(copy, migrations, version);
    db.prepare('ATTACH ? AS incoming').run(copy);
    try {
      db.transaction(() => {
        for (const table of USER_TABLES) copyTable(db, table, file);
      }).immediate();
      return { version, rows: countRows(db) };
    } finally {
      db.exec('DETACH incoming');
    }
  });
}

export type ImportOptions = {
  /** The database that the import is to replace. Close it first, in every process. */
  file: string;
  source: string;
  now: string;
  migrations?: readonly Migration[];
  backupDir?: string;
};

/**
 * Replaces the database by the rows of a file: they are copied into a fresh database of our own making, which
 * then takes the place of the old one. The old one is backed up. The given file itself is never swapped in.
 */
export function importDatabase(options: ImportOptions): ImportReport & Replaced {
  const { file, source, now } = options;
  const migrations = options.migrations ?? loadMigrations();
  const replaceAll = (): ImportReport & Replaced => {
    const prepared = `${file}.import`;
    removeDatabase(prepared);
    try {
      const fresh = connect(prepared);
      let report: ImportReport;
      try {
        makePrivateFile(prepared);
        migrate(fresh, { file: prepared, migrations, now, backupDir: null });
        report = copyRowsFrom(fresh, source, migrations, `${file}${COPY}`);
        checkDatabase(fresh, prepared, 'full');
      } finally {
        fresh.close();
      }
      const backupDir = options.backupDir ?? backupFolderOf(file);
      const replaced = replaceDatabase({ file, prepared, now, backupDir, reason: 'before-import' });
      return { ...report, ...replaced };
    } finally {
      removeDatabase(prepared);
    }
  };
  return guarded(file, 'Importing into', () => {
    makePrivateFolder(dirname(file));
    return withSetupLock(file, replaceAll);
  });
}

const TEMPORARY = join(tmpdir(), 'loftledger-import-');

type Looked = { file: string; migrations: readonly Migration[]; copyPrefix: string };

/** Checks a file in a private copy, with its log where it has one, and runs fn on the copy. */
function withCopy<T>({ file, migrations, copyPrefix }: Looked, fn: (copy: string, version: number) => T): T {
  return guarded(file, 'Importing', () => {
    if (isOpenHere(file)) {
      const message = `${file} is the open database itself`;
      throw new StorageError('in-use', message, 'Choose the file of an export or a backup.', file);
    }
    verifyHeader(file, migrations.length);
    const folder = mkdtempSync(copyPrefix);
    try {
      const copy = join(folder, 'copy.loftledger');
      copyFileSync(file, copy);
      if (exists(`${file}-wal`)) copyFileSync(`${file}-wal`, `${copy}-wal`);
      return lookingAt(file, () => fn(copy, checkCopy(copy, file, migrations)));
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
}

function checkCopy(copy: string, file: string, migrations: readonly Migration[]): number {
  const { version } = verifyHeader(copy, migrations.length);
  // Not a read-only connection: that would not know the CHECKs of the tables. Nothing is written all the same.
  const db = connect(copy, { mustExist: true });
  try {
    db.pragma('query_only = ON');
    checkDatabase(db, file, 'quick');
    const problems = schemaProblems(db, migrations, version, { strange: true });
    if (problems.length === 0) return version;
    const message = `${file} is not laid out like schema ${version}: ${problems.slice(0, 3).join('; ')}`;
    throw new StorageError('foreign-file', message, 'Choose the file of an export or a backup.', file);
  } finally {
    db.close();
  }
}

function upgradeCopy(copy: string, migrations: readonly Migration[], version: number): void {
  if (version === migrations.length) return;
  const db = connect(copy, { mustExist: true });
  try {
    migrate(db, { file: copy, migrations, now: '', backupDir: null });
  } finally {
    db.close();
  }
}

function copyTable(db: Db, table: string, file: string): void {
  const columns = columnsOf(db, table);
  const names = columns.map((column) => quoteName(column.name)).join(', ');
  const order = keyOf(columns).map(quoteName).join(', ');
  try {
    db.exec(
      `INSERT INTO main.${quoteName(table)} (${names})
       SELECT ${names} FROM incoming.${quoteName(table)} ORDER BY ${order}`,
    );
  } catch (error) {
    const known = toStorageError(error, file, `Copying the rows of ${table} from`);
    if (known.code !== 'constraint') throw known;
    const remedy = 'The file was changed by another program; choose another backup or export.';
    throw new StorageError('bad-rows', known.message, remedy, file, error);
  }
}

/** The rows of each table of the user's that has any. */
export function countRows(db: Db): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const table of USER_TABLES) {
    if (columnsOf(db, table).length === 0) continue; // an older schema
    const row = db.prepare<[], { n: number }>(`SELECT count(*) AS n FROM main.${quoteName(table)}`).get();
    if (row !== undefined && row.n > 0) counts[table] = row.n;
  }
  return counts;
}
