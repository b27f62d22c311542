import { describe, expect, it } from 'vitest';
import { ownedLadder } from '../../../../../src-main/domain/player/ladder/ladder.ts';
import { playerModel } from '../../../../../src-main/domain/player/model.ts';
import { ladderInAir } from '../../../../../src-main/domain/player/ladder/what-if.ts';
import { bagFile, domainBag } from '../../../../support/bags.ts';

describe('ladderInAir', () => {
  // Tour speed, for which the published planning numbers are.
  const bag = domainBag(bagFile({}, { driverSpeed: 113 }));
  const model = playerModel(bag);
  const ladder = ownedLadder(bag, model);
  it('shifts the whole ladder and leaves the given one alone', () => {
    const before = structuredClone(ladder);
    const high = ladderInAir(ladder, model, { temperatureC: 15, humidity: 0.5, altitudeM: 1500 });
    expect(ladder).toEqual(before);
    // At 1,500 m about +8 % driver, +10.5 % 7-iron: CHECKVALUES §7, from tour players' planning numbers
    const share = (id: string) =>
      (high.find((rung) => rung.clubId === id)?.carryYd ?? 0) /
      (ladder.find((rung) => rung.clubId === id)?.carryYd ?? 1);
    expect(share('driver')).toBeGreaterThan(1.06);
    expect(share('driver')).toBeLessThan(1.11);
    expect(share('7i')).toBeGreaterThan(1.07);
    expect(share('7i')).toBeLessThan(1.13);
  });
  it('is the same ladder in the same air', () => {
    ladderInAir(ladder, model, model.air).forEach((rung, i) => {
      expect(rung.carryYd).toBeCloseTo(ladder[i]?.carryYd ?? 0, 9);
    });
  });
  it('a range moves with its carry; a club of unknown loft, or a player of unknown speed, stays', () => {
    const air = { temperatureC: 15, humidity: 0.5, altitudeM: 1500 };
    ladderInAir(ladder, model, air).forEach((rung, i) => {
      const { carryYd, lowYd, highYd } = ladder[i] ?? rung;
      const factor = rung.carryYd / carryYd;
      expect(factor).toBeGreaterThan(1);
      expect([rung.lowYd / lowYd, rung.highYd / highYd]).toEqual([
        expect.closeTo(factor, 9),
        expect.closeTo(factor, 9),
      ]);
    });
    const [driver, ...rest] = ladder;
    const { loftDeg: _loft, ...bare } = driver!;
    const moved = ladderInAir([bare, ...rest], model, air);
    expect(moved[0]).toEqual(bare);
    expect(moved[1]?.carryYd).toBeGreaterThan(rest[0]?.carryYd ?? Infinity);
    expect(ladderInAir(ladder, { ...model, driverSpeedMph: null }, air)).toEqual(ladder);
  });
  it('cold air takes carry away', () => {
    const cold = ladderInAir(ladder, model, { ...model.air, temperatureC: 0 });
    for (const [i, rung] of cold.entries()) expect(rung.carryYd).toBeLessThan(ladder[i]?.carryYd ?? 0);
  });
});
