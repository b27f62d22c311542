import type { ShotMapping } from '../../contract/calls/records/shots.ts';
import { RefusedInput } from '../../contract/refusal.ts';
import { toMph, toYards } from '../../contract/units.ts';
import { readShotRows, type ShotRow } from '../../domain/player/shots/shot-rows.ts';
import { cellText, type BadRow } from '../files/csv.ts';
import type { ShotTable } from './table.ts';

/** As many words as a club column has at most; more are another column, chosen by mistake. */
const MOST_WORDS = 100;
const LONGEST_WORD = 200;

/** The table's rows by the user's mapping, each whole or listed as bad. @throws RefusedInput for one that does not fit. */
export function readShots(table: ShotTable, mapping: ShotMapping): { shots: ShotRow[]; bad: BadRow[] } {
  for (const [name, at] of Object.entries(mapping.columns)) {
    if (at < table.header.length) continue;
    const message = `the file has ${String(table.header.length)} columns`;
    throw unfit(`mapping.columns.${name}`, String(at), message, 'Choose one of its columns.');
  }
  const read = readShotRows(table.rows, {
    columns: mapping.columns,
    decimal: mapping.decimal,
    firstRow: table.headerRow + 1,
    toYards: (value) => toYards(value, mapping.distance),
    toMph: (value) => toMph(value, mapping.speed),
  });
  const bad: BadRow[] = [...read.bad];
  const shots = read.shots.filter((shot) => {
    const message = wordProblem(shot.clubLabel);
    if (message === null) return true;
    bad.push({ rowNumber: shot.rowNumber, column: 'club', value: shot.clubLabel.slice(0, 60), message });
    return false;
  });
  const words = new Set(shots.map(({ clubLabel }) => clubLabel)).size;
  if (words > MOST_WORDS) {
    const message = `the column chosen for the club has ${String(words)} different words`;
    throw unfit('mapping.columns.club', '', message, 'Choose the column with the names of the clubs.');
  }
  return { shots, bad: bad.sort((a, b) => a.rowNumber - b.rowNumber) };
}

function wordProblem(word: string): string | null {
  if (word.length > LONGEST_WORD) return 'the name of the club is too long';
  if (/\p{Cc}/u.test(word)) return 'the name of the club holds control characters';
  const text = cellText(word);
  return 'message' in text ? text.message : null;
}

function unfit(path: string, value: string, message: string, remedy: string): RefusedInput {
  return new RefusedInput('This mapping does not fit the file:', [{ path, value, message, remedy }]);
}

/** The club that a shot's word was mapped to; null for one that is left out. */
export function clubOf({ clubLabel }: ShotRow, { clubs }: ShotMapping): string | null {
  return Object.hasOwn(clubs, clubLabel) ? (clubs[clubLabel] ?? null) : null;
}
