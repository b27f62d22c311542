import { decimalIn, readCsv, type BadRow, type CsvSpec } from './csv.ts';

/** Why one row cannot be used. */
export type Bad = Omit<BadRow, 'rowNumber'>;
type Cells<C extends string> = Partial<Record<C, string>>;

export type TableRows<T> = { good: { rowNumber: number; row: T }[]; bad: BadRow[]; unknown: string[] };

/** Each row is taken whole or listed as bad, in order of the file. @throws RefusedInput as readCsv */
export function readRows<C extends string, T>(
  text: string,
  spec: CsvSpec<C>,
  read: (cells: Cells<C>) => { row: T } | Bad,
): TableRows<T> {
  const { rows, bad, unknown } = readCsv(text, spec);
  const good: TableRows<T>['good'] = [];
  for (const { rowNumber, cells } of rows) {
    const found = read(cells);
    if ('row' in found) good.push({ rowNumber, row: found.row });
    else bad.push({ rowNumber, ...found });
  }
  return { good, bad: bad.sort((a, b) => a.rowNumber - b.rowNumber), unknown };
}

/** The decimal mark that the figures of a file show. @throws RefusedInput as readCsv */
export function decimalOf<C extends string>(
  text: string,
  spec: CsvSpec<C>,
  figures: readonly C[],
): '.' | ',' {
  const { rows } = readCsv(text, spec);
  return decimalIn(rows.flatMap(({ cells }) => figures.map((column) => cells[column] ?? '')));
}

export const notNumber = (decimal: '.' | ',') =>
  `it is not a plain number with a ${decimal === '.' ? 'point' : 'comma'}`;
