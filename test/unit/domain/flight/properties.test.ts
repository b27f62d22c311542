import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { flight } from '../../../../src-main/domain/flight/flight.ts';
import { LOFT_DEG } from '../../../../src-main/domain/flight/ladder/input.ts';
import { modelCarry } from '../../../../src-main/domain/flight/ladder/model.ts';
import type { LadderKind } from '../../../../src-main/domain/flight/kind.ts';
import { runs } from '../../../support/runs.ts';

const seed = 20_261_101;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const air = fc.record({
  temperatureC: between(-30, 50),
  humidity: between(0, 1),
  altitudeM: between(-430, 4500),
});
const anyLaunch = fc.record({
  ballSpeedMph: between(20, 250),
  launchDeg: between(-10, 80),
  spinRpm: between(0, 15_000),
});
/** Where the tour tables and the real shots lie. */
const playedLaunch = fc.record({
  ballSpeedMph: between(78, 165),
  launchDeg: between(9, 35),
  spinRpm: between(2000, 10_000),
});
const wind = fc.record({ headMph: between(-60, 60), fromLeftMph: between(-60, 60) });

const flown = (input: Parameters<typeof flight>[0]) => {
  const got = flight(input);
  if (!got.ok) throw new Error(got.message);
  return got;
};
const isFiniteAll = (record: object) =>
  Object.values(record).every((value) => typeof value !== 'number' || Number.isFinite(value));

describe('flight', () => {
  test('no accepted input gives NaN, an infinite number, or no landing', () => {
    fc.assert(
      fc.property(anyLaunch, air, wind, (launch, inAir, inWind) => {
        const got = flown({ ...launch, air: inAir, wind: inWind, pointEvery: 10 });
        expect(isFiniteAll(got)).toBe(true);
        expect(got.points.every(isFiniteAll)).toBe(true);
        expect(got.apexYd).toBeGreaterThanOrEqual(0);
        expect(got.seconds).toBeGreaterThanOrEqual(0);
      }),
      { seed, numRuns: runs(1500) },
    );
  });

  test('within the data carry rises with ball speed at the same launch and spin', () => {
    fc.assert(
      fc.property(playedLaunch, air, between(0.1, 15), (launch, inAir, more) => {
        const faster = { ...launch, ballSpeedMph: launch.ballSpeedMph + more };
        expect(flown({ ...faster, air: inAir }).carryYd).toBeGreaterThan(
          flown({ ...launch, air: inAir }).carryYd,
        );
      }),
      { seed, numRuns: runs(600) },
    );
  });

  test('a cross wind from the other side is the mirror image', () => {
    fc.assert(
      fc.property(anyLaunch, air, wind, (launch, inAir, inWind) => {
        const left = flown({ ...launch, air: inAir, wind: inWind, pointEvery: 10 });
        const mirrored = { ...inWind, fromLeftMph: -inWind.fromLeftMph };
        const right = flown({ ...launch, air: inAir, wind: mirrored, pointEvery: 10 });
        expect(right.carryYd).toBe(left.carryYd);
        expect(right.apexYd).toBe(left.apexYd);
        expect(right.rightYd + left.rightYd).toBe(0);
        right.points.forEach((point, i) => expect(point.rightYd + left.points[i]!.rightYd).toBe(0));
      }),
      { seed, numRuns: runs(400) },
    );
  });

  test('thinner air means less lift and less drag: never less carry for a driver’s launch', () => {
    fc.assert(
      fc.property(between(100, 170), air, between(50, 1500), (ballSpeedMph, inAir, up) => {
        fc.pre(inAir.altitudeM + up <= 4500);
        const launch = { ballSpeedMph, launchDeg: 13, spinRpm: 2700 };
        const higher = { ...inAir, altitudeM: inAir.altitudeM + up };
        expect(flown({ ...launch, air: higher }).carryYd).toBeGreaterThan(
          flown({ ...launch, air: inAir }).carryYd,
        );
      }),
      { seed, numRuns: runs(300) },
    );
  });
});

describe('modelCarry', () => {
  const kind = fc.constantFrom<LadderKind>('driver', 'fairway', 'hybrid', 'iron', 'wedge');
  const club = kind.chain((each) =>
    fc.record(
      {
        kind: fc.constant(each),
        loftDeg: between(LOFT_DEG[each].min, LOFT_DEG[each].max),
        driverSpeedMph: between(30, 160),
        spinTier: fc.constantFrom('low' as const, 'mid' as const, 'high' as const),
        lengthIn: between(18, 48),
      },
      { requiredKeys: ['kind', 'loftDeg', 'driverSpeedMph'] },
    ),
  );

  test('no accepted club gives NaN or no carry', () => {
    fc.assert(
      fc.property(club, air, (given, inAir) => {
        const got = modelCarry({ ...given, air: inAir });
        expect(got.ok).toBe(true);
        expect(isFiniteAll(got)).toBe(true);
        expect(got.ok && got.carryYd).toBeGreaterThan(0);
      }),
      { seed, numRuns: runs(1500) },
    );
  });

  test('continuous: a hair of speed or loft moves the carry by a hair', () => {
    fc.assert(
      fc.property(club, air, (given, inAir) => {
        fc.pre(given.driverSpeedMph < 159.9 && given.loftDeg < LOFT_DEG[given.kind].max - 0.001);
        const at = modelCarry({ ...given, air: inAir });
        const faster = modelCarry({ ...given, driverSpeedMph: given.driverSpeedMph + 0.001, air: inAir });
        const weaker = modelCarry({ ...given, loftDeg: given.loftDeg + 0.001, air: inAir });
        if (!at.ok || !faster.ok || !weaker.ok) throw new Error('refused');
        expect(Math.abs(faster.carryYd - at.carryYd)).toBeLessThan(0.02);
        expect(Math.abs(weaker.carryYd - at.carryYd)).toBeLessThan(0.05);
      }),
      { seed, numRuns: runs(800) },
    );
  });
});
