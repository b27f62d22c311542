import { describe, expect, it } from 'vitest';
import { RefusedInput } from '../../../../src-main/contract/refusal.ts';
import {
  cellNumber,
  cellText,
  csvText,
  MAX_CSV_BYTES,
  readCsv,
  writeCsv,
  type CsvSpec,
} from '../../../../src-main/service/files/csv.ts';
import { delimiterOf } from '../../../../src-main/service/files/delimiter.ts';

const SPEC: CsvSpec<'name' | 'age'> = {
  what: 'list',
  columns: { name: ['name'], age: ['age', 'years'] },
  needed: ['name'],
  mostRows: 5,
};
const read = (text: string) => readCsv(text, SPEC);
function refusal(fn: () => unknown) {
  try {
    fn();
  } catch (error) {
    if (error instanceof RefusedInput) return error.refusals[0];
    throw error;
  }
  throw new Error('it was taken');
}

describe('what parts the cells', () => {
  it.each([
    ['a comma', 'a,b\n1,2', ','],
    ['a semicolon beside decimal commas', 'club;carry\n7i;150,5\n8i;140,5\n', ';'],
    ['a semicolon, the decimal commas in each cell', 'carry;total\n150,5;160,5\n140,5;150,5\n', ';'],
    ['a tab beside both', 'a, b\tc; d\n1, 2\t3; 4\n', '\t'],
    ['a comma under a title', 'Session; range\n\na,b,c\n1,2,3\n', ','],
    ['a semicolon within quotes is none', '"a;b",c\n"1;2",3\n', ','],
    ['nothing: a comma will do', 'a\n1\n', ','],
  ])('%s', (_, text, delimiter) => {
    expect(delimiterOf(text)).toBe(delimiter);
  });
});

describe('reading', () => {
  it.each([
    ['commas', 'Name,Years\r\nAda,7\r\n'],
    ['semicolons', 'name;age\nAda;7'],
    ['semicolons, and an empty line after the last', 'name;age\nAda;7\n'],
    ['tabs, and an empty line after the last', 'name\tage\nAda\t7\n'],
    ['tabs, a byte order mark, odd headings', '\ufeffNAME\tyears\t\nAda\t7\t\n'],
    ['other columns between', 'x,name,y,years\n1,Ada,2,7\n'],
  ])('%s', (_, text) => {
    expect(read(text).rows).toEqual([{ rowNumber: 2, cells: { name: 'Ada', age: '7' } }]);
  });
  it('skips blank rows, counts them, names columns that mean nothing, keeps quotes and line ends in cells', () => {
    expect(read('name,shoe size\n\n"Ada ""A"", first\nlast",9\n,\n')).toEqual({
      rows: [{ rowNumber: 3, cells: { name: 'Ada "A", first\nlast' } }],
      bad: [],
      unknown: ['shoe size'],
    });
  });
  it('lists rows that are too long or have too long a cell', () => {
    expect(read(`name,age\nAda,7,8\n${'x'.repeat(10_001)},7\nBea,9`)).toMatchObject({
      rows: [{ rowNumber: 4 }],
      bad: [
        { rowNumber: 2, value: '8', message: 'the row has more cells than the header' },
        { rowNumber: 3, column: 'name', message: 'the cell is too long' },
      ],
    });
  });
  it.each([
    ['nothing', '', { path: 'row 1', message: 'there is no header' }],
    ['no needed column', 'age\n7', { path: 'row 1', message: 'there is no column name' }],
    ['a column twice', 'name,age,years\n', { path: 'row 1', value: '"years"' }],
    ['open quotes', 'name\n"Ada', { message: expect.stringContaining('uote') as string }],
    ['zero bytes', 'name\u0000\n', { value: '(binary)' }],
    [
      'half a letter',
      'name,age\nAda,7\n\ud800,1',
      { path: 'line 3', message: 'it holds half a surrogate pair' },
    ],
    ['too many rows', `name\n${'Ada\n'.repeat(6)}x`, { message: 'there are more than 5 rows' }],
    ['too many columns', `name${',x'.repeat(201)}`, { message: 'there are more than 200 columns' }],
  ])('refuses %s', (_, text, wanted) => {
    const found = refusal(() => read(text));
    expect(found).toMatchObject(wanted);
    expect(found?.remedy).toMatch(/\.$/);
  });
  it('refuses bytes that are no UTF-8, or too many, before reading them', () => {
    expect(refusal(() => csvText(new Uint8Array([0xff, 0xfe, 0x41]), 'list'))).toMatchObject({
      message: 'it is not UTF-8 text',
    });
    expect(refusal(() => csvText(new Uint8Array(MAX_CSV_BYTES + 1), 'list'))).toMatchObject({
      value: '20.0 MB',
    });
  });
});

describe('a cell', () => {
  it.each([
    ['Ada', { text: 'Ada' }],
    ["'=1+1", { text: '=1+1' }],
    ["O'Neil", { text: "O'Neil" }],
    ["'tis", { text: "'tis" }],
    ['a < b', { text: 'a < b' }],
  ])('of text: %j is taken', (cell, wanted) => {
    expect(cellText(cell)).toEqual(wanted);
  });
  it.each(['=1+1', '+44 20', '-5', '@SUM(A1)', '\uFF1D1', '<b>Ada</b>', '<!--x', '</p>', '<script>'])(
    'of text: %j is not',
    (cell) => {
      expect(cellText(cell)).toHaveProperty('message');
    },
  );
  it.each([
    ['45', '.', 45],
    ['-2.5', '.', -2.5],
    ['45,5', ',', 45.5],
    ['45.5', ',', null],
    ['45,5', '.', null],
    ['1,234.5', '.', null],
    ['1e5', '.', null],
    ['1e999', '.', null],
    ['NaN', '.', null],
    ['Infinity', '.', null],
    ['=45', '.', null],
    ['0x10', '.', null],
    ['', '.', null],
    ['٤٥', '.', null],
  ] as const)('of numbers: %j with %j is %j', (cell, decimal, wanted) => {
    expect(cellNumber(cell, decimal)).toBe(wanted);
  });
});

it('what is written comes back: quotes, lines, formulas, numbers, blanks', () => {
  const names = [
    'Ada',
    '=cmd|x',
    '+1',
    '-2',
    '@a',
    'a,b',
    'a;b',
    'say "x"',
    'two\nlines',
    "'quoted",
    ' blank',
  ];
  const text = writeCsv(
    ['name', 'age'],
    names.map((name) => [name, -2.5]),
  );
  expect(text.startsWith('\ufeffname,age\r\nAda,-2.5\r\n')).toBe(true);
  expect(text).toContain("\r\n'=cmd|x,-2.5\r\n");
  const { rows } = readCsv(text, { ...SPEC, mostRows: 50 });
  expect(rows.map(({ cells }) => cellText(cells.name ?? ''))).toEqual(
    names.map((name) => ({ text: name.trim() })),
  );
});
