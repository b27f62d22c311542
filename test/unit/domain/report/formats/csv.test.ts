import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { csv } from '../../../../../src-main/domain/report/formats/csv.ts';
import { COLUMNS } from '../../../../../src-main/domain/report/model.ts';
import { HOSTILE, make, NAMES } from '../variants.ts';

const parsed = (text: string) =>
  Papa.parse<string[]>(text, { delimiter: ',', newline: '\r\n', skipEmptyLines: true });
const NUMBER = /^-?\d+(?:\.\d+)?$/;

describe('csv', () => {
  it.each(NAMES)('%s: RFC 4180, one width, no cell that a spreadsheet would run', (name) => {
    const text = csv(make(name).document);
    const { data, errors } = parsed(text);
    expect(errors).toEqual([]);
    expect(new Set(data.map((row) => row.length))).toEqual(new Set([COLUMNS.length + 1]));
    expect(text.endsWith('\r\n')).toBe(true);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    for (const cell of data.flat()) {
      if (!NUMBER.test(cell)) expect(cell).not.toMatch(/^[=+\-@\t\r\n＝＋－＠]/u);
    }
  });

  it('starts with a byte order mark, which parsers know', () => {
    const text = csv(make('usual').document);
    expect(text.charCodeAt(0)).toBe(0xfeff);
    expect(parsed(text).data[0]?.[0]).toBe('section');
  });

  it('brings names back as they were, but for the apostrophe that tames a formula', () => {
    const rows = parsed(csv(make('hostile').document)).data;
    const ladder = rows.filter(([section]) => section === 'The ladder, before and after');
    expect(ladder[0]?.[2]).toBe(`'@driver ${HOSTILE}`);
    expect(rows.some((row) => row.some((cell) => cell.includes(`@lw ${HOSTILE}`)))).toBe(true);
  });

  it('writes numbers plain, whatever the language', () => {
    const column = (name: 'german' | 'metric', head: RegExp) => {
      const [heads = [], ...rows] = parsed(csv(make(name).document)).data;
      const at = heads.findIndex((one) => head.test(one));
      return rows.map((row) => row[at] ?? '').filter((cell) => cell !== '');
    };
    const english = column('metric', /^carry \(m\)$/);
    expect(english).toEqual(column('german', /^Carry \(m\)$/));
    expect(english.length).toBeGreaterThan(10);
    for (const cell of english) expect(cell).toMatch(NUMBER);
    expect(column('metric', /^price likely \(EUR\)$/)).toEqual(['45', '15']);
  });

  it('has a row for a purchase with everything in columns of its own', () => {
    const [heads = [], ...rows] = parsed(csv(make('usual').document)).data;
    const row = rows.find((cells) => cells[1] === '1') ?? [];
    const at = (head: string) => row[heads.indexOf(head)];
    expect([at('item'), at('loft (°)'), at('loft from (°)'), at('loft to (°)'), at('length (in)')]).toEqual([
      '25° hybrid (game improvement)',
      '25',
      '24',
      '26',
      '39.5',
    ]);
    expect([at('price low (GBP)'), at('price likely (GBP)'), at('price high (GBP)')]).toEqual([
      '32',
      '45',
      '60',
    ]);
    expect([at('delivery (GBP)'), at('regrip (GBP)'), at('running total (GBP)')]).toEqual(['8', '9', '62']);
    expect([at('measured loft (°)'), at('paid (GBP)')]).toEqual(['', '']);
  });
});
