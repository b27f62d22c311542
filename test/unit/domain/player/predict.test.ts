import { describe, expect, it } from 'vitest';
import { PLAYER_AIR } from '../../../../src-main/domain/flight/air.ts';
import { centredCarryYd, type ModelClub } from '../../../../src-main/domain/player/carry-model.ts';
import { familyOf } from '../../../../src-main/domain/player/families.ts';
import type { KnownClub, PlayerModel } from '../../../../src-main/domain/player/model.ts';
import { predictCarry } from '../../../../src-main/domain/player/predict.ts';

const MPH = 90;
const known = (
  kind: ModelClub['kind'],
  loftDeg: number,
  carryYd: number,
  more: Partial<KnownClub> = {},
): KnownClub => ({ club: { kind, loftDeg }, family: familyOf(kind), carryYd, fromTotal: false, ...more });
const model = (clubs: KnownClub[], more: Partial<PlayerModel> = {}): PlayerModel => ({
  driverSpeedMph: MPH,
  speedFrom: 'given',
  tier: 3,
  meanFactor: 0.92,
  air: PLAYER_AIR,
  known: clubs,
  sdShare: 0.06,
  ...more,
});
const centred = (club: ModelClub) => centredCarryYd(club, MPH, PLAYER_AIR);
const iron = (loftDeg: number, more: Partial<ModelClub> = {}): ModelClub => ({
  kind: 'iron',
  loftDeg,
  ...more,
});
const carry = (clubs: KnownClub[], club: ModelClub, more: Partial<PlayerModel> = {}) =>
  predictCarry(model(clubs, more), club)?.carryYd;

// DESIGN §7, steps 2 to 4. Expected values are worked by hand, or the model's own ratio where that is the rule.
describe('between known neighbours of the family', () => {
  const ends = [known('iron', 30, 140), known('iron', 40, 120)];
  it('lies on the straight line in loft, wherever the others stand', () => {
    expect(carry(ends, iron(35))).toBeCloseTo(130, 9);
    expect(carry(ends, iron(31))).toBeCloseTo(138, 9);
    const more = [known('iron', 20, 170), ...ends, known('wedge', 55, 80)];
    expect(carry(more, iron(35))).toBeCloseTo(130, 9);
    expect(carry([...more].reverse(), iron(35))).toBeCloseTo(130, 9);
    expect(predictCarry(model(more), iron(35))).toMatchObject({ source: 'interpolated' });
  });
  it('a wedge is of the irons’ family, a wood is not', () => {
    expect(carry([known('iron', 40, 120), known('wedge', 50, 100)], iron(45))).toBeCloseTo(110, 9);
    expect(predictCarry(model([known('fairway', 15, 190), known('iron', 40, 120)]), iron(35))?.source).toBe(
      'modelled',
    );
  });
  it('is the carry of the very same loft, and the mean of several', () => {
    expect(carry([...ends, known('iron', 35, 137)], iron(35))).toBe(137);
    expect(carry([known('iron', 35, 137), known('iron', 35, 133)], iron(35))).toBe(135);
    // Two of one loft stand as one neighbour.
    expect(carry([known('iron', 30, 144), ...ends], iron(35))).toBeCloseTo(131, 9);
  });
  it('has 4 % of range', () => {
    const { lowYd, highYd } = predictCarry(model(ends), iron(35)) ?? {};
    expect(lowYd).toBeCloseTo(124.8, 9);
    expect(highYd).toBeCloseTo(135.2, 9);
  });
  it('a carry reckoned from a total is no neighbour', () => {
    const total = known('driver', 10.5, 201, { fromTotal: true });
    const woods = [total, known('fairway', 18, 177)];
    expect(predictCarry(model(woods), { kind: 'fairway', loftDeg: 15 })?.source).toBe('modelled');
    expect(predictCarry(model([total]), total.club)?.source).toBe('modelled');
  });
  it('head and length act by the model’s ratio, where a speed is known', () => {
    const low = iron(35, { spinTier: 'low' });
    expect(carry(ends, low)).toBeCloseTo((130 * centred(low)) / centred(iron(35)), 9);
    expect(carry(ends, iron(35, { spinTier: 'mid' }))).toBeCloseTo(130, 9);
    const long = iron(35, { lengthIn: 38 });
    expect(carry(ends, long)).toBeCloseTo((130 * centred(long)) / centred(iron(35)), 9);
    expect(carry(ends, long)).toBeGreaterThan(130);
    expect(carry(ends, low, { driverSpeedMph: null })).toBeCloseTo(130, 9);
  });
});

describe('beyond them', () => {
  it('is physics times the residual of the nearest, the mean of two as near', () => {
    const clubs = [known('iron', 30, 140), known('iron', 40, 120)];
    expect(carry(clubs, iron(25))).toBeCloseTo((centred(iron(25)) * 140) / centred(iron(30)), 9);
    expect(carry(clubs, iron(46))).toBeCloseTo((centred(iron(46)) * 120) / centred(iron(40)), 9);
    const twins = [known('iron', 30, 140), known('iron', 30, 130)];
    expect(carry(twins, iron(25))).toBeCloseTo((centred(iron(25)) * 135) / centred(iron(30)), 9);
  });
  it('driver and fairway woods lend to each other, a total too', () => {
    const driver = known('driver', 10.5, 190, { fromTotal: true });
    const wood = { kind: 'fairway' as const, loftDeg: 18 };
    expect(carry([driver], wood)).toBeCloseTo((centred(wood) * 190) / centred(driver.club), 9);
  });
  it('hybrids take their own, else what woods and irons have, else the mean of shots', () => {
    const hybrid = { kind: 'hybrid' as const, loftDeg: 22 };
    const wood = known('fairway', 18, 190);
    const residual = 190 / centred(wood.club);
    expect(carry([wood], hybrid)).toBeCloseTo(centred(hybrid) * residual, 9);
    const own = known('hybrid', 25, 150);
    expect(carry([wood, own], hybrid)).toBeCloseTo((centred(hybrid) * 150) / centred(own.club), 9);
    expect(carry([], hybrid)).toBeCloseTo(centred(hybrid) * 0.92, 9);
  });
  it('woods and irons do not lend to each other', () => {
    const wood = { kind: 'fairway' as const, loftDeg: 18 };
    expect(carry([known('iron', 33, 150), known('hybrid', 22, 180)], wood)).toBeCloseTo(
      centred(wood) * 0.92,
      9,
    );
  });
  it('has 8 % of range, and is null where no speed is known', () => {
    const { carryYd = NaN, lowYd, highYd } = predictCarry(model([]), iron(35)) ?? {};
    expect(lowYd).toBeCloseTo(0.92 * carryYd, 9);
    expect(highYd).toBeCloseTo(1.08 * carryYd, 9);
    expect(predictCarry(model([known('iron', 30, 140)], { driverSpeedMph: null }), iron(35))).toBeNull();
  });
});
