import { describe, expect, test } from 'vitest';
import type { Aero } from '../../../src-main/domain/flight/aero.ts';
import { airDensity } from '../../../src-main/domain/flight/air.ts';
import { trajectory } from '../../../src-main/domain/flight/trajectory.ts';
import { runs } from '../../support/runs.ts';
import { adaptiveFlight } from './support/adaptive.ts';
import { rms, seeded, worst } from './support/stats.ts';

/** 500 launches over all that players do, and then some: speed, launch, spin, weather and wind drawn at random. */
function launches(count: number, seed: number) {
  const random = seeded(seed);
  const between = (low: number, high: number) => low + (high - low) * random();
  return Array.from({ length: count }, (_, i) => ({
    ballSpeedMph: between(40, 200),
    launchDeg: between(2, 50),
    spinRpm: between(800, 12_000),
    densityKgM3: airDensity({
      temperatureC: between(-10, 45),
      humidity: between(0, 1),
      altitudeM: between(0, 3000),
    }),
    // Every second launch in calm air, where the yards are compared with no help from the wind.
    headMph: i % 2 === 0 ? 0 : between(-25, 25),
    fromLeftMph: i % 2 === 0 ? 0 : between(-25, 25),
  }));
}

const cases = launches(runs(500), 2024);
const wanted = cases.map(adaptiveFlight);

function flown(stepSeconds?: number) {
  const step = stepSeconds === undefined ? {} : { stepSeconds };
  return cases.map((launch, i) => {
    const { densityKgM3, headMph, fromLeftMph } = launch;
    const got = trajectory(launch, { densityKgM3, wind: { headMph, fromLeftMph }, ...step })!;
    return {
      carry: got.carryYd - wanted[i]!.carryYd,
      right: got.rightYd - wanted[i]!.rightYd,
      seconds: got.seconds - wanted[i]!.seconds,
    };
  });
}

test('500 seeded launches: carry and drift within 1e-3 yd of odex at tolerance 1e-11', () => {
  const off = flown();
  expect(worst(off.map((each) => each.carry))).toBeLessThan(1e-3);
  expect(worst(off.map((each) => each.right))).toBeLessThan(1e-3);
  expect(worst(off.map((each) => each.seconds))).toBeLessThan(1e-4);
});

describe('why the step is 0.02 s', () => {
  const carryOff = (step: number) => flown(step).map((each) => each.carry);

  test('twice the step misses 1e-3 yd, half the step buys nothing anyone could see', () => {
    expect(worst(carryOff(0.04))).toBeGreaterThan(1e-3);
    expect(worst(carryOff(0.02))).toBeLessThan(1e-3);
    expect(worst(carryOff(0.01))).toBeLessThan(1e-3);
  });

  test('with the kinks of SAT6 each halving cuts the error about fourfold', () => {
    for (const step of [0.16, 0.08, 0.04, 0.02]) {
      const gain = rms(carryOff(step)) / rms(carryOff(step / 2));
      expect(gain).toBeGreaterThan(3);
      expect(gain).toBeLessThan(5.5);
    }
  });

  test('with smooth coefficients sixteenfold: the method is of order 4', () => {
    const smooth: Aero = { drag: () => 0.25, lift: (rw, v) => (0.4 * rw) / (0.3 * v + rw) };
    const at = (stepSeconds: number) =>
      cases.slice(0, 60).map((launch) => {
        const { densityKgM3 } = launch;
        return trajectory(launch, { densityKgM3, aero: smooth, stepSeconds })!.carryYd;
      });
    const exact = at(0.0025);
    const error = (step: number) => rms(at(step).map((carry, i) => carry - exact[i]!));
    const order = Math.log2(error(0.16) / error(0.08));
    expect(order).toBeGreaterThan(3.6);
    expect(order).toBeLessThan(4.6);
  });
});
