import { describe, expect, test } from 'vitest';
import { airDensity, REFERENCE_AIR } from '../../../src-main/domain/flight/air.ts';
import { delivery } from '../../../src-main/domain/flight/impact/delivery.ts';
import { impact } from '../../../src-main/domain/flight/impact/impact.ts';
import type { LadderKind } from '../../../src-main/domain/flight/kind.ts';
import { modelCarry } from '../../../src-main/domain/flight/ladder/model.ts';
import { trajectory } from '../../../src-main/domain/flight/trajectory.ts';
import { tourRows } from './support/data.ts';
import { percentOff, rms, worst } from './support/stats.ts';

/**
 * The ladder table of the check values, section 7 [I]: an earlier implementation of the same formulas, centred strikes,
 * 25 °C air, level driver. Not an outside truth: it shows that the chain is wired as documented.
 */
const SPEEDS = [70, 80, 90, 100, 110];
const TABLE: [string, LadderKind, number, number[]][] = [
  ['driver', 'driver', 10.5, [126, 164, 201, 233, 262]],
  ['3-wood', 'fairway', 15, [111, 148, 185, 216, 243]],
  ['5-wood', 'fairway', 18, [111, 145, 177, 203, 228]],
  ['7-wood', 'fairway', 21, [106, 138, 166, 192, 215]],
  ['4-hybrid', 'hybrid', 22, [101, 133, 162, 188, 212]],
  ['5-iron', 'iron', 26, [89, 117, 144, 168, 189]],
  ['6-iron', 'iron', 29, [86, 113, 138, 160, 181]],
  ['7-iron', 'iron', 33, [81, 106, 129, 151, 171]],
  ['8-iron', 'iron', 37, [75, 97, 119, 139, 159]],
  ['9-iron', 'iron', 41, [69, 89, 109, 129, 148]],
  ['pitching wedge', 'wedge', 45, [64, 81, 100, 119, 137]],
  ['gap wedge', 'wedge', 50, [58, 74, 90, 108, 126]],
  ['sand wedge', 'wedge', 55, [52, 66, 80, 97, 114]],
  ['lob wedge', 'wedge', 60, [47, 59, 72, 86, 102]],
];

const carry = (driverSpeedMph: number, kind: LadderKind, loftDeg: number) => {
  const got = modelCarry({ driverSpeedMph, kind, loftDeg, air: REFERENCE_AIR });
  return got.ok ? got.carryYd : NaN;
};

describe('carry by driver speed, within 2 yd of the table', () => {
  test.each(TABLE)('%s', (_name, kind, loft, wanted) => {
    SPEEDS.forEach((speed, i) => {
      expect(Math.abs(carry(speed, kind, loft) - wanted[i]!), `${speed} mph`).toBeLessThanOrEqual(2);
    });
  });
});

describe('fairway woods: what may be said, and no more', () => {
  const woods = (speed: number) => [15, 18, 21].map((loft) => carry(speed, 'fairway', loft));

  test('3- and 5-wood equal to 70 mph; the 3-wood about 8 yd ahead at 90, 13 at 100', () => {
    const ahead = (speed: number) => woods(speed)[0]! - woods(speed)[1]!;
    expect(Math.abs(ahead(70))).toBeLessThan(1.5);
    expect(ahead(75)).toBeGreaterThan(0);
    expect(Math.abs(ahead(90) - 8)).toBeLessThan(1.5);
    expect(Math.abs(ahead(100) - 13)).toBeLessThan(1.5);
  });

  test('the 7-wood is never the longest, and within 7 yd (in whole yards) of it up to 75 mph', () => {
    for (let speed = 60; speed <= 120; speed += 2.5) {
      const [three, five, seven] = woods(speed);
      expect(seven!).toBeLessThan(Math.max(three!, five!));
      if (speed <= 75) expect(Math.round(Math.max(three!, five!) - seven!)).toBeLessThanOrEqual(7);
    }
  });
});

test('a degree on a 7-iron swung no faster: .3, .7, 1.1, 1.4, 1.6 yd at 70 to 110 mph, within .25', () => {
  const densityKgM3 = airDensity(REFERENCE_AIR);
  const bent = (driverSpeedMph: number, loftDeg: number) => {
    const made = delivery({ driverSpeedMph, kind: 'iron', loftDeg: 33 });
    const after = delivery({ driverSpeedMph, kind: 'iron', loftDeg });
    const launch = impact({ kind: 'iron', loftDeg, ...made, dynamicLoftDeg: after.dynamicLoftDeg });
    return trajectory(launch, { densityKgM3 })!.carryYd;
  };
  [0.3, 0.7, 1.1, 1.4, 1.6].forEach((wanted, i) => {
    const slope = (bent(SPEEDS[i]!, 32) - bent(SPEEDS[i]!, 34)) / 2;
    expect(Math.abs(slope - wanted), `${SPEEDS[i]} mph gives ${slope}`).toBeLessThanOrEqual(0.25);
  });
});

/** From speed and loft alone, at the tours’ own driver speeds: the tables [S, M] with typical lofts, not fitted here. */
describe('the whole chain against the tour tables', () => {
  const LOFTS: Record<string, [LadderKind, number]> = {
    '3W': ['fairway', 15],
    '5W': ['fairway', 18],
    '7W': ['fairway', 21],
    Hybrid: ['hybrid', 20],
    '3i': ['iron', 20],
    '4i': ['iron', 23],
    '5i': ['iron', 26],
    '6i': ['iron', 29],
    '7i': ['iron', 33],
    '8i': ['iron', 37],
    '9i': ['iron', 41],
    PW: ['wedge', 45],
  };
  const rows = tourRows.filter((row) => row.club !== 'Driver');
  test('driver speed and loft alone give the 21 other rows within 3 % RMS, none beyond 6 %', () => {
    const off = rows.map((row) => {
      const [kind, loft] = LOFTS[row.club]!;
      return percentOff(carry(row.tour === 'men' ? 113 : 94, kind, loft), row.carry_yd);
    });
    expect(off).toHaveLength(21);
    expect(rms(off)).toBeLessThanOrEqual(3);
    expect(worst(off)).toBeLessThanOrEqual(6);
  });
});
