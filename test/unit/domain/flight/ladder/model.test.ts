import { describe, expect, test } from 'vitest';
import { PLAYER_AIR, REFERENCE_AIR } from '../../../../../src-main/domain/flight/air.ts';
import type { LadderClub } from '../../../../../src-main/domain/flight/ladder/input.ts';
import { modelCarry } from '../../../../../src-main/domain/flight/ladder/model.ts';
import { airShift } from '../../../../../src-main/domain/flight/ladder/what-if.ts';

const seven: LadderClub = { driverSpeedMph: 93, kind: 'iron', loftDeg: 33 };
const carry = (club: LadderClub, air = REFERENCE_AIR) => {
  const got = modelCarry({ ...club, air });
  if (!got.ok) throw new Error(got.message);
  return got;
};

describe('modelCarry', () => {
  test('gives the delivery, the launch and the flight', () => {
    const got = carry(seven);
    expect(got.clubSpeedMph).toBeCloseTo(0.804 * 93, 9);
    for (const key of [
      'attackDeg',
      'dynamicLoftDeg',
      'ballSpeedMph',
      'launchDeg',
      'spinRpm',
      'carryYd',
      'apexYd',
    ] as const) {
      expect(Number.isFinite(got[key]), key).toBe(true);
    }
    expect(got.landDeg).toBeGreaterThan(30);
    expect(got.seconds).toBeGreaterThan(3);
  });

  test('the player’s cool air is shorter than the reference air', () => {
    expect(carry(seven, PLAYER_AIR).carryYd).toBeLessThan(carry(seven).carryYd);
  });

  test('irons from 26° fall with loft, for every speed from 70 mph', () => {
    for (const driverSpeedMph of [70, 85, 100, 115]) {
      for (let loftDeg = 26; loftDeg < 60; loftDeg += 1) {
        const here = carry({ ...seven, driverSpeedMph, loftDeg }).carryYd;
        expect(carry({ ...seven, driverSpeedMph, loftDeg: loftDeg + 1 }).carryYd).toBeLessThan(here);
      }
    }
  });

  test('carry rises with driver speed', () => {
    for (let speed = 50; speed < 125; speed += 1) {
      const here = carry({ ...seven, driverSpeedMph: speed }).carryYd;
      expect(carry({ ...seven, driverSpeedMph: speed + 1 }).carryYd).toBeGreaterThan(here);
    }
  });

  test('a pitching wedge is the same club as iron or as wedge', () => {
    expect(carry({ ...seven, kind: 'wedge', loftDeg: 45 })).toEqual(carry({ ...seven, loftDeg: 45 }));
  });

  test('spin tier and length act when given, and only then', () => {
    const plain = carry(seven);
    expect(carry({ ...seven, spinTier: 'mid', lengthIn: 37 })).toEqual(plain);
    expect(carry({ ...seven, spinTier: 'low' }).spinRpm).toBeLessThan(plain.spinRpm);
    expect(carry({ ...seven, lengthIn: 37.5 }).carryYd).toBeGreaterThan(plain.carryYd);
  });
});

describe('refusals', () => {
  test.each<[string, Partial<LadderClub>, unknown]>([
    ['club.driverSpeedMph', { driverSpeedMph: NaN }, NaN],
    ['club.driverSpeedMph', { driverSpeedMph: 29 }, 29],
    ['club.driverSpeedMph', { driverSpeedMph: 161 }, 161],
    ['club.loftDeg', { loftDeg: Infinity }, Infinity],
    ['club.loftDeg', { loftDeg: 5 }, 5],
    ['club.loftDeg', { kind: 'driver', loftDeg: 45 }, 45],
    ['club.lengthIn', { lengthIn: 95 }, 95],
    ['club.kind', { kind: 'putter' as never }, 'putter'],
    ['club.kind', { kind: 'toString' as never }, 'toString'],
  ])('%s %j', (place, change, value) => {
    const got = modelCarry({ ...seven, ...change, air: PLAYER_AIR });
    expect(got).toMatchObject({ ok: false, place, value });
    if (!got.ok) expect(got.message).toContain(String(value));
  });

  test('air is checked too, under the club’s place', () => {
    const got = modelCarry({ ...seven, place: 'clubs[2]', air: { ...PLAYER_AIR, humidity: 60 } });
    expect(got).toMatchObject({ ok: false, place: 'clubs[2].air.humidity', value: 60 });
  });
});

describe('airShift', () => {
  test('no change, no shift', () => {
    expect(airShift(seven, PLAYER_AIR, PLAYER_AIR)).toEqual({ ok: true, factor: 1 });
  });

  test('up the mountain and in the heat further, and back again', () => {
    const high = { ...PLAYER_AIR, altitudeM: 1500 };
    const up = airShift(seven, PLAYER_AIR, high);
    const down = airShift(seven, high, PLAYER_AIR);
    if (!up.ok || !down.ok) throw new Error('refused');
    expect(up.factor).toBeGreaterThan(1.05);
    expect(up.factor * down.factor).toBeCloseTo(1, 12);
    expect(airShift(seven, PLAYER_AIR, { ...PLAYER_AIR, temperatureC: 30 })).toMatchObject({ ok: true });
  });

  test('refuses either air by place', () => {
    const bad = { ...PLAYER_AIR, temperatureC: NaN };
    expect(airShift(seven, bad, PLAYER_AIR)).toMatchObject({ ok: false, place: 'club.air.temperatureC' });
    expect(airShift(seven, PLAYER_AIR, bad)).toMatchObject({ ok: false, place: 'club.air.temperatureC' });
  });
});
