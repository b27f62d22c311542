/** The figures of one shot that a file may have, by the column that the user chose for each. */
export type ShotColumns = {
  club: number;
  carry: number;
  total?: number;
  ballSpeed?: number;
  launch?: number;
  spin?: number;
};

export type ShotFormat = {
  columns: ShotColumns;
  /** How the file writes decimals. */
  decimal: '.' | ',';
  /** Number of the first of the rows in the file; 2 when left out, under a header that is row 1. */
  firstRow?: number;
  /** The file's units → yards and mph. */
  toYards: (value: number) => number;
  toMph: (value: number) => number;
};

/** One good row. Distances in yards, speed in mph; `rowNumber` is the row of the file. */
export type ShotRow = {
  rowNumber: number;
  clubLabel: string;
  carryYd: number;
  totalYd?: number;
  ballSpeedMph?: number;
  launchDeg?: number;
  spinRpm?: number;
};

/** One row that cannot be used, and why; the first reason found. */
export type BadRow = { rowNumber: number; column: keyof ShotColumns; value: string; message: string };

/** What a shot's figures stay inside: a slip of the column or unit falls outside. Common practice, no source. */
const LIMITS: Record<Exclude<keyof ShotColumns, 'club'>, { least: number; most: number; unit: string }> = {
  carry: { least: 1, most: 450, unit: 'yd' },
  total: { least: 1, most: 500, unit: 'yd' },
  ballSpeed: { least: 20, most: 250, unit: 'mph' },
  launch: { least: -10, most: 80, unit: '°' },
  spin: { least: 0, most: 15_000, unit: 'rpm' },
};

/** The rows under the header, each taken whole or listed as bad; blank rows are neither. */
export function readShotRows(
  rows: readonly (readonly string[])[],
  format: ShotFormat,
): { shots: ShotRow[]; bad: BadRow[] } {
  const shots: ShotRow[] = [];
  const bad: BadRow[] = [];
  const { firstRow = 2 } = format;
  rows.forEach((cells, i) => {
    if (cells.every((cell) => cell.trim() === '')) return;
    const read = readRow(cells, i + firstRow, format);
    if ('message' in read) bad.push(read);
    else shots.push(read);
  });
  return { shots, bad };
}

function readRow(cells: readonly string[], rowNumber: number, format: ShotFormat): ShotRow | BadRow {
  const { columns, toYards, toMph } = format;
  const clubLabel = (cells[columns.club] ?? '').trim();
  if (clubLabel === '') return { rowNumber, column: 'club', value: '', message: 'the club is missing' };
  const refused: BadRow[] = [];
  const figure = (column: Exclude<keyof ShotColumns, 'club'>, convert = (value: number) => value) => {
    const at = columns[column];
    if (at === undefined) return undefined;
    const text = (cells[at] ?? '').trim();
    if (text === '' && column !== 'carry') return undefined;
    const value = convert(parseNumber(text, format.decimal));
    const { least, most, unit } = LIMITS[column];
    if (value >= least && value <= most) return value;
    const message = Number.isNaN(value)
      ? `${column} is not a number`
      : `${column} lies between ${String(least)} and ${String(most)} ${unit}`;
    refused.push({ rowNumber, column, value: text.slice(0, 60), message });
    return undefined;
  };
  const carryYd = figure('carry', toYards);
  const totalYd = figure('total', toYards);
  const ballSpeedMph = figure('ballSpeed', toMph);
  const launchDeg = figure('launch');
  const spinRpm = figure('spin');
  const first = refused[0];
  if (first) return first;
  if (carryYd === undefined)
    return { rowNumber, column: 'carry', value: '', message: 'the carry is missing' };
  return {
    rowNumber,
    clubLabel,
    carryYd,
    ...(totalYd === undefined ? {} : { totalYd }),
    ...(ballSpeedMph === undefined ? {} : { ballSpeedMph }),
    ...(launchDeg === undefined ? {} : { launchDeg }),
    ...(spinRpm === undefined ? {} : { spinRpm }),
  };
}

/** A plain number in the file's own decimals; NaN for anything else, "1e5", "0x10" and "12 yd" included. */
export function parseNumber(text: string, decimal: '.' | ','): number {
  const plain = decimal === ',' ? text.replace(',', '.') : text;
  return /^[-+]?\d+(?:\.\d+)?$/.test(plain) ? Number(plain) : Number.NaN;
}
