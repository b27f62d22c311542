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

  test('stand so many steps apart, each where the ball then is', () => {
    const every = (pointEvery: number) =>
      fly(drive, { pointEvery, wind: { headMph: 5, fromLeftMph: 10 } }).points;
    const all = every(1);
    const fifth = every(5);
    expect(all.slice(0, -1).map((point) => point.seconds)).toEqual(
      all.slice(0, -1).map((_, i) => expect.closeTo(0.02 * i, 9) as number),
    );
    // The landing is the last of either, whatever the step.
    expect(fifth.slice(0, -1)).toEqual(all.slice(0, -1).filter((_, i) => i % 5 === 0));
    expect(fifth.at(-1)).toEqual(all.at(-1));
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

  test('a steady wind is calm air that moves: without lift the flight is the calm one, carried along', () => {
    const launch = { ballSpeedMph: 120, launchDeg: 20, spinRpm: 0 };
    const MPH = 0.44704;
    const yards = (metres: number) => metres / 0.9144;
    for (const [headMph, fromLeftMph] of [
      [0, 15],
      [12, 0],
      [-8, 20],
    ] as const) {
      const windy = fly(launch, { wind: { headMph, fromLeftMph } });
      // Seen from the air: the launch less the wind, a plane flight along its own direction.
      const along = 120 * Math.cos((20 * Math.PI) / 180) + headMph;
      const up = 120 * Math.sin((20 * Math.PI) / 180);
      const level = Math.hypot(along, -fromLeftMph);
      const calm = fly({
        ballSpeedMph: Math.hypot(level, up),
        launchDeg: (Math.atan2(up, level) * 180) / Math.PI,
        spinRpm: 0,
      });
      expect(windy.seconds).toBeCloseTo(calm.seconds, 9);
      expect(windy.apexYd).toBeCloseTo(calm.apexYd, 9);
      expect(windy.carryYd).toBeCloseTo(
        (calm.carryYd * along) / level - yards(headMph * MPH * calm.seconds),
        8,
      );
      expect(windy.rightYd).toBeCloseTo(
        yards(fromLeftMph * MPH * calm.seconds) - (calm.carryYd * fromLeftMph) / level,
        8,
      );
    }
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

  test('what stays up for longer than two minutes is given up, not followed for ever', () => {
    const none = { drag: () => 0, lift: () => 0 };
    // In a vacuum: 2·v·sin/g = 120 s at 588.4 m/s straight up, 1,316 mph.
    const up = (ballSpeedMph: number) =>
      trajectory({ ballSpeedMph, launchDeg: 90, spinRpm: 0 }, { densityKgM3, aero: none, stepSeconds: 0.5 });
    expect(up(1310)?.seconds).toBeCloseTo((2 * 1310 * 0.44704) / 9.80665, 6);
    expect(up(1325)).toBeNull();
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
