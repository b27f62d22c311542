import Papa from 'papaparse';
import { MAX_COLUMNS, MAX_CSV_BYTES, MAX_CSV_ROWS, refusal, refuseNoText, tooLarge } from '../files/csv.ts';
import { delimiterOf, FIRST_ROWS, likelyHeader } from '../files/delimiter.ts';

export const SHOTS = 'file of shots';

/** Row 1 is the first of the file. */
export type ShotTable = { header: string[]; headerRow: number; rows: string[][] };

/**
 * A CSV text as a table; comma, semicolon or tab part the cells.
 * @param headerRow left out: the first row with two names in it.
 * @throws RefusedInput for what is no such table: zero bytes, half letters, odd quotes, no header, too many rows.
 */
export function shotTable(text: string, headerRow?: number): ShotTable {
  if (text.length > MAX_CSV_BYTES) throw tooLarge(SHOTS, text.length);
  refuseNoText(text, SHOTS);
  const plain = text.replace(/^\ufeff/, '');
  const parsed = Papa.parse<string[]>(plain, {
    skipEmptyLines: false,
    delimiter: delimiterOf(plain),
    preview: MAX_CSV_ROWS + FIRST_ROWS + 2,
  });
  const fault = parsed.errors.find((error) => error.type === 'Quotes');
  if (fault) {
    const place = `row ${String((fault.row ?? 0) + 1)}`;
    throw refusal(SHOTS, place, '', fault.message, 'Mend the quotes in that row.');
  }
  const at = headerRow ?? likelyHeader(parsed.data) + 1;
  const header = (parsed.data[at - 1] ?? []).map((cell) => cell.trim());
  if (header.every((cell) => cell === '')) {
    const remedy = headerRow === undefined ? 'A row must name the columns.' : 'Choose another row.';
    throw refusal(SHOTS, `row ${String(at)}`, '', 'there is no header', remedy);
  }
  if (header.length > MAX_COLUMNS) {
    const message = `there are more than ${String(MAX_COLUMNS)} columns`;
    const value = `${String(header.length)} columns`;
    throw refusal(SHOTS, `row ${String(at)}`, value, message, 'Leave the others out.');
  }
  const rows = parsed.data.slice(at);
  if (rows.length > MAX_CSV_ROWS) {
    const value = `${String(rows.length)} rows or more`;
    throw refusal(SHOTS, 'file', value, 'there are more than 100,000 rows', 'Give one session at a time.');
  }
  return { header, headerRow: at, rows };
}

/** Files with the same columns share a mapping. */
export function headerSignature(header: readonly string[]): string {
  return JSON.stringify(header.map((cell) => cell.toLowerCase())).slice(0, 1000);
}
