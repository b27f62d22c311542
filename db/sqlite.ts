import Database from 'better-sqlite3';

/** One connection. */
export type Db = Database.Database;

/** A prepared statement with parameters of any kind. */
export type Statement = Database.Statement<unknown[]>;

export const SqliteError = Database.SqliteError;

/** "LOFT" in ASCII: how our files are told from any other SQLite file (PRAGMA application_id). */
export const APPLICATION_ID = 0x4c4f4654;

/** How long a connection waits for another's lock before it gives up, in ms. */
export const BUSY_TIMEOUT_MS = 5000;

export type ConnectOptions = { readonly?: boolean; mustExist?: boolean; busyTimeoutMs?: number };

/**
 * A connection that trusts nothing in the file: no functions from the schema, defensive mode (the driver's
 * default: the schema cannot be written as a table), cells checked as they are read. Writes nothing.
 */
export function connect(file: string, options: ConnectOptions = {}): Db {
  const db = new Database(file, {
    readonly: options.readonly ?? false,
    fileMustExist: options.mustExist ?? false,
    timeout: options.busyTimeoutMs ?? BUSY_TIMEOUT_MS,
  });
  db.pragma('trusted_schema = OFF');
  db.pragma('cell_size_check = ON');
  db.pragma('foreign_keys = ON');
  // REPLACE must fire the delete triggers that undo lives on.
  db.pragma('recursive_triggers = ON');
  return db;
}

/** PRAGMA value as a number; a missing one is a bug of ours. */
export function pragmaNumber(db: Db, name: string): number {
  const value = db.pragma(name, { simple: true });
  if (typeof value !== 'number') throw new TypeError(`PRAGMA ${name} gave ${String(value)}`);
  return value;
}

/** A name quoted for SQL. Only names of our own schema come here. */
export function quoteName(name: string): string {
  return `"${name.replaceAll('"', '""')}"`;
}
