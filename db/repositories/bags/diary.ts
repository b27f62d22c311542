import type { Columns, Patch } from '../../row.ts';
import { fromRow, toPatchRow, toRow } from '../../row.ts';
import type { Db } from '../../sqlite.ts';
import { all, deleteRow, get, insertRow, missing, updateRow } from '../../statement.ts';

/** What was noted about a player on a day. `onDate` is YYYY-MM-DD. Health data: see erasePlayer. */
export type DiaryFields = { onDate: string; text: string };
export type DiaryEntry = DiaryFields & { id: number; playerId: number; writtenAt: string };

const FIELDS: Columns<DiaryFields> = { onDate: ['on_date', 'text'], text: ['text', 'text'] };
const ENTRY: Columns<DiaryEntry> = {
  ...FIELDS,
  id: ['id', 'int'],
  playerId: ['player_id', 'int'],
  writtenAt: ['written_at', 'text'],
};

/** @returns the new entry's id. */
export function addDiaryEntry(db: Db, playerId: number, fields: DiaryFields, at: string): number {
  return insertRow(db, 'diary_entry', { ...toRow(FIELDS, fields), player_id: playerId, written_at: at });
}

export function updateDiaryEntry(db: Db, id: number, patch: Patch<DiaryFields>): void {
  updateRow(db, 'diary_entry', id, toPatchRow(FIELDS, patch));
}

export function deleteDiaryEntry(db: Db, id: number): void {
  deleteRow(db, 'diary_entry', id);
}

/** @throws StorageError 'missing'. */
export function readDiaryEntry(db: Db, id: number): DiaryEntry {
  const row = get(db, 'SELECT * FROM diary_entry WHERE id = @id', { id });
  if (row === undefined) throw missing(db, 'diary_entry', id);
  return fromRow(ENTRY, row);
}

/** A player's diary, the newest day first; of one day the entry made last. */
export function diaryOf(db: Db, playerId: number, most: number): DiaryEntry[] {
  const sql = `SELECT * FROM diary_entry WHERE player_id = @playerId
                ORDER BY on_date DESC, id DESC LIMIT @most`;
  return all(db, sql, { playerId, most }).map((row) => fromRow(ENTRY, row));
}

export function countDiary(db: Db, playerId: number): number {
  const sql = 'SELECT count(*) AS n FROM diary_entry WHERE player_id = @playerId';
  return get<{ n: number }>(db, sql, { playerId })?.n ?? 0;
}
