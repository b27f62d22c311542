import { describe, expect, test } from 'vitest';
import { SAT6, type Aero } from '../../../src-main/domain/flight/aero.ts';
import { airDensity, REFERENCE_AIR } from '../../../src-main/domain/flight/air.ts';
import { BALL_MASS_KG, BALL_RADIUS_M } from '../../../src-main/domain/flight/constants.ts';
import { emptySlope, forcesOf, slopeInto } from '../../../src-main/domain/flight/forces.ts';
import { trajectory } from '../../../src-main/domain/flight/trajectory.ts';
import { constants } from './support/data.ts';
import { nms04, ss94, vacuum } from './support/other-models.ts';
import { seeded } from './support/stats.ts';

/** Closed forms of elementary mechanics. */
const G = 9.80665;
const densityKgM3 = airDensity(REFERENCE_AIR);

describe('without air: range v² sin 2θ / g, apex (v sin θ)² / 2g, time 2 v sin θ / g, landing θ', () => {
  const random = seeded(11);
  const launches = Array.from({ length: 50 }, () => ({
    ballSpeedMph: 20 + 200 * random(),
    launchDeg: 1 + 78 * random(),
    spinRpm: 6000 * random(),
  }));
  test.each(launches)('$ballSpeedMph mph at $launchDeg°', (launch) => {
    const got = trajectory(launch, { densityKgM3, aero: vacuum })!;
    const v = launch.ballSpeedMph * 0.44704;
    const angle = (launch.launchDeg * Math.PI) / 180;
    const relative = (value: number, wanted: number) => Math.abs(value / wanted - 1);
    expect(relative(got.carryYd * 0.9144, (v ** 2 * Math.sin(2 * angle)) / G)).toBeLessThan(1e-9);
    expect(relative(got.apexYd * 0.9144, (v * Math.sin(angle)) ** 2 / (2 * G))).toBeLessThan(1e-9);
    expect(relative(got.seconds, (2 * v * Math.sin(angle)) / G)).toBeLessThan(1e-9);
    expect(relative(got.landDeg, launch.launchDeg)).toBeLessThan(1e-9);
    expect(got.rightYd).toBe(0);
  });
});

describe('straight up against drag alone: apex (vt²/2g) ln(1 + v²/vt²), time (vt/g)(atan + asinh)(v/vt)', () => {
  const coefficient = 0.25;
  const steady: Aero = { drag: () => coefficient, lift: () => 0 };
  const area = Math.PI * BALL_RADIUS_M ** 2;
  const terminal = Math.sqrt((2 * BALL_MASS_KG * G) / (densityKgM3 * area * coefficient));
  test.each([40, 90, 160, 240])('%d mph', (ballSpeedMph) => {
    const got = trajectory({ ballSpeedMph, launchDeg: 90, spinRpm: 0 }, { densityKgM3, aero: steady })!;
    const ratio = (ballSpeedMph * 0.44704) / terminal;
    // Not exact like the vacuum: this is where the order of the integrator shows.
    expect(got.apexYd * 0.9144).toBeCloseTo((terminal ** 2 / (2 * G)) * Math.log(1 + ratio ** 2), 5);
    expect(got.seconds).toBeCloseTo((terminal / G) * (Math.atan(ratio) + Math.asinh(ratio)), 6);
  });
});

describe('terminal velocity is the root of mg = ½ρACdV²', () => {
  const cases: [string, Aero, number][] = [
    ['SAT6', SAT6, 54.914],
    ['NMS04', nms04, 51.111],
    ['SS94', ss94(densityKgM3, REFERENCE_AIR.temperatureC), 44.618],
  ];
  test.each(cases)('%s', (_name, aero, wanted) => {
    const forces = forcesOf({ densityKgM3, aero });
    const slope = emptySlope();
    let slow = 10;
    let fast = 100;
    for (let i = 0; i < 60; i += 1) {
      const middle = (slow + fast) / 2;
      slopeInto(slope, forces, 0, -middle, 0, 0);
      if (slope.ay < 0) slow = middle;
      else fast = middle;
    }
    const area = Math.PI * BALL_RADIUS_M ** 2;
    const root = Math.sqrt((2 * BALL_MASS_KG * G) / (densityKgM3 * area * aero.drag(0, slow)));
    expect(Math.abs(slow / root - 1)).toBeLessThan(1e-9);
    expect(slow).toBeCloseTo(wanted, 3);
  });
});

test('SAT6 as coded equals SAT6 as written in the constants file, over speed and spin', () => {
  const c = constants.SAT6;
  for (let v = 2; v <= 110; v += 1.5) {
    for (let rw = 0; rw <= 34; rw += 0.5) {
      const s = Math.min(rw / v, c.sPk);
      const drag = c.d0 + c.d1 * (s - s ** 2 / (2 * c.sPk)) + c.low * Math.max(0, 1 - v / c.v0);
      expect(SAT6.drag(rw, v)).toBeCloseTo(drag, 12);
      expect(SAT6.lift(rw, v)).toBeCloseTo((c.clA * rw) / v / (c.clB + rw / v), 12);
    }
  }
});

test('the ball is the heaviest and smallest the rules allow', () => {
  expect(BALL_MASS_KG).toBe(constants.ball.m);
  expect(BALL_RADIUS_M).toBe(constants.ball.r);
});
