import { StorageError, toStorageError } from './errors.ts';
import { SqliteError, type Db, type Statement } from './sqlite.ts';

export type SqlValue = string | number | null;
export type Row = Record<string, SqlValue>;

const cache = new WeakMap<Db, Map<string, Statement>>();

/** The statement for a text, prepared once a connection. */
function prepared(db: Db, sql: string): Statement {
  const known = cache.get(db) ?? new Map<string, Statement>();
  cache.set(db, known);
  const statement = known.get(sql) ?? db.prepare<unknown[]>(sql);
  known.set(sql, statement);
  return statement;
}

/** Runs a statement with named parameters. @returns rows changed and the id of a new row. */
export function run(db: Db, sql: string, values: Row = {}): { changes: number; id: number } {
  return explained(db, values, () => {
    const result = prepared(db, sql).run(values);
    return { changes: result.changes, id: Number(result.lastInsertRowid) };
  });
}

/** The first row, or undefined. */
export function get<T = Row>(db: Db, sql: string, values: Row = {}): T | undefined {
  return explained(db, values, () => prepared(db, sql).get(values) as T | undefined);
}

export function all<T = Row>(db: Db, sql: string, values: Row = {}): T[] {
  return explained(db, values, () => prepared(db, sql).all(values) as T[]);
}

/** A refusal by a rule of the table leaves as a StorageError that names the values in question. */
function explained<T>(db: Db, values: Row, fn: () => T): T {
  try {
    return fn();
  } catch (error) {
    if (!(error instanceof SqliteError) || !error.code.startsWith('SQLITE_CONSTRAINT')) {
      throw toStorageError(error, db.name, 'Using');
    }
    const words = new Set(error.message.match(/\w+/g));
    const named = Object.keys(values).filter((name) => words.has(name));
    const shown = named.map((name) => `${name} is ${JSON.stringify(values[name])}`).join(', ');
    const message = shown === '' ? error.message : `${shown}: ${error.message}`;
    const remedy =
      error.code === 'SQLITE_CONSTRAINT_FOREIGNKEY'
        ? 'It refers to something that does not exist; look at the list again.'
        : 'Correct the value; nothing was changed.';
    throw new StorageError('constraint', message, remedy, db.name, error);
  }
}

/** Inserts one row of the named columns. @returns its id. */
export function insertRow(db: Db, table: string, values: Row): number {
  const names = Object.keys(values);
  const marks = names.map((name) => `@${name}`);
  return run(db, `INSERT INTO ${table} (${names.join(', ')}) VALUES (${marks.join(', ')})`, values).id;
}

/**
 * Changes the named columns of one row.
 * @throws StorageError 'missing' when there is no such row.
 */
export function updateRow(db: Db, table: string, id: number, values: Row): void {
  const names = Object.keys(values);
  const sets = names.length === 0 ? 'id = id' : names.map((name) => `${name} = @${name}`).join(', ');
  const { changes } = run(db, `UPDATE ${table} SET ${sets} WHERE id = @id`, { ...values, id });
  if (changes === 0) throw missing(db, table, id);
}

/** @throws StorageError 'missing' when there is no such row. */
export function deleteRow(db: Db, table: string, id: number): void {
  if (run(db, `DELETE FROM ${table} WHERE id = @id`, { id }).changes === 0) throw missing(db, table, id);
}

/** The error for a row that is not there. */
export function missing(db: Db, what: string, id: number | string): StorageError {
  const remedy = 'It may have been deleted; look at the list again.';
  return new StorageError('missing', `There is no ${what} ${id}`, remedy, db.name);
}
