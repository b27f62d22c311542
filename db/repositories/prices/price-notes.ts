import type { Band, Columns, Patch } from '../../row.ts';
import { fromRow, toPatchRow, toRow } from '../../row.ts';
import type { Db } from '../../sqlite.ts';
import { all, deleteRow, get, insertRow, missing, updateRow } from '../../statement.ts';

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

/**
 * Of each archetype that is offered, everybody's newest notes in one currency, at most `most` each: by archetype id,
 * then newest first, undated last. With `archetypeId` of that one alone, offered or not.
 */
export function newestNotes(
  db: Db,
  currency: string,
  options: { most: number; archetypeId?: string },
): PriceNote[] {
  const { most, archetypeId = null } = options;
  const which = archetypeId === null ? 'archetype.retired_at IS NULL' : 'archetype.id = @archetypeId';
  const sql = `SELECT note.* FROM archetype JOIN price_note AS note ON note.id IN (
                 SELECT id FROM price_note
                  WHERE archetype_id = archetype.id AND currency = @currency AND bag_id IS NULL
                  ORDER BY seen_on DESC, id DESC LIMIT @most)
               WHERE ${which} ORDER BY note.archetype_id, note.seen_on DESC, note.id DESC`;
  const values = { currency, most, ...(archetypeId === null ? {} : { archetypeId }) };
  return all(db, sql, values).map((row) => fromRow(NOTE, row));
}

/** Everybody's notes on one archetype in all currencies but one, the newest first. */
export function notesInOthers(db: Db, archetypeId: string, currency: string, most: number): PriceNote[] {
  const sql = `SELECT * FROM price_note
                WHERE archetype_id = @archetypeId AND bag_id IS NULL AND currency <> @currency
                ORDER BY seen_on DESC, id DESC LIMIT @most`;
  return all(db, sql, { archetypeId, currency, most }).map((row) => fromRow(NOTE, row));
}

export type NotesCount = { archetypeId: string; currency: string; notes: number; newestOn: string };

/**
 * How many of everybody's notes there are on each archetype in currencies other than one, and the newest day among
 * them; where none has a day, when the last was written down.
 */
export function countInOthers(db: Db, currency: string): NotesCount[] {
  // Two ranges instead of <>, so that the index passes over the currency that may have a million; and only columns
  // that the index holds.
  const part = (range: string) => `
    SELECT archetype.id AS archetypeId, note.currency, count(*) AS notes, max(note.seen_on) AS newestOn
      FROM archetype CROSS JOIN price_note AS note
        ON note.archetype_id = archetype.id AND note.bag_id IS NULL AND note.currency ${range} @currency
     GROUP BY archetype.id, note.currency`;
  const written = `SELECT substr(max(created_at), 1, 10) FROM price_note
     WHERE archetype_id = archetypeId AND price_note.currency = counted.currency AND bag_id IS NULL`;
  const sql = `SELECT archetypeId, currency, notes, ifnull(newestOn, (${written})) AS newestOn
                 FROM (${part('<')} UNION ALL ${part('>')}) AS counted ORDER BY archetypeId, currency`;
  return all<NotesCount>(db, sql, { currency });
}

/** Whether just this note is there already, so that a file read twice brings nothing twice. */
export function hasNote(db: Db, note: PriceNoteFields): boolean {
  const { archetypeId, band, seenOn = null, condition = null, place = null, remark = null } = note;
  const sql = `SELECT 1 FROM price_note
                WHERE archetype_id = @archetypeId AND bag_id IS @bagId AND currency = @currency
                  AND low_minor = @lowMinor AND likely_minor = @likelyMinor AND high_minor = @highMinor
                  AND seen_on IS @seenOn AND condition IS @condition AND place IS @place AND remark IS @remark
                LIMIT 1`;
  const bagId = note.bagId ?? null;
  return get(db, sql, { ...band, archetypeId, bagId, seenOn, condition, place, remark }) !== undefined;
}

/** Everybody's notes, newest first, a page at a time. */
export function sharedNotes(db: Db, page: { limit: number; offset?: number }): PriceNote[] {
  // Shared notes all have position 0: naming it lets the index give the order, without sorting a million.
  const sql = `SELECT * FROM price_note WHERE bag_id IS NULL
               ORDER BY position DESC, id DESC LIMIT @limit OFFSET @offset`;
  return all(db, sql, { limit: page.limit, offset: page.offset ?? 0 }).map((row) => fromRow(NOTE, row));
}
