import { describe, expect, test } from 'vitest';
import { cubicAt, cubicSlopeAt, fallsThroughZero } from '../../../../src-main/domain/flight/hermite.ts';

/** t³ − 2t + 1 from t = 1 to 3. */
const f = (t: number) => t ** 3 - 2 * t + 1;
const slope = (t: number) => 3 * t ** 2 - 2;
const cubic = { from: f(1), fromSlope: slope(1), to: f(3), toSlope: slope(3), length: 2 };

describe('cubic through both ends of a step', () => {
  test.each([0, 0.2, 0.5, 0.9, 1])('exact for a cubic at %d', (share) => {
    expect(cubicAt(cubic, share)).toBeCloseTo(f(1 + 2 * share), 12);
    expect(cubicSlopeAt(cubic, share)).toBeCloseTo(slope(1 + 2 * share), 12);
  });
});

describe('fallsThroughZero', () => {
  test('finds the crossing to the last bits', () => {
    expect(fallsThroughZero((s) => 0.3 - s, 0, 1)).toBeCloseTo(0.3, 14);
    expect(fallsThroughZero((s) => 0.25 - s * s, 0, 1)).toBeCloseTo(0.5, 14);
  });

  test('a crossing at the start or the end is found there', () => {
    expect(fallsThroughZero((s) => -s, 0, 1)).toBeCloseTo(0, 14);
    expect(fallsThroughZero(() => 1, 0, 1)).toBeCloseTo(1, 14);
  });
});
