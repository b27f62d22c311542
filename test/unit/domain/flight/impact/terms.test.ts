import { describe, expect, test } from 'vitest';
import {
  lengthFactor,
  spinTierFactor,
  standardLengthIn,
} from '../../../../../src-main/domain/flight/impact/terms.ts';

describe('spin tier', () => {
  test('mid and unknown change nothing', () => {
    expect(spinTierFactor('driver')).toBe(1);
    expect(spinTierFactor('iron', 'mid')).toBe(1);
  });

  test('low and high mirror each other and stay under a tenth', () => {
    for (const kind of ['driver', 'fairway', 'hybrid', 'iron'] as const) {
      const low = spinTierFactor(kind, 'low');
      expect(low).toBeLessThan(1);
      expect(low).toBeGreaterThan(0.9);
      expect(low + spinTierFactor(kind, 'high')).toBeCloseTo(2, 12);
    }
    expect(spinTierFactor('wedge', 'high')).toBe(1);
  });
});

describe('length', () => {
  test('standard and unknown change nothing', () => {
    expect(lengthFactor('driver', 10.5)).toBe(1);
    expect(lengthFactor('driver', 10.5, 45.5)).toBe(1);
    expect(lengthFactor('iron', 33, 37)).toBe(1);
  });

  test('an inch is worth about a hundredth; beyond two inches nothing more', () => {
    expect(lengthFactor('iron', 33, 38)).toBeCloseTo(1.01, 12);
    expect(lengthFactor('iron', 33, 36)).toBeCloseTo(0.99, 12);
    expect(lengthFactor('driver', 10.5, 48)).toBeCloseTo(1.02, 12);
    expect(lengthFactor('driver', 10.5, 18)).toBeCloseTo(0.98, 12);
  });

  test('standard lengths fall with loft within a family', () => {
    expect(standardLengthIn('fairway', 15)).toBeGreaterThan(standardLengthIn('fairway', 21));
    expect(standardLengthIn('iron', 27)).toBeGreaterThan(standardLengthIn('wedge', 56));
  });
});
