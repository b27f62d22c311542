import { describe, expect, it } from 'vitest';
import { handicapText, readHandicap } from '../../../../src-main/domain/bag/handicap.ts';

const figure = (value: number) => value.toFixed(1);
const read = (text: string) => (/^-?\d+(\.\d+)?$/.test(text) ? Number(text) : null);

describe('a handicap as golfers write it', () => {
  it.each([
    [18.4, '18.4'],
    [0, '0.0'],
    [-2.1, '+2.1'],
  ])('%s is written %s', (handicap, text) => {
    expect(handicapText(handicap, figure)).toBe(text);
    expect(readHandicap(text, read)).toBe(handicap);
  });
  it.each([
    ['-2.1', -2.1],
    [' +2 ', -2],
    ['+0', 0],
    ['+', null],
    ['++2', null],
    ['+-2', null],
    ['2+', null],
    ['', null],
  ])('"%s" is read as %s', (text, handicap) => {
    expect(readHandicap(text, read)).toBe(handicap);
  });
});
