import { columnsOf, keyOf, USER_TABLES } from '../schema/schema.ts';
import { quoteName, type Db } from '../sqlite.ts';

/**
 * Makes this connection record every change of a user table while a step is running. The triggers and the
 * one-row table `undo_now` are TEMP: made from the tables as they are at opening, so no migration has to keep
 * them in step, and an imported file cannot bring its own. A rollback takes back `undo_now` too.
 */
export function installUndo(db: Db): void {
  db.exec(`
    CREATE TEMP TABLE undo_now (step_id INTEGER) STRICT;
    INSERT INTO undo_now VALUES (NULL);
    ${USER_TABLES.flatMap((table) => triggersOf(db, table)).join('\n')}
  `);
}

/** Sets the step that changes are recorded under; null stops recording. */
export function recordInto(db: Db, stepId: number | null): void {
  db.prepare('UPDATE undo_now SET step_id = ?').run(stepId);
}

/** The step being recorded, or null. */
export function recordingStep(db: Db): number | null {
  return db.prepare<[], { step_id: number | null }>('SELECT step_id FROM undo_now').get()?.step_id ?? null;
}

function triggersOf(db: Db, table: string): string[] {
  const columns = columnsOf(db, table);
  const all = columns.map((column) => column.name);
  const whole = (row: 'OLD' | 'NEW') => jsonOf(row, all);
  const changed = all.map((name) => `OLD.${quoteName(name)} IS NOT NEW.${quoteName(name)}`).join(' OR ');
  return [
    trigger(table, 'insert', '', 'NULL', jsonOf('NEW', keyOf(columns))),
    trigger(table, 'update', `AND (${changed})`, whole('OLD'), whole('NEW')),
    trigger(table, 'delete', '', whole('OLD'), 'NULL'),
  ];
}

function trigger(table: string, op: string, and: string, before: string, after: string): string {
  return `
    CREATE TEMP TRIGGER ${quoteName(`undo_${table}_${op}`)} AFTER ${op.toUpperCase()} ON main.${quoteName(table)}
    WHEN (SELECT step_id FROM undo_now) IS NOT NULL ${and}
    BEGIN
      INSERT INTO undo_log (step_id, table_name, op, before_json, after_json)
      VALUES ((SELECT step_id FROM undo_now), '${table}', '${op}', ${before}, ${after});
    END;`;
}

/** json_object writes REAL with 17 digits, so numbers come back bit for bit (tested). */
function jsonOf(row: 'OLD' | 'NEW', names: readonly string[]): string {
  return `json_object(${names.map((name) => `'${name}', ${row}.${quoteName(name)}`).join(', ')})`;
}
