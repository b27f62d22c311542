import { describe, expect, test } from 'vitest';
import {
  delivery,
  dynamicLoftDeg,
  fastShare,
  headMassKg,
  speedRatio,
} from '../../../../../src-main/domain/flight/impact/delivery.ts';

describe('fastShare', () => {
  test('0 to 95 mph, 1 from 114, half way between, without a kink at the ends', () => {
    expect(fastShare(60)).toBe(0);
    expect(fastShare(95)).toBe(0);
    expect(fastShare(104.5)).toBeCloseTo(0.5, 12);
    expect(fastShare(114)).toBe(1);
    expect(fastShare(150)).toBe(1);
    expect(fastShare(95.01) / 0.01).toBeLessThan(1e-3);
  });
});

describe('speedRatio', () => {
  test('a driver is swung at driver speed whatever its loft', () => {
    expect([8, 10.5, 14].map((loft) => speedRatio('driver', loft))).toEqual([1, 1, 1]);
  });

  test('published means at their lofts, lines between, the end lines beyond', () => {
    expect(speedRatio('fairway', 15)).toBeCloseTo(0.955, 12);
    expect(speedRatio('fairway', 16.5)).toBeCloseTo(0.941, 12);
    expect(speedRatio('fairway', 13.5)).toBeCloseTo(0.969, 12);
    expect(speedRatio('iron', 33)).toBeCloseTo(0.804, 12);
    expect(speedRatio('wedge', 60)).toBeCloseTo(0.706, 12);
    expect(speedRatio('iron', 17)).toBeCloseTo(0.884, 12);
  });

  test('an iron and a wedge of one loft are one club', () => {
    expect(speedRatio('iron', 46)).toBe(speedRatio('wedge', 46));
  });

  test('stays within .6 and 1', () => {
    expect(speedRatio('fairway', 8)).toBeLessThanOrEqual(1);
    expect(speedRatio('hybrid', 200)).toBe(0.6);
  });
});

describe('delivery', () => {
  test('slow and fast 7-iron: the two tours’ attack and loft lines', () => {
    const slow = delivery({ driverSpeedMph: 80, kind: 'iron', loftDeg: 33 });
    const fast = delivery({ driverSpeedMph: 118, kind: 'iron', loftDeg: 33 });
    expect(slow.attackDeg).toBeCloseTo(-2.3, 12);
    expect(fast.attackDeg).toBeCloseTo(-4.3, 12);
    expect(slow.dynamicLoftDeg).toBeCloseTo(0.95 + 0.756 * 33, 12);
    expect(fast.dynamicLoftDeg).toBeCloseTo(-1.2 + 0.733 * 33, 12);
    expect(slow.clubSpeedMph).toBeCloseTo(0.804 * 80, 12);
    expect(slow.headMassKg).toBeCloseTo(0.269, 12);
  });

  test('a fairway wood is delivered with 1.5° more than the line', () => {
    expect(dynamicLoftDeg('fairway', 15, 1)).toBeCloseTo(-1.2 + 0.733 * 15 + 1.5, 12);
    expect(dynamicLoftDeg('hybrid', 22, 1)).toBeCloseTo(-1.2 + 0.733 * 22, 12);
  });

  test('a driver is met level, with loft added', () => {
    const slow = delivery({ driverSpeedMph: 85, kind: 'driver', loftDeg: 10.5 });
    expect(slow.attackDeg).toBe(0);
    expect(slow.dynamicLoftDeg).toBeCloseTo(14.9, 12);
    expect(dynamicLoftDeg('driver', 10.5, 1)).toBeCloseTo(13.8, 12);
  });

  test('head mass stays within what is made of a kind', () => {
    expect(headMassKg('wedge', 70)).toBeCloseTo(0.302, 12);
    expect(headMassKg('iron', 16)).toBeCloseTo(0.242, 12);
  });
});
