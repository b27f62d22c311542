import Papa from 'papaparse';
import { RefusedInput } from '../contract/refusal.ts';

export type ShotTable = { header: string[]; rows: string[][] };

/** Shots of one session; a file of 20 MB holds some 200,000. */
export const MAX_SHOT_CHARACTERS = 20 * 1024 * 1024;
export const MAX_SHOT_ROWS = 100_000;

/** A CSV text as a table. The separator is found out. @throws RefusedInput for no header, too many rows, odd quotes. */
export function shotTable(text: string): ShotTable {
  const refuse = (path: string, value: string, message: string, remedy: string): never => {
    throw new RefusedInput('This file of shots cannot be read:', [{ path, value, message, remedy }]);
  };
  if (text.length > MAX_SHOT_CHARACTERS)
    refuse('file', '', 'it is larger than 20 MB', 'Give one session at a time.');
  if (text.includes('\u0000'))
    refuse('file', '(binary)', 'it holds zero bytes and is no text', 'Export it as CSV.');
  const parsed = Papa.parse<string[]>(text.replace(/^\ufeff/, ''), { skipEmptyLines: false });
  const fault = parsed.errors.find((error) => error.type === 'Quotes');
  if (fault) refuse(`row ${String((fault.row ?? 0) + 1)}`, '', fault.message, 'Mend the quotes in that row.');
  const [header, ...rows] = parsed.data;
  if (!header || header.every((cell) => cell.trim() === '')) {
    return refuse('row 1', '', 'there is no header', 'The first row must name the columns.');
  }
  if (rows.length > MAX_SHOT_ROWS) {
    refuse(
      'file',
      `${String(rows.length)} rows`,
      'there are more than 100,000 rows',
      'Give one session at a time.',
    );
  }
  return { header: header.map((cell) => cell.trim()), rows };
}

/** Files with the same columns share a mapping. */
export function headerSignature(header: readonly string[]): string {
  return JSON.stringify(header.map((cell) => cell.toLowerCase())).slice(0, 1000);
}
