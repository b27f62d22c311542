import { describe, expect, test } from 'vitest';
import { flight } from '../../../src-main/domain/flight/flight.ts';
import { governingRows, realShots } from './support/data.ts';
import { mean, percentOff, rms } from './support/stats.ts';
import { tell } from '../../support/figures.ts';

/**
 * One player's 62 shots and the carry their monitor printed, weather unknown, total spin taken as backspin. Agreement
 * with a device, not truth.
 */
const shots = realShots().map((shot) => {
  const got = flight(shot);
  return { club: shot.club, off: got.ok ? percentOff(got.carryYd, shot.carryYd) : NaN };
});
const clubs = [...new Set(shots.map((shot) => shot.club))];
const biasOf = (club: string) => mean(shots.filter((shot) => shot.club === club).map((shot) => shot.off));

test('62 shots with nine clubs agree with the device within 4.0 % RMS', () => {
  expect(shots).toHaveLength(62);
  expect(clubs).toHaveLength(9);
  tell(
    'flight, 62 real shots against the device that measured them: carry, RMS',
    rms(shots.map((shot) => shot.off)),
    '%',
  );
  expect(rms(shots.map((shot) => shot.off))).toBeLessThanOrEqual(4);
});

describe('no club stands apart', () => {
  test.each(clubs)('%s: bias within 6 %%', (club) => {
    expect(Math.abs(biasOf(club))).toBeLessThanOrEqual(6);
  });

  test.each(['G-Wedge', 'L-Wedge'])('%s: bias within 4 %%, all that speaks for wedges', (club) => {
    expect(Math.abs(biasOf(club))).toBeLessThanOrEqual(4);
  });
});

describe('governing bodies’ launch conditions (no carry is published for them)', () => {
  test.each(governingRows)('$id: as an earlier implementation of this model, within 0.1 yd', (row) => {
    const got = flight(row);
    expect(got.ok && Math.abs(got.carryYd - row.carryYd)).toBeLessThanOrEqual(0.1);
  });
});
