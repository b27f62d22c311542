import { columnsOf, keyOf, USER_TABLES } from './schema.ts';
import { quoteName, type Db } from '../sqlite.ts';

/**
 * All user data as text, one row a line, in the order of the keys: equal dumps, equal data. Numbers keep every
 * bit. Leaves out `meta` and the undo log.
 */
export function logicalDump(db: Db, tables: readonly string[] = USER_TABLES): string {
  const lines: string[] = [];
  for (const table of tables) {
    const columns = columnsOf(db, table);
    const order = keyOf(columns).map(quoteName).join(', ');
    const names = columns.map((column) => quoteName(column.name)).join(', ');
    lines.push(`# ${table} (${columns.map((column) => column.name).join(', ')})`);
    for (const row of db
      .prepare(`SELECT ${names} FROM main.${quoteName(table)} ORDER BY ${order}`)
      .raw()
      .all()) {
      lines.push(JSON.stringify(row));
    }
  }
  return `${lines.join('\n')}\n`;
}
