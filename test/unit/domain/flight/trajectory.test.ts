import { describe, expect, test } from 'vitest';
import { airDensity, REFERENCE_AIR } from '../../../../src-main/domain/flight/air.ts';
import { trajectory } from '../../../../src-main/domain/flight/trajectory.ts';

const densityKgM3 = airDensity(REFERENCE_AIR);
const drive = { ballSpeedMph: 140, launchDeg: 13, spinRpm: 2700 };
const fly = (launch = drive, extra: Partial<Parameters<typeof trajectory>[1]> = {}) =>
  trajectory(launch, { densityKgM3, ...extra })!;

describe('points for a drawing', () => {
  test('none unless asked for', () => {
    expect(fly().points).toEqual([]);
  });

  test('start on the ground, end at the landing, rise to the apex between', () => {
    const flown = fly(drive, { pointEvery: 5 });
    const first = flown.points[0]!;
    const last = flown.points.at(-1)!;
    expect(first).toEqual({ seconds: 0, alongYd: 0, heightYd: 0, rightYd: 0 });
    expect(last).toEqual({ seconds: flown.seconds, alongYd: flown.carryYd, heightYd: 0, rightYd: 0 });
    const highest = Math.max(...flown.points.map((point) => point.heightYd));
    expect(highest).toBeLessThanOrEqual(flown.apexYd);
    expect(highest).toBeGreaterThan(flown.apexYd - 0.05);
    for (let i = 1; i < flown.points.length; i += 1) {
      expect(flown.points[i]!.alongYd).toBeGreaterThan(flown.points[i - 1]!.alongYd);
    }
  });

  test('asking for them changes nothing else', () => {
    expect({ ...fly(drive, { pointEvery: 1 }), points: [] }).toEqual(fly());
  });
});

describe('wind', () => {
  const wind = (headMph: number, fromLeftMph = 0) => fly(drive, { wind: { headMph, fromLeftMph } });

  test('in the face it shortens, and brings the ball down steeper; from behind the reverse', () => {
    expect(wind(15).carryYd).toBeLessThan(fly().carryYd);
    expect(wind(15).landDeg).toBeGreaterThan(fly().landDeg);
    expect(wind(-15).carryYd).toBeGreaterThan(fly().carryYd);
    expect(wind(-15).landDeg).toBeLessThan(fly().landDeg);
  });

  test('a head wind hurts more than the same tail wind helps', () => {
    expect(fly().carryYd - wind(15).carryYd).toBeGreaterThan(wind(-15).carryYd - fly().carryYd);
  });

  test('from the left it drifts to the right', () => {
    expect(wind(0, 10).rightYd).toBeGreaterThan(5);
    expect(wind(0).rightYd).toBe(0);
  });
});

describe('edges', () => {
  test('a ball that starts downwards has no flight', () => {
    const flown = fly({ ...drive, launchDeg: -4 }, { pointEvery: 5 });
    expect(flown).toMatchObject({ carryYd: 0, apexYd: 0, seconds: 0 });
    expect(flown.landDeg).toBeCloseTo(4, 9);
    expect(flown.points).toHaveLength(1);
    // Lift enough to turn it upwards within a step does not give it a flight: the ground is in the way.
    expect(fly({ ballSpeedMph: 230, launchDeg: -0.01, spinRpm: 9000 }).carryYd).toBe(0);
  });

  test('level and without lift it is down at once; level with lift enough it flies', () => {
    expect(fly({ ballSpeedMph: 60, launchDeg: 0, spinRpm: 0 })).toMatchObject({ carryYd: 0, seconds: 0 });
    expect(fly({ ballSpeedMph: 180, launchDeg: 0, spinRpm: 4000 }).carryYd).toBeGreaterThan(50);
  });

  test('a hop shorter than one step still lands', () => {
    const flown = fly({ ballSpeedMph: 20, launchDeg: 0.2, spinRpm: 0 });
    expect(flown.seconds).toBeGreaterThan(0);
    expect(flown.seconds).toBeLessThan(0.02);
    expect(flown.carryYd).toBeGreaterThan(0);
    expect(flown.apexYd).toBeGreaterThan(0);
  });

  test('the step hardly matters to the landing: it is found within the step', () => {
    for (let step = 0.011; step < 0.03; step += 0.0013) {
      expect(Math.abs(fly(drive, { stepSeconds: step }).carryYd - fly().carryYd)).toBeLessThan(2e-3);
    }
  });
});
