import { expect, test } from 'vitest';
import type { Air } from '../../../../src-main/domain/flight/air.ts';
import { modelCarry } from '../../../../src-main/domain/flight/ladder/model.ts';
import { centredCarryYd, type ModelClub } from '../../../../src-main/domain/player/carry-model.ts';

const MILD: Air = { temperatureC: 15, humidity: 0.5, altitudeM: 0 };
const HIGH: Air = { temperatureC: 15, humidity: 0.5, altitudeM: 1500 };

/** Each differs from the first in one value, but for the last, which is the same in another object. */
const AIRS: Air[] = [
  MILD,
  HIGH,
  { ...MILD, temperatureC: 5 },
  { ...MILD, humidity: 0.9 },
  // More than are remembered at once.
  ...Array.from({ length: 8 }, (_, i) => ({ ...MILD, altitudeM: 100 + i })),
  { ...MILD },
];

const CLUBS: ModelClub[] = [
  { kind: 'iron', loftDeg: 33 },
  { kind: 'iron', loftDeg: 33, spinTier: 'high' },
  { kind: 'iron', loftDeg: 33, lengthIn: 37.5 },
  { kind: 'iron', loftDeg: 34 },
  { kind: 'hybrid', loftDeg: 22 },
  { kind: 'fairway', loftDeg: 22 },
];

const flown = (club: ModelClub, driverSpeedMph: number, air: Air): number | null => {
  const modelled = modelCarry({ ...club, driverSpeedMph, air });
  return modelled.ok ? modelled.carryYd : null;
};

test('what is remembered of one club, speed or air is not given for another', () => {
  for (let turn = 0; turn < 2; turn += 1) {
    for (const air of AIRS) {
      for (const speed of [80, 95.5]) {
        for (const club of CLUBS) expect(centredCarryYd(club, speed, air)).toBe(flown(club, speed, air));
      }
    }
  }
});

test('it is right also past what is remembered at once', () => {
  const club: ModelClub = { kind: 'wedge', loftDeg: 56 };
  const speeds = Array.from({ length: 2500 }, (_, i) => 70 + i / 100);
  const first = speeds.map((speed) => centredCarryYd(club, speed, MILD));
  expect(speeds.map((speed) => centredCarryYd(club, speed, MILD))).toEqual(first);
  expect(first.at(-1)).toBe(flown(club, speeds.at(-1) ?? 0, MILD));
});
