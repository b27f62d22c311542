import { newNoteSchema, type NewNote } from '../../contract/calls/money/prices.ts';
import { refusalsOf } from '../../contract/refusal.ts';
import {
  addPriceNote,
  hasNote,
  sharedNotes,
  type PriceNote,
} from '../../../db/repositories/prices/price-notes.ts';
import type { Db } from '../../../db/sqlite.ts';
import { fromBand } from '../bags/bag-rows.ts';
import { moneyRefusals, noteFields } from '../prices/note-rows.ts';
import { badRows, cellNumber, cellText, writeCsv, type BadRow, type CsvSpec } from './csv.ts';
import { decimalOf, notNumber, readRows, type Bad } from './table-rows.ts';

type Column =
  'archetype' | 'low' | 'likely' | 'high' | 'currency' | 'seen' | 'condition' | 'place' | 'remark';

const FIGURES = ['low', 'likely', 'high'] as const;

export const PRICES_SPEC: CsvSpec<Column> = {
  what: 'price list',
  columns: {
    archetype: ['archetype'],
    low: ['low'],
    likely: ['likely', 'price'],
    high: ['high'],
    currency: ['currency'],
    seen: ['seen', 'date', 'seen on'],
    condition: ['condition'],
    place: ['place', 'where'],
    remark: ['remark', 'note', 'notes'],
  },
  needed: ['archetype', 'likely'],
};

/** The decimal mark that the file's figures show. @throws RefusedInput as readCsv */
export function priceDecimal(text: string): '.' | ',' {
  return decimalOf(text, PRICES_SPEC, FIGURES);
}

export type PriceOptions = {
  /** How the file writes decimals. */
  decimal: '.' | ',';
  /** For rows that name none. */
  currency?: string;
};

export type PriceList = {
  notes: { rowNumber: number; note: NewNote }[];
  bad: BadRow[];
  unknown: string[];
};

/** A price list as notes for everybody; each row is taken whole or listed as bad. @throws RefusedInput as readCsv */
export function readPriceList(text: string, options: PriceOptions, known: ReadonlySet<string>): PriceList {
  const { good, ...rest } = readRows(text, PRICES_SPEC, (cells) => noteOfRow(cells, options, known));
  return { notes: good.map(({ rowNumber, row }) => ({ rowNumber, note: row })), ...rest };
}

function noteOfRow(
  cells: Partial<Record<Column, string>>,
  { decimal, currency }: PriceOptions,
  known: ReadonlySet<string>,
): { row: NewNote } | Bad {
  const candidate: Record<string, unknown> = { ...cells };
  for (const column of ['place', 'remark'] as const) {
    const cell = cells[column];
    if (cell === undefined) continue;
    const text = cellText(cell);
    if ('message' in text) return { column, value: cell, message: text.message };
    candidate[column] = text.text;
  }
  // One price without a range is a range of its own, and to blame for what is wrong with it.
  const blamed = (column: string) =>
    (column === 'low' || column === 'high') && cells[column] === undefined ? 'likely' : column;
  for (const column of FIGURES) {
    const cell = cells[column] ?? cells.likely;
    const amount = cell === undefined ? null : cellNumber(cell, decimal);
    if (cell === undefined || amount === null) {
      return { column: blamed(column), value: cell ?? '', message: notNumber(decimal) };
    }
    candidate[column] = amount;
  }
  candidate['currency'] ??= currency;
  const parsed = newNoteSchema.safeParse(candidate);
  if (!parsed.success) {
    const [first] = refusalsOf(parsed.error, candidate);
    const column = first?.path.replace(/^\$\.?/, '') ?? '';
    return {
      column: blamed(column),
      value: first?.value ?? '',
      message: first?.message ?? 'the row cannot be used',
    };
  }
  const note = parsed.data;
  if (!known.has(note.archetype))
    return { column: 'archetype', value: note.archetype, message: 'the catalogue has no such archetype' };
  const [wrong] = moneyRefusals(note, (field) => field);
  return wrong === undefined
    ? { row: note }
    : { column: blamed(wrong.path), value: wrong.value, message: wrong.message };
}

/** Which notes are new; just this note, there already or earlier in the file, is none. */
export function newNotes(db: Db, list: PriceList): PriceList['notes'] {
  const seen = new Set<string>();
  return list.notes.filter(({ note }) => {
    const fields = noteFields(note);
    const key = JSON.stringify(fields);
    if (seen.has(key) || hasNote(db, fields)) return false;
    seen.add(key);
    return true;
  });
}

/** @returns how many notes were added, and how many were there already. @throws RefusedInput for bad rows. */
export function importPriceList(
  db: Db,
  list: PriceList,
  options: { skipBad: boolean; at: string },
): { added: number; same: number; skipped: number } {
  if (list.bad.length > 0 && !options.skipBad) throw badRows(list.bad);
  const fresh = newNotes(db, list);
  for (const { note } of fresh) addPriceNote(db, noteFields(note), options.at);
  return { added: fresh.length, same: list.notes.length - fresh.length, skipped: list.bad.length };
}

const HEADER = ['archetype', 'low', 'likely', 'high', 'currency', 'seen', 'condition', 'place', 'remark'];
const PAGE = 10_000;

/** Everybody's notes, the oldest first, so that reading them in again gives the same order. */
export function exportPriceList(db: Db): string {
  const notes: PriceNote[] = [];
  for (;;) {
    const page = sharedNotes(db, { limit: PAGE, offset: notes.length });
    notes.push(...page);
    if (page.length < PAGE) break;
  }
  return writeCsv(HEADER, notes.reverse().map(rowOf));
}

function rowOf({ archetypeId, band, seenOn, condition, place, remark }: PriceNote): (string | number)[] {
  const { low, likely, high } = fromBand(band);
  return [
    archetypeId,
    low,
    likely,
    high,
    band.currency,
    seenOn ?? '',
    condition ?? '',
    place ?? '',
    remark ?? '',
  ];
}
