import { describe, expect, test } from 'vitest';
import { impact } from '../../../../../src-main/domain/flight/impact/impact.ts';

const driver = {
  kind: 'driver' as const,
  loftDeg: 10,
  clubSpeedMph: 100,
  attackDeg: 0,
  dynamicLoftDeg: 13.5,
  headMassKg: 0.2,
};

describe('impact', () => {
  test('a face square to its path gives speed (1 + e)/(1 + m/M) and no spin', () => {
    const { ballSpeedMph, launchDeg, spinRpm } = impact({ ...driver, attackDeg: 4, dynamicLoftDeg: 4 });
    expect(ballSpeedMph).toBeCloseTo((100 * 1.873) / (1 + 0.04593 / 0.2), 9);
    expect(launchDeg).toBeCloseTo(4, 12);
    expect(spinRpm).toBe(0);
  });

  test('more spin loft: more spin, higher, slower', () => {
    const less = impact(driver);
    const more = impact({ ...driver, dynamicLoftDeg: 17 });
    expect(more.spinRpm).toBeGreaterThan(less.spinRpm);
    expect(more.launchDeg).toBeGreaterThan(less.launchDeg);
    expect(more.ballSpeedMph).toBeLessThan(less.ballSpeedMph);
  });

  test('the ball leaves between the path of the club and its face', () => {
    for (const dynamicLoftDeg of [10, 20, 30, 45]) {
      const { launchDeg } = impact({ ...driver, kind: 'iron', attackDeg: -3, dynamicLoftDeg });
      expect(launchDeg).toBeLessThan(dynamicLoftDeg);
      expect(launchDeg).toBeGreaterThan(-3);
    }
  });

  test('speed scales all but the angle', () => {
    const slow = impact({ ...driver, clubSpeedMph: 50 });
    const fast = impact(driver);
    expect(fast.ballSpeedMph).toBeCloseTo(2 * slow.ballSpeedMph, 9);
    expect(fast.spinRpm).toBeCloseTo(2 * slow.spinRpm, 9);
    expect(fast.launchDeg).toBeCloseTo(slow.launchDeg, 12);
  });

  test('a heavier head gives a faster ball', () => {
    expect(impact({ ...driver, headMassKg: 0.21 }).ballSpeedMph).toBeGreaterThan(impact(driver).ballSpeedMph);
  });

  test('off the centre the head twists and the ball is slower; in the centre inertia does not matter', () => {
    const centred = impact(driver);
    expect(impact(driver, { metres: 0, inertiaKgM2: 4e-4 })).toEqual(centred);
    const off = impact(driver, { metres: 0.02, inertiaKgM2: 4e-4 });
    expect(off.ballSpeedMph).toBeLessThan(centred.ballSpeedMph);
    expect(impact(driver, { metres: -0.02, inertiaKgM2: 4e-4 })).toEqual(off);
    const forgiving = impact(driver, { metres: 0.02, inertiaKgM2: 5.9e-4 });
    expect(forgiving.ballSpeedMph).toBeGreaterThan(off.ballSpeedMph);
  });

  test('at a great spin loft the ball slides: spin is bound to the normal blow', () => {
    const slid = impact({ ...driver, kind: 'wedge', loftDeg: 70, attackDeg: -10, dynamicLoftDeg: 62 });
    expect(slid.launchDeg).toBeCloseTo(62 - (Math.atan(0.4) * 180) / Math.PI, 9);
  });

  test('the grip of a wood or hybrid does not hang on the spin loft, that of an iron rises with it', () => {
    // While it rolls, spin goes with the sine of the spin loft, times the grip.
    const grip = (kind: 'driver' | 'fairway' | 'hybrid' | 'iron', dynamicLoftDeg: number) =>
      impact({ ...driver, kind, loftDeg: 20, dynamicLoftDeg }).spinRpm /
      Math.sin((dynamicLoftDeg * Math.PI) / 180);
    for (const kind of ['driver', 'fairway', 'hybrid'] as const)
      expect(grip(kind, 12)).toBeCloseTo(grip(kind, 20), 6);
    expect(grip('iron', 20) / grip('iron', 15)).toBeCloseTo((1.18 + 0.0071 * 5) / 1.18, 6);
  });
});
