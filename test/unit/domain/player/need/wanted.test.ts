import { describe, expect, it } from 'vitest';
import {
  countBetween,
  countDeckBetween,
  countInside,
  NOTHING_WANTED,
  type Wanted,
} from '../../../../../src-main/domain/player/need/wanted.ts';

const wanted: Wanted = {
  tee: [
    { carryYd: 230, shots: 1 },
    { carryYd: 160, shots: 1 },
  ],
  deck: [{ carryYd: 200, shots: 3 }],
  edgesYd: Float64Array.of(40, 50, 60, 60.5),
  shots: Float64Array.of(1, 2, 0.5),
};

describe('countBetween', () => {
  it('counts all, and the lower end but not the upper', () => {
    expect(countBetween(wanted, 0, Infinity)).toBe(8.5);
    expect(countBetween(wanted, 160, 200)).toBe(1);
    expect(countBetween(wanted, 200, 230)).toBe(3);
    expect(countBetween(wanted, 160.5, 199)).toBe(0);
  });
  it('takes part of a cell in proportion', () => {
    expect(countBetween(wanted, 45, 52)).toBeCloseTo(0.5 + 0.4, 12);
    expect(countBetween(wanted, 42, 44)).toBeCloseTo(0.2, 12);
    expect(countBetween(wanted, 60.25, 100)).toBeCloseTo(0.25, 12);
  });
  it('is 0 for an empty or inverted interval, and where nothing is wanted', () => {
    expect(countBetween(wanted, 50, 50)).toBe(0);
    expect(countBetween(wanted, 55, 45)).toBe(0);
    expect(countBetween(NOTHING_WANTED, 0, Infinity)).toBe(0);
  });
  it('from the ground leaves the tee shots out', () => {
    expect(countDeckBetween(wanted, 0, Infinity)).toBe(6.5);
  });
});

describe('countInside', () => {
  it('leaves out the very carry of either club', () => {
    expect(countInside(wanted, 200, 230)).toBe(0);
    expect(countInside(wanted, 160, 231)).toBe(4);
  });
  it('knows a carry again that was rounded to a tenth of a yard', () => {
    expect(countInside(wanted, 170, 200.05)).toBe(0);
    expect(countInside(wanted, 199.95, 229)).toBe(0);
    expect(countInside(wanted, 199.8, 229)).toBe(3);
  });
});
