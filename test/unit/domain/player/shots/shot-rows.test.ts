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
});
