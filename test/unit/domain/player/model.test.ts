import { describe, expect, it } from 'vitest';
import type { BagFile } from '../../../../src-main/contract/formats/bag-file.ts';
import { DRIVER_SPEED_MPH } from '../../../../src-main/domain/flight/ladder/input.ts';
import { PLAYER_AIR } from '../../../../src-main/domain/flight/air.ts';
import { centredCarryYd, speedFromCarry } from '../../../../src-main/domain/player/carry-model.ts';
import { carryFromTotal, playerModel } from '../../../../src-main/domain/player/model.ts';
import { bagFile, domainBag, withClub } from '../../../support/bags.ts';

const of = (file: BagFile) => playerModel(domainBag(file));
const withoutSpeed = (clubs: BagFile['clubs']): BagFile => {
  const { driverSpeed: _speed, ...player } = bagFile().player;
  return { ...bagFile({ clubs }), player };
};
const seven = { kind: 'iron', loftDeg: 33 } as const;

describe('carryFromTotal', () => {
  // CHECKVALUES §2: less 20 yd, 15 below 80 mph; a total of 180 yd is what 80 mph gives.
  it.each([
    [221, 90, 201],
    [221, 80, 201],
    [200, 79.9, 185],
    [180, undefined, 160],
    [179, undefined, 164],
    [10, 90, 1],
    [10, 60, 1],
  ])('%d yd at %s mph: %d', (total, mph, carryYd) => {
    expect(carryFromTotal(total, mph)).toBe(carryYd);
  });
});

describe('speedFromCarry', () => {
  it('is the speed whose mean carry is the given one', () => {
    for (const mph of [60, 93, 120]) {
      const carryYd = 0.95 * centredCarryYd(seven, mph, PLAYER_AIR);
      expect(Math.abs(speedFromCarry(seven, carryYd, 0.95, PLAYER_AIR) - mph)).toBeLessThan(0.02);
    }
  });
  it('stays within what the model takes', () => {
    expect(speedFromCarry(seven, 1, 1, PLAYER_AIR)).toBe(DRIVER_SPEED_MPH.min);
    expect(speedFromCarry(seven, 499, 1, PLAYER_AIR)).toBe(DRIVER_SPEED_MPH.max);
    // More than the mean of shots at the highest speed, though not more than a centred strike.
    const centred = centredCarryYd(seven, DRIVER_SPEED_MPH.max, PLAYER_AIR);
    expect(speedFromCarry(seven, 0.95 * centred, 0.9, PLAYER_AIR)).toBe(DRIVER_SPEED_MPH.max);
  });
});

describe('centredCarryYd', () => {
  it('leaves out a length that is no club’s, and takes one that is', () => {
    const plain = centredCarryYd(seven, 90, PLAYER_AIR);
    for (const lengthIn of [17, 49, 95]) {
      expect(centredCarryYd({ ...seven, lengthIn }, 90, PLAYER_AIR)).toBe(plain);
    }
    for (const lengthIn of [18, 48]) {
      expect(centredCarryYd({ ...seven, lengthIn }, 90, PLAYER_AIR)).not.toBe(plain);
    }
  });
  it('says by name what it cannot fly', () => {
    expect(() => centredCarryYd({ ...seven, loftDeg: 2 }, 90, PLAYER_AIR)).toThrow(/loftDeg.*2/);
  });
});

describe('the driver speed', () => {
  const iron = { id: '7i', kind: 'iron' as const, loftDeg: 33, carry: 129 };
  const hybrid = { id: '4h', kind: 'hybrid' as const, loftDeg: 22, carry: 162 };
  it('is the given one, whatever the carries say', () => {
    expect(of(bagFile({}, { driverSpeed: 101 }))).toMatchObject({ driverSpeedMph: 101, speedFrom: 'given' });
  });
  it('is taken from a driver’s total before the irons, after its carry', () => {
    const total = { id: 'driver', kind: 'driver' as const, loftDeg: 10.5, total: 221 };
    const fromTotal = of(withoutSpeed([iron, total]));
    expect(fromTotal.speedFrom).toBe('driver total');
    const fromCarry = of(withoutSpeed([iron, { ...total, carry: 201 }]));
    expect(fromCarry.speedFrom).toBe('driver carry');
    expect(fromTotal.driverSpeedMph).toBe(fromCarry.driverSpeedMph);
    expect(fromTotal.known.map((one) => one.fromTotal)).toEqual([false, true]);
  });
  it('is taken from the 7-iron before other clubs; a hybrid of that name is none', () => {
    expect(of(withoutSpeed([hybrid, iron])).speedFrom).toBe('7-iron carry');
    const named = { ...hybrid, id: '7i', label: '7i' };
    expect(of(withoutSpeed([named])).speedFrom).toBe('another carry');
  });
  it('else from the known club nearest a 7-iron’s loft', () => {
    const nine = { id: '9i', kind: 'iron' as const, loftDeg: 41, carry: 109 };
    const { driverSpeedMph, speedFrom, meanFactor } = of(withoutSpeed([hybrid, nine]));
    expect(speedFrom).toBe('another carry');
    const carryYd =
      meanFactor * centredCarryYd({ kind: 'iron', loftDeg: 41 }, driverSpeedMph ?? 0, PLAYER_AIR);
    expect(carryYd).toBeCloseTo(109, 0);
  });
});

describe('what is known of a player', () => {
  it('the tier follows where the handicap is going, at most four better than now', () => {
    const tierOf = (handicap: number, targetHandicap?: number) =>
      of(bagFile({}, { handicap, ...(targetHandicap === undefined ? {} : { targetHandicap }) })).tier;
    expect([tierOf(5.4), tierOf(5.5), tierOf(12.4), tierOf(12.5), tierOf(20.4), tierOf(20.5)]).toEqual([
      1, 2, 2, 3, 3, 4,
    ]);
    expect(tierOf(16, 2)).toBe(2);
    expect(of(bagFile({}, { handicap: 3 })).meanFactor).toBe(0.97);
  });
  it('the spread is the bag’s median in percent, else 6 %', () => {
    expect(of(bagFile()).sdShare).toBe(0.06);
    const sd = (id: string, carry: number, carrySd: number, shots?: number) => (file: BagFile) =>
      withClub(file, id, { carry, carrySd, ...(shots === undefined ? {} : { shots }) });
    const three = [sd('7i', 100, 4, 5), sd('8i', 100, 8, 5), sd('9i', 100, 5, 2)].reduce(
      (file, change) => change(file),
      bagFile(),
    );
    expect(of(three).sdShare).toBe(0.05);
    // One shot, or an unknown number, has no spread to speak of.
    expect(of(sd('7i', 100, 9, 1)(bagFile())).sdShare).toBe(0.06);
    expect(of(sd('7i', 100, 9)(bagFile())).sdShare).toBe(0.06);
  });
  it('a spread without a carry is none', () => {
    const bag = domainBag(bagFile());
    const [driver, ...rest] = bag.clubs.map(({ carryYd: _carry, ...club }) => club);
    const clubs = [{ ...driver!, carrySdYd: 20, shots: 9 }, ...rest];
    expect(playerModel({ ...bag, clubs }).sdShare).toBe(0.06);
  });
  it('a putter and a club without loft or carry lend nothing', () => {
    const clubs = [
      { id: 'p', kind: 'putter' as const, loftDeg: 3, carry: 20 },
      { id: 'mystery', kind: 'hybrid' as const, carry: 150 },
      { id: '7i', kind: 'iron' as const, loftDeg: 33 },
      { id: '5w', kind: 'fairway' as const, loftDeg: 18, total: 200 },
    ];
    expect(of(bagFile({ clubs })).known).toEqual([]);
  });
  it('a wedge of a set is an iron, with head and length as given', () => {
    const pw = { id: 'pw', kind: 'wedge' as const, loftDeg: 45, carry: 100, set: 'irons' };
    const known = (more: object) =>
      of(bagFile({ clubs: [{ ...pw, ...more }], sets: [{ id: 'irons' }] })).known[0]?.club;
    expect(known({})).toEqual({ kind: 'iron', loftDeg: 45 });
    expect(known({ spinTier: 'high', lengthIn: 35.5 })).toEqual({
      kind: 'iron',
      loftDeg: 45,
      spinTier: 'high',
      lengthIn: 35.5,
    });
  });
});
