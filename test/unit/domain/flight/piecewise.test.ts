import { describe, expect, test } from 'vitest';
import { piecewise, type Points } from '../../../../src-main/domain/flight/piecewise.ts';

const points: Points = [
  [10, 1],
  [20, 3],
  [40, 2],
];

describe('piecewise', () => {
  test.each([
    [10, 1],
    [15, 2],
    [20, 3],
    [30, 2.5],
    [40, 2],
  ])('at %d: %d', (x, y) => {
    expect(piecewise(points, x, 'hold')).toBeCloseTo(y, 12);
    expect(piecewise(points, x, 'extend')).toBeCloseTo(y, 12);
  });

  test.each([
    [0, 1, -1],
    [60, 2, 1],
  ])('outside, at %d: held %d, extended %d', (x, held, extended) => {
    expect(piecewise(points, x, 'hold')).toBeCloseTo(held, 12);
    expect(piecewise(points, x, 'extend')).toBeCloseTo(extended, 12);
  });

  test('a single point is a constant', () => {
    expect(piecewise([[10, 7]], -5, 'extend')).toBe(7);
    expect(piecewise([[10, 7]], 500, 'extend')).toBe(7);
  });

  test('two points are one line', () => {
    const line: Points = [
      [0, 0],
      [1, 2],
    ];
    expect(piecewise(line, 3, 'extend')).toBe(6);
    expect(piecewise(line, 3, 'hold')).toBe(2);
  });
});
