import type { Db } from '../sqlite.ts';
import { all, get, run } from '../statement.ts';

type SettingRow = { key: string; value: string };

/** A setting as it was set; undefined when it never was. */
export function getSetting(db: Db, key: string): unknown {
  const row = get<SettingRow>(db, 'SELECT key, value FROM setting WHERE key = @key', { key });
  return row === undefined ? undefined : (JSON.parse(row.value) as unknown);
}

/** Sets any value that JSON can hold, null included. */
export function setSetting(db: Db, key: string, value: NonNullable<unknown> | null): void {
  const sql = `INSERT INTO setting (key, value) VALUES (@key, @value)
               ON CONFLICT (key) DO UPDATE SET value = @value WHERE value IS NOT @value`;
  run(db, sql, { key, value: JSON.stringify(value) });
}

/** Forgets a setting, so that its default holds again. */
export function deleteSetting(db: Db, key: string): void {
  run(db, 'DELETE FROM setting WHERE key = @key', { key });
}

/** All settings whose key begins so, by key. */
export function settingsUnder(db: Db, prefix = ''): Map<string, unknown> {
  const sql = 'SELECT key, value FROM setting WHERE substr(key, 1, length(@prefix)) = @prefix ORDER BY key';
  return new Map(
    all<SettingRow>(db, sql, { prefix }).map(({ key, value }) => [key, JSON.parse(value) as unknown]),
  );
}
