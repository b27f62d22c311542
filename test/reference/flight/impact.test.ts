import { describe, expect, test } from 'vitest';
import { airDensity, REFERENCE_AIR } from '../../../src-main/domain/flight/air.ts';
import { dynamicLoftDeg, headMassKg } from '../../../src-main/domain/flight/impact/delivery.ts';
import { impact } from '../../../src-main/domain/flight/impact/impact.ts';
import type { LadderKind } from '../../../src-main/domain/flight/kind.ts';
import { trajectory } from '../../../src-main/domain/flight/trajectory.ts';
import clubSpecs from '../data/club-specs.json' with { type: 'json' };
import tour from '../data/tour-averages.json' with { type: 'json' };
import { tourRows } from './support/data.ts';
import { percentOff, rms } from './support/stats.ts';
import { tell } from '../../support/figures.ts';

/**
 * The tours do not publish static lofts, so the chain from club speed needs assumed ones: the middle of the trade's
 * bands for players' irons and standard woods [P], drivers by the published delivered loft (men 12.8 → 9.5°, women
 * 15.5 → 11.1°). The result depends on them: with irons 1° stronger the ball speed error is near 1.4 %, not 1.2.
 */
const middle = (text: string) => {
  const ends = text.split('-').map(Number);
  return (ends[0]! + ends.at(-1)!) / 2;
};
const players: Record<string, string> = {};
for (const [club, loft] of Object.entries(
  clubSpecs.iron_lofts_by_era.find((era) => era.era === '2020s players')!.lofts,
)) {
  players[club] = String(loft);
}
for (const row of clubSpecs.table.rows) {
  if (['3W', '5W', '7W'].includes(String(row[0]))) players[String(row[0])] = String(row[2]);
  if (row[0] === '3H') players['Hybrid'] = String(row[2]);
}

const kindOf = (club: string): LadderKind =>
  club === 'Driver'
    ? 'driver'
    : club === 'Hybrid'
      ? 'hybrid'
      : club.endsWith('W') && club !== 'PW'
        ? 'fairway'
        : 'iron';
const loftOf = (row: (typeof tourRows)[number]) =>
  row.club === 'Driver' ? (row.tour === 'men' ? 9.5 : 11.1) : middle(players[row.club]!);

const densityKgM3 = airDensity(REFERENCE_AIR);
function chain(row: (typeof tourRows)[number], loftDeg: number) {
  const kind = kindOf(row.club);
  const launch = impact({
    kind,
    loftDeg,
    clubSpeedMph: row.club_speed_mph,
    attackDeg: row.attack_deg,
    dynamicLoftDeg: dynamicLoftDeg(kind, loftDeg, row.tour === 'men' ? 1 : 0),
    headMassKg: headMassKg(kind, loftDeg),
  });
  const flown = trajectory(launch, { densityKgM3 })!;
  return {
    ball: percentOff(launch.ballSpeedMph, row.ball_speed_mph),
    spin: percentOff(launch.spinRpm, row.spin_rpm),
    launch: launch.launchDeg - row.launch_deg,
    carry: percentOff(flown.carryYd, row.carry_yd),
  };
}

describe('club speed, attack and loft to carry on the 23 tour rows', () => {
  const off = tourRows.map((row) => chain(row, loftOf(row)));
  test('ball speed within 1.3 %, carry within 2.6 % RMS', () => {
    tell(
      'impact, 23 tour rows from club speed and assumed lofts: ball speed, RMS',
      rms(off.map((each) => each.ball)),
      '%',
    );
    tell(
      'impact, 23 tour rows from club speed and assumed lofts: carry, RMS',
      rms(off.map((each) => each.carry)),
      '%',
    );
    expect(rms(off.map((each) => each.ball))).toBeLessThanOrEqual(1.3);
    expect(rms(off.map((each) => each.carry))).toBeLessThanOrEqual(2.6);
  });

  test('launch within 1°, spin within 8 % RMS: what the lofts leave open', () => {
    expect(rms(off.map((each) => each.launch))).toBeLessThanOrEqual(1);
    expect(rms(off.map((each) => each.spin))).toBeLessThanOrEqual(8);
  });

  test('a degree either way in the assumed lofts leaves the carry within 3 %', () => {
    for (const shift of [-1, 1]) {
      const moved = tourRows.map((row) => chain(row, loftOf(row) + shift));
      expect(rms(moved.map((each) => each.carry))).toBeLessThanOrEqual(3);
    }
  });
});

describe('published delivered lofts [S]', () => {
  const cases = tour.dynamic_loft_published.rows;
  test.each(cases)('$tour $club: within 1°', ({ tour: who, club, dynamic_loft }) => {
    const share = who === 'men' ? 1 : 0;
    const kind = kindOf(club);
    const loft = club === 'Driver' ? (who === 'men' ? 9.5 : 11.1) : 29.5;
    expect(Math.abs(dynamicLoftDeg(kind, loft, share) - dynamic_loft)).toBeLessThanOrEqual(1);
  });
});
