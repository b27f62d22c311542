import { namedFault, StorageError, toStorageError } from '../errors.ts';
import { columnsOf, keyOf, USER_TABLES } from '../schema/schema.ts';
import { quoteName, type Db, type Statement } from '../sqlite.ts';
import { recordingStep, recordInto } from './undo-triggers.ts';

/** An edit as the user would name it, and when (ISO time). */
export type Step = { label: string; at: string };
export type StepInfo = Step & { id: number };

/** How many steps can be taken back. */
export const UNDO_STEPS = 200;

type Stack = 'undo' | 'redo';
type Value = string | number | null;
type Image = Record<string, Value>;
type LogRow = {
  table_name: string;
  op: 'insert' | 'update' | 'delete';
  before_json: string | null;
  after_json: string | null;
};

/**
 * Runs fn as one transaction and one step of undo. What it writes to user tables, cascades included, is
 * recorded with the write itself. A step that changed nothing is not kept; any other clears redo. Within a
 * running step, fn joins it. Writes outside of any step (the catalogue, caches, "last looked at") are not
 * recorded, and undo leaves columns alone that the step did not change.
 */
export function undoable<T>(db: Db, step: Step, fn: () => T): T {
  if (recordingStep(db) !== null) return db.transaction(fn).immediate();
  const run = db.transaction(() => {
    const id = pushStep(db, 'undo', step);
    recordInto(db, id);
    const result = fn();
    recordInto(db, null);
    if (isEmpty(db, id)) dropStep(db, id);
    else {
      db.prepare(`DELETE FROM undo_step WHERE stack = 'redo'`).run();
      trim(db);
    }
    return result;
  });
  try {
    return run.immediate();
  } catch (error) {
    throw namedFault(error, db.name, 'Saving to');
  }
}

/** Takes back the newest step. @returns it, or null when there is none. @throws StorageError 'undo-conflict'. */
export function undo(db: Db): StepInfo | null {
  return move(db, 'undo', 'redo');
}

/** Does again the step taken back last. @returns it, or null when there is none. */
export function redo(db: Db): StepInfo | null {
  return move(db, 'redo', 'undo');
}

/** What undo and redo would do: the next one first. */
export function history(db: Db): { undo: StepInfo[]; redo: StepInfo[] } {
  const read = db.prepare<[Stack], StepInfo>(
    'SELECT id, label, at FROM undo_step WHERE stack = ? ORDER BY id DESC',
  );
  return { undo: read.all('undo'), redo: read.all('redo') };
}

/** Forgets all steps; the data stays as it is. */
export function clearHistory(db: Db): void {
  db.prepare('DELETE FROM undo_step').run();
}

/**
 * Plays a step's log backwards with recording on, so that what is done here becomes the step of the other
 * stack: the inverse of the inverse, cascades included.
 */
function move(db: Db, from: Stack, to: Stack): StepInfo | null {
  if (recordingStep(db) !== null) {
    throw new StorageError(
      'bug',
      `${from} was called within a step`,
      'This is an error of the program; please report it.',
      db.name,
    );
  }
  const run = db.transaction(() => {
    const step = history(db)[from][0];
    if (step === undefined) return null;
    // A row may come back before the row it refers to; the commit checks the links.
    db.pragma('defer_foreign_keys = ON');
    const rows = db
      .prepare<[number], LogRow>(
        'SELECT table_name, op, before_json, after_json FROM undo_log WHERE step_id = ? ORDER BY id DESC',
      )
      .all(step.id);
    const id = pushStep(db, to, step);
    recordInto(db, id);
    const apply = applier(db);
    for (const row of rows) apply(row);
    recordInto(db, null);
    dropStep(db, step.id);
    return { ...step, id };
  });
  try {
    return run.immediate();
  } catch (error) {
    const known = toStorageError(error, db.name, from === 'undo' ? 'Undoing in' : 'Redoing in');
    if (known.code === 'constraint')
      throw conflict(db, `a row is in the way or its owner is gone (${known.message})`);
    throw known;
  }
}

function pushStep(db: Db, stack: Stack, { label, at }: Step): number {
  const result = db
    .prepare('INSERT INTO undo_step (stack, label, at) VALUES (?, ?, ?)')
    .run(stack, label, at);
  return Number(result.lastInsertRowid);
}

function dropStep(db: Db, id: number): void {
  db.prepare('DELETE FROM undo_step WHERE id = ?').run(id);
}

function isEmpty(db: Db, id: number): boolean {
  return db.prepare('SELECT 1 FROM undo_log WHERE step_id = ? LIMIT 1').get(id) === undefined;
}

function trim(db: Db): void {
  db.prepare(
    `DELETE FROM undo_step WHERE stack = 'undo' AND id <=
       (SELECT id FROM undo_step WHERE stack = 'undo' ORDER BY id DESC LIMIT 1 OFFSET ?)`,
  ).run(UNDO_STEPS);
}

type Applied = { key: readonly string[]; columns: ReadonlySet<string> };

/** A function that takes back one row of the log. */
function applier(db: Db): (row: LogRow) => void {
  const tables = new Map<string, Applied>();
  const statements = new Map<string, Statement>();
  const run = (sql: string, values: readonly Value[]) => {
    const statement = statements.get(sql) ?? db.prepare<unknown[]>(sql);
    statements.set(sql, statement);
    return statement.run(...values).changes;
  };
  const tableOf = (name: string): Applied => {
    const known = tables.get(name);
    if (known !== undefined) return known;
    if (!USER_TABLES.some((table) => table === name)) throw conflict(db, `there is no table ${name}`);
    const columns = columnsOf(db, name);
    const table = { key: keyOf(columns), columns: new Set(columns.map((column) => column.name)) };
    tables.set(name, table);
    return table;
  };
  return (row) => {
    const { key, columns } = tableOf(row.table_name);
    const table = quoteName(row.table_name);
    const before = imageOf(db, row.before_json, columns);
    const after = imageOf(db, row.after_json, columns);
    const where = key.map((name) => `${quoteName(name)} = ?`).join(' AND ');
    const keyValues = key.map((name) => after[name] ?? null);
    if (row.op === 'insert') {
      // Gone already where its owner, taken back before it, took it along.
      run(`DELETE FROM ${table} WHERE ${where}`, keyValues);
      return;
    }
    if (row.op === 'delete') {
      const names = Object.keys(before);
      const marks = names.map(() => '?').join(', ');
      run(
        `INSERT INTO ${table} (${names.map(quoteName).join(', ')}) VALUES (${marks})`,
        names.map((name) => before[name] ?? null),
      );
      return;
    }
    const names = Object.keys(before).filter((name) => before[name] !== after[name]);
    const sets = names.map((name) => `${quoteName(name)} = ?`).join(', ');
    const values = names.map((name) => before[name] ?? null);
    if (run(`UPDATE ${table} SET ${sets} WHERE ${where}`, [...values, ...keyValues]) !== 1) {
      throw conflict(db, `the ${row.table_name} with ${key.join(', ')} ${keyValues.join(', ')} is gone`);
    }
  };
}

function imageOf(db: Db, json: string | null, columns: ReadonlySet<string>): Image {
  if (json === null) return {};
  const image = JSON.parse(json) as Image;
  for (const name of Object.keys(image)) {
    if (!columns.has(name)) throw conflict(db, `there is no column ${name}`);
  }
  return image;
}

function conflict(db: Db, what: string): StorageError {
  const message = `This step cannot be taken back or done again: ${what}`;
  return new StorageError('undo-conflict', message, 'Clear the history; the data stays as it is.', db.name);
}
