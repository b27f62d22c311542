import { describe, expect, it } from 'vitest';
import {
  parseNumber,
  readShotRows,
  type ShotFormat,
} from '../../../../../src-main/domain/player/shots/shot-rows.ts';

const format: ShotFormat = {
  columns: { club: 0, carry: 1, total: 2, spin: 3 },
  decimal: '.',
  toYards: (value) => value,
  toMph: (value) => value,
};

describe('parseNumber', () => {
  it.each([
    ['172.5', '.', 172.5],
    ['172,5', ',', 172.5],
    ['-3', '.', -3],
    ['172,5', '.', Number.NaN],
    ['1e5', '.', Number.NaN],
    ['0x10', '.', Number.NaN],
    ['12 yd', '.', Number.NaN],
    ['', '.', Number.NaN],
    ['Infinity', '.', Number.NaN],
    ['=1+1', '.', Number.NaN],
  ] as const)('%s with %s', (text, decimal, value) => {
    expect(parseNumber(text, decimal)).toBe(value);
  });
});

describe('readShotRows', () => {
  it('takes good rows whole, with the row number of the file', () => {
    expect(readShotRows([['7 iron', '150.5', '158', '6400']], format)).toEqual({
      shots: [{ rowNumber: 2, clubLabel: '7 iron', carryYd: 150.5, totalYd: 158, spinRpm: 6400 }],
      bad: [],
    });
  });
  it('lists bad rows with the reason, and keeps the good ones', () => {
    const rows = [
      ['7i', 'x'],
      ['', '150'],
      ['7i', '900'],
      [' ', ' '],
      ['7i', '150', '', '99999'],
      ['7i', '149'],
      ['7i'],
    ];
    const { shots, bad } = readShotRows(rows, format);
    expect(shots.map((shot) => shot.rowNumber)).toEqual([7]);
    expect(bad).toEqual([
      { rowNumber: 2, column: 'carry', value: 'x', message: 'carry is not a number' },
      { rowNumber: 3, column: 'club', value: '', message: 'the club is missing' },
      { rowNumber: 4, column: 'carry', value: '900', message: 'carry lies between 1 and 450 yd' },
      { rowNumber: 6, column: 'spin', value: '99999', message: 'spin lies between 0 and 15000 rpm' },
      { rowNumber: 8, column: 'carry', value: '', message: 'carry is not a number' },
    ]);
  });
  it('converts units before it judges', () => {
    const metres = { ...format, toYards: (value: number) => value / 0.9144 };
    expect(readShotRows([['7i', '137.16']], metres).shots[0]?.carryYd).toBeCloseTo(150, 9);
  });
  it('takes every figure at both ends of its limits, and none beyond', () => {
    const every: ShotFormat = {
      ...format,
      columns: { club: 0, carry: 1, total: 2, ballSpeed: 3, launch: 4, spin: 5 },
    };
    const at = (...cells: string[]) => readShotRows([['7i', ...cells]], every);
    expect(at('1', '1', '20', '-10', '0').shots).toEqual([
      { rowNumber: 2, clubLabel: '7i', carryYd: 1, totalYd: 1, ballSpeedMph: 20, launchDeg: -10, spinRpm: 0 },
    ]);
    expect(at('450', '500', '250', '80', '15000').shots).toHaveLength(1);
    const columnOf = (...cells: string[]) => at(...cells).bad.map(({ column }) => column);
    expect([columnOf('0.9'), columnOf('450.1')]).toEqual([['carry'], ['carry']]);
    expect([columnOf('150', '0.9'), columnOf('150', '500.1')]).toEqual([['total'], ['total']]);
    expect([columnOf('150', '', '19.9'), columnOf('150', '', '250.1')]).toEqual([
      ['ballSpeed'],
      ['ballSpeed'],
    ]);
    expect([columnOf('150', '', '', '-10.1'), columnOf('150', '', '', '80.1')]).toEqual([
      ['launch'],
      ['launch'],
    ]);
    expect([columnOf('150', '', '', '', '-1'), columnOf('150', '', '', '', 'x')]).toEqual([
      ['spin'],
      ['spin'],
    ]);
  });
  it('has only the figures that a row gives', () => {
    const every: ShotFormat = {
      ...format,
      columns: { club: 0, carry: 1, total: 2, ballSpeed: 3, launch: 4, spin: 5 },
    };
    const read = (...cells: string[]) => readShotRows([['7i', '150', ...cells]], every).shots[0];
    const plain = { rowNumber: 2, clubLabel: '7i', carryYd: 150 };
    expect(read()).toStrictEqual(plain);
    expect(read('', ' ', '', '')).toStrictEqual(plain);
    expect(read('160')).toStrictEqual({ ...plain, totalYd: 160 });
    expect(read('', '100')).toStrictEqual({ ...plain, ballSpeedMph: 100 });
    expect(read('', '', '17')).toStrictEqual({ ...plain, launchDeg: 17 });
    expect(read('', '', '', '6000')).toStrictEqual({ ...plain, spinRpm: 6000 });
  });
  it('takes a sign, but no second number and no thousands', () => {
    const carries = ['+150', '150.5.1', '1,500', '150 150'].map(
      (carry) => readShotRows([['7i', carry]], format).shots[0]?.carryYd,
    );
    expect(carries).toEqual([150, undefined, undefined, undefined]);
  });
  it('converts speeds too, trims cells, and leaves out columns that are not chosen', () => {
    const metric: ShotFormat = {
      columns: { club: 1, carry: 0, ballSpeed: 2 },
      decimal: ',',
      toYards: (value) => value,
      toMph: (value) => value * 2,
    };
    expect(readShotRows([[' 150,5 ', ' 7 iron ', ' 55 ', '9999']], metric).shots).toStrictEqual([
      { rowNumber: 2, clubLabel: '7 iron', carryYd: 150.5, ballSpeedMph: 110 },
    ]);
  });
  it('counts rows from where the file’s rows begin, and shows no endless cell', () => {
    const { bad } = readShotRows([['7i', 'x'.repeat(200)]], { ...format, firstRow: 5 });
    expect(bad).toMatchObject([{ rowNumber: 5, value: 'x'.repeat(60) }]);
  });
  it('tells the first thing wrong of a row', () => {
    expect(readShotRows([['7i', 'x', 'y', 'z']], format).bad).toHaveLength(1);
    expect(readShotRows([['7i', 'x', 'y', 'z']], format).bad[0]?.column).toBe('carry');
  });
});
