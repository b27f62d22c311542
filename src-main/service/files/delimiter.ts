import Papa from 'papaparse';

/** What may part the cells of a row. Where two would do as well, the first: a comma is also a decimal mark. */
const DELIMITERS = ['\t', ';', ','] as const;

/** Rows that the choice goes by, and above which a header is looked for: a file may begin with a title, a name, a day. */
export const FIRST_ROWS = 30;

/**
 * What parts the cells of a table: that which gives the most rows as many cells as the header, then the most cells.
 * (The library's own guess wants two cells a row on average, an empty last line counted, and so misses short tables.)
 */
export function delimiterOf(text: string): string {
  let best = ',';
  let [bestRows, bestCells] = [0, 0];
  for (const delimiter of DELIMITERS) {
    const { data } = Papa.parse<string[]>(text, { delimiter, preview: FIRST_ROWS });
    const cells = data[likelyHeader(data)]?.length ?? 0;
    const rows = data.filter((row) => row.length === cells).length;
    if (cells < 2 || rows < bestRows || (rows === bestRows && cells <= bestCells)) continue;
    best = delimiter;
    [bestRows, bestCells] = [rows, cells];
  }
  return best;
}

/** Index of the first row with two names in it; 0 where there is none. */
export function likelyHeader(rows: readonly (readonly string[])[]): number {
  const names = (row: readonly string[]) => row.filter((cell) => cell.trim() !== '').length;
  const found = rows.slice(0, FIRST_ROWS).findIndex((row) => names(row) >= 2);
  return Math.max(0, found);
}
