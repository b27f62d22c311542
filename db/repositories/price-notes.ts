import type { Band, Columns, Patch } from '../row.ts';
import { fromRow, toPatchRow, toRow } from '../row.ts';
import type { Db } from '../sqlite.ts';
import { all, deleteRow, get, insertRow, missing, updateRow } from '../statement.ts';

export type Condition = 'unmarked' | 'light wear' | 'played' | 'worn' | 'damaged';

/** One used price somebody saw. With a bagId it came in that bag's file and speaks for that bag alone. */
export type PriceNoteFields = {
  archetypeId: string;
  bagId?: number;
  band: Band;
  /** YYYY-MM-DD. */
  seenOn?: string;
  condition?: Condition;
  /** Where, in the user's own words. */
  place?: string;
  remark?: string;
};
export type PriceNote = PriceNoteFields & { id: number; createdAt: string };

const FIELDS: Columns<PriceNoteFields> = {
  archetypeId: ['archetype_id', 'text'],
  bagId: ['bag_id', 'int'],
  band: ['', 'band'],
  seenOn: ['seen_on', 'text'],
  condition: ['condition', 'text'],
  place: ['place', 'text'],
  remark: ['remark', 'text'],
};
const NOTE: Columns<PriceNote> = { ...FIELDS, id: ['id', 'int'], createdAt: ['created_at', 'text'] };

/** @param position its place in a bag file; 0 for everybody's notes. @returns the new note's id. */
export function addPriceNote(db: Db, note: PriceNoteFields, at: string, position = 0): number {
  return insertRow(db, 'price_note', { ...toRow(FIELDS, note), position, created_at: at });
}

export function updatePriceNote(db: Db, id: number, patch: Patch<PriceNoteFields>): void {
  updateRow(db, 'price_note', id, toPatchRow(FIELDS, patch));
}

export function deletePriceNote(db: Db, id: number): void {
  deleteRow(db, 'price_note', id);
}

/** @throws StorageError 'missing'. */
export function readPriceNote(db: Db, id: number): PriceNote {
  const row = get(db, 'SELECT * FROM price_note WHERE id = @id', { id });
  if (row === undefined) throw missing(db, 'price note', id);
  return fromRow(NOTE, row);
}

/** Everybody's notes on an archetype and, with a bag, that bag's too; newest first, undated last. */
export function notesOnArchetype(db: Db, archetypeId: string, bagId?: number): PriceNote[] {
  const sql = `SELECT * FROM price_note WHERE archetype_id = @archetypeId AND (bag_id IS NULL OR bag_id = @bagId)
               ORDER BY seen_on DESC, id DESC`;
  return all(db, sql, { archetypeId, bagId: bagId ?? null }).map((row) => fromRow(NOTE, row));
}

/** The notes that came in a bag's file, in its order. */
export function notesOfBag(db: Db, bagId: number): PriceNote[] {
  const sql = 'SELECT * FROM price_note WHERE bag_id = @bagId ORDER BY position, id';
  return all(db, sql, { bagId }).map((row) => fromRow(NOTE, row));
}

/** Everybody's notes, newest first, a page at a time. */
export function sharedNotes(db: Db, page: { limit: number; offset?: number }): PriceNote[] {
  // Shared notes all have position 0: naming it lets the index give the order, without sorting a million.
  const sql = `SELECT * FROM price_note WHERE bag_id IS NULL
               ORDER BY position DESC, id DESC LIMIT @limit OFFSET @offset`;
  return all(db, sql, { limit: page.limit, offset: page.offset ?? 0 }).map((row) => fromRow(NOTE, row));
}
