export type Align = 'left' | 'right';
export type Column = { head: string; align?: Align };

/** A plain text table: two spaces between columns, a rule under the head; numbers to the right. */
export function textTable(columns: readonly Column[], rows: readonly (readonly string[])[]): string {
  const widths = columns.map((column, i) =>
    Math.max(width(column.head), ...rows.map((row) => width(row[i] ?? ''))),
  );
  const line = (cells: readonly string[]) =>
    columns
      .map((column, i) => pad(cells[i] ?? '', widths[i] ?? 0, column.align ?? 'left'))
      .join('  ')
      .trimEnd();
  return [
    line(columns.map((column) => column.head)),
    widths.map((size) => '-'.repeat(size)).join('  '),
    ...rows.map(line),
  ].join('\n');
}

function pad(text: string, size: number, align: Align): string {
  const room = ' '.repeat(Math.max(0, size - width(text)));
  return align === 'right' ? room + text : text + room;
}

/** Columns on a terminal: combining marks take none, East Asian wide letters two. */
function width(text: string): number {
  let columns = 0;
  for (const letter of text.normalize('NFC')) {
    const code = letter.codePointAt(0) ?? 0;
    if (/\p{Mark}/u.test(letter)) continue;
    columns +=
      (code >= 0x1100 && code <= 0x115f) || (code >= 0x2e80 && code <= 0xffdc) || code >= 0x1f300 ? 2 : 1;
  }
  return columns;
}

/** Breaks text at blanks into lines of at most `most` letters, each after `indent`. */
export function wrapped(text: string, most = 96, indent = ''): string {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/)) {
    if (line !== '' && line.length + 1 + word.length > most) {
      lines.push(line);
      line = '';
    }
    line = line === '' ? word : `${line} ${word}`;
  }
  if (line !== '') lines.push(line);
  return lines.map((one) => indent + one).join('\n');
}
