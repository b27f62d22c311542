import Papa from 'papaparse';
import { delimiterOf } from './delimiter.ts';
import { readHandicap } from '../../contract/handicap.ts';
import { MOST_BYTES } from '../../contract/formats/incoming-kinds.ts';
import { RefusedInput, shownValue, type Refusal } from '../../contract/refusal.ts';

export const MAX_CSV_BYTES = MOST_BYTES.prices;
export const MAX_CSV_ROWS = 100_000;
export const MAX_COLUMNS = 200;
const MAX_CELL = 10_000;

/** What a table must and may hold: each column with the headings that it goes by, in small letters. */
export type CsvSpec<C extends string> = {
  what: string;
  columns: Readonly<Record<C, readonly string[]>>;
  needed: readonly C[];
  mostRows?: number;
};

/** Cells by column, trimmed; empty ones are left out. The header is row 1. */
export type CsvRow<C extends string> = { rowNumber: number; cells: Partial<Record<C, string>> };

/** One row that cannot be used, and why; the first reason found. */
export type BadRow = { rowNumber: number; column: string; value: string; message: string };

export type CsvTable<C extends string> = {
  rows: CsvRow<C>[];
  bad: BadRow[];
  /** Headings that mean nothing here: left out, and said to be. */
  unknown: string[];
};

/** Bytes → text. @throws RefusedInput for what is too large, or no UTF-8. */
export function csvText(bytes: Uint8Array, what: string): string {
  if (bytes.length > MAX_CSV_BYTES) throw tooLarge(what, bytes.length);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw refusal(what, 'file', '(binary)', 'it is not UTF-8 text', 'Save it as CSV in UTF-8.');
  }
}

export function tooLarge(what: string, bytes: number): RefusedInput {
  const mb = (size: number) => `${(size / 1024 / 1024).toFixed(1)} MB`;
  const message = `it is larger than ${mb(MAX_CSV_BYTES)}`;
  return refusal(what, 'file', mb(bytes), message, 'Check that it is the right file, or split it.');
}

/**
 * A CSV text as a table; comma, semicolon or tab part the cells. Rows that are blank are skipped.
 * @throws RefusedInput for what is no such table: zero bytes, half letters, odd quotes, no header, a needed column
 * that is missing or there twice, too many rows or columns.
 */
export function readCsv<C extends string>(text: string, spec: CsvSpec<C>): CsvTable<C> {
  const { what, mostRows = MAX_CSV_ROWS } = spec;
  if (text.length > MAX_CSV_BYTES) throw tooLarge(what, text.length);
  refuseNoText(text, what);
  const plain = text.replace(/^\ufeff/, '');
  const parsed = Papa.parse<string[]>(plain, {
    skipEmptyLines: false,
    delimiter: delimiterOf(plain),
    preview: mostRows + 2,
  });
  const fault = parsed.errors.find((error) => error.type === 'Quotes');
  if (fault) {
    const place = `row ${String((fault.row ?? 0) + 1)}`;
    throw refusal(what, place, '', fault.message, 'Mend the quotes in that row.');
  }
  const [header = [], ...lines] = parsed.data;
  if (header.every((cell) => cell.trim() === ''))
    throw refusal(what, 'row 1', '', 'there is no header', 'The first row must name the columns.');
  if (lines.length > mostRows) {
    const message = `there are more than ${mostRows.toLocaleString('en-GB')} rows`;
    throw refusal(what, 'file', `${String(lines.length)} rows or more`, message, 'Split the file.');
  }
  const { columns, unknown } = columnsOf(header, spec);
  const rows: CsvRow<C>[] = [];
  const bad: BadRow[] = [];
  lines.forEach((line, i) => {
    if (line.every((cell) => cell.trim() === '')) return;
    const read = readLine(line, i + 2, header, columns);
    if ('message' in read) bad.push(read);
    else rows.push(read);
  });
  return { rows, bad, unknown };
}

/** @throws RefusedInput for zero bytes and half letters, which no table of people holds. */
export function refuseNoText(text: string, what: string): void {
  if (text.includes('\u0000'))
    throw refusal(what, 'file', '(binary)', 'it holds zero bytes and is no text', 'Export it as CSV.');
  if (text.isWellFormed()) return;
  const at = text.search(/\p{Surrogate}/u);
  const row = text.slice(0, at).split('\n').length;
  const remedy = 'Save the file again as UTF-8.';
  throw refusal(what, `line ${String(row)}`, '(half a letter)', 'it holds half a surrogate pair', remedy);
}

const plainHeading = (heading: string) => heading.trim().toLowerCase().replace(/[_-]+/g, ' ');

/** Whether a header has every column that such a table needs. */
export function namesNeeded<C extends string>(
  header: readonly string[],
  { columns, needed }: Pick<CsvSpec<C>, 'columns' | 'needed'>,
): boolean {
  const headings = header.map(plainHeading);
  return needed.every((name) => columns[name].some((alias) => headings.includes(alias)));
}

function columnsOf<C extends string>(
  header: readonly string[],
  { what, columns, needed }: CsvSpec<C>,
): { columns: Map<number, C>; unknown: string[] } {
  if (header.length > MAX_COLUMNS) {
    const message = `there are more than ${String(MAX_COLUMNS)} columns`;
    throw refusal(what, 'row 1', `${String(header.length)} columns`, message, 'Leave the others out.');
  }
  const known = new Map<number, C>();
  const unknown: string[] = [];
  const names = Object.entries(columns) as [C, readonly string[]][];
  header.forEach((heading, at) => {
    const plain = plainHeading(heading);
    const name = names.find(([, aliases]) => aliases.includes(plain))?.[0];
    if (name === undefined) {
      if (plain !== '') unknown.push(heading.trim());
      return;
    }
    if ([...known.values()].includes(name))
      throw refusal(what, 'row 1', shownValue(heading), 'this column is there twice', 'Take one out.');
    known.set(at, name);
  });
  const missing = needed.filter((name) => ![...known.values()].includes(name));
  if (missing.length > 0) {
    const list = missing.map((name) => columns[name][0] ?? name).join(', ');
    const remedy = `Head the columns: ${names.map(([name, [alias]]) => alias ?? name).join(', ')}.`;
    throw refusal(what, 'row 1', shownValue(header.join(',')), `there is no column ${list}`, remedy);
  }
  return { columns: known, unknown };
}

function readLine<C extends string>(
  line: readonly string[],
  rowNumber: number,
  header: readonly string[],
  columns: ReadonlyMap<number, C>,
): CsvRow<C> | BadRow {
  const extra = line.slice(header.length).find((cell) => cell.trim() !== '');
  if (extra !== undefined)
    return {
      rowNumber,
      column: '',
      value: extra.slice(0, 60),
      message: 'the row has more cells than the header',
    };
  const cells: Partial<Record<C, string>> = {};
  for (const [at, name] of columns) {
    const cell = (line[at] ?? '').trim();
    if (cell.length > MAX_CELL)
      return { rowNumber, column: name, value: `${cell.slice(0, 57)}...`, message: 'the cell is too long' };
    if (cell !== '') cells[name] = cell;
  }
  return { rowNumber, cells };
}

/** What spreadsheets read as the start of a formula, full-width forms included. */
const FORMULA = /^[=+\-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20]/;
const NUMBER = /^-?\d+(?:\.\d+)?$/;

/**
 * Free text of a cell. Our own escape, an apostrophe before what looks like a formula, is taken off.
 * @returns the text, or why it is not taken: it begins like a formula, or holds markup.
 */
export function cellText(cell: string): { text: string } | { message: string } {
  if (cell.startsWith("'") && FORMULA.test(cell.slice(1))) return { text: cell.slice(1) };
  if (FORMULA.test(cell))
    return { message: 'it begins like a formula of a spreadsheet: put an apostrophe before it' };
  if (/<[a-z!/?]/i.test(cell)) return { message: 'it holds markup: write it without <' };
  return { text: cell };
}

/** A plain number of a cell; null for anything else, NaN and 1e999 included. */
export function cellNumber(cell: string, decimal: '.' | ','): number | null {
  const plain = decimal === ',' ? cell.replace(',', '.') : cell;
  if (!NUMBER.test(plain) || (decimal === ',' && cell.includes('.'))) return null;
  return Number(plain);
}

/** A handicap of a cell: a plain number, or better than scratch with a plus, escaped or not; null for anything else. */
export function cellHandicap(cell: string, decimal: '.' | ','): number | null {
  return readHandicap(cell.replace(/^'(?=[+-])/, ''), (plain) => cellNumber(plain, decimal));
}

/** The decimal mark that cells show; a point where they show none, or both. Three digits after a comma are a thousand. */
export function decimalIn(cells: readonly string[]): '.' | ',' {
  const has = (pattern: RegExp) => cells.some((cell) => pattern.test(cell.trim()));
  return has(/^'?[+-]?\d+,(?:\d{1,2}|\d{4,})$/) && !has(/^'?[+-]?\d+\.\d+$/) ? ',' : '.';
}

/** RFC 4180: comma, CRLF, quotes doubled, a byte order mark; what a spreadsheet might run gets an apostrophe. */
export function writeCsv(header: readonly string[], rows: readonly (readonly (string | number)[])[]): string {
  return `\uFEFF${[header, ...rows].map((row) => `${row.map(cellOf).join(',')}\r\n`).join('')}`;
}

function cellOf(value: string | number): string {
  if (typeof value === 'number') return String(value);
  const safe = FORMULA.test(value) ? `'${value}` : value;
  return /[",\r\n;\t]/.test(safe) || safe !== safe.trim() ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** The refusal of rows that cannot be used, unless the user has agreed to skip them. */
export function badRows(bad: readonly BadRow[]): RefusedInput {
  const refusals = bad.slice(0, 10).map(({ rowNumber, column, value, message }): Refusal => ({
    path: column === '' ? `row ${String(rowNumber)}` : `row ${String(rowNumber)}, ${column}`,
    value: shownValue(value),
    message,
    remedy: 'Mend the file, or skip these rows.',
  }));
  return new RefusedInput(`${String(bad.length)} rows cannot be used:`, refusals);
}

/** Why a table cannot be read, as one refusal. */
export function refusal(
  what: string,
  path: string,
  value: string,
  message: string,
  remedy: string,
): RefusedInput {
  return new RefusedInput(`This ${what} cannot be read:`, [{ path, value, message, remedy }]);
}
