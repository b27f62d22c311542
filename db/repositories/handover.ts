import type { Columns, Patch } from '../row.ts';
import { fromRow, toPatchRow } from '../row.ts';
import type { Db } from '../sqlite.ts';
import { get, run } from '../statement.ts';
import { findBag } from './bags/bags.ts';

/** What a coach adds to the document of a bag. Private to the player: it goes when the bag goes. */
export type HandoverFields = {
  /** Paragraphs are parted by an empty line. */
  coverNote?: string;
  /** ISO 639-1. Left out: the language of the window. */
  language?: string;
  /** YYYY-MM-DD. Left out: the usual half year. */
  retestOn?: string;
};

const FIELDS: Columns<HandoverFields> = {
  coverNote: ['cover_note', 'text'],
  language: ['language', 'text'],
  retestOn: ['retest_on', 'text'],
};

/** Nothing for a bag that nothing was added to. @throws StorageError 'missing' for no such bag. */
export function readHandover(db: Db, bagId: number): HandoverFields {
  const row = get(db, 'SELECT * FROM handover WHERE bag_id = @bagId', { bagId });
  if (row !== undefined) return fromRow(FIELDS, row);
  findBag(db, bagId);
  return {};
}

/** Changes what a patch names; null takes it out. @throws StorageError 'missing' for no such bag. */
export function updateHandover(db: Db, bagId: number, patch: Patch<HandoverFields>): void {
  findBag(db, bagId);
  const row = toPatchRow(FIELDS, patch);
  const names = Object.keys(row);
  if (names.length === 0) return;
  run(
    db,
    `INSERT INTO handover (bag_id, ${names.join(', ')}) VALUES (@bagId, ${names.map((name) => `@${name}`).join(', ')})
     ON CONFLICT (bag_id) DO UPDATE SET ${names.map((name) => `${name} = @${name}`).join(', ')}`,
    { ...row, bagId },
  );
}
