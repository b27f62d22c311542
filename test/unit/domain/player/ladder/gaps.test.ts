import { describe, expect, it } from 'vitest';
import {
  chanceAbove,
  chanceBelow,
  gapBetween,
  gapSdYd,
} from '../../../../../src-main/domain/player/ladder/gaps.ts';
import type { Rung } from '../../../../../src-main/domain/player/ladder/ladder.ts';

const rung = (carryYd: number, source: Rung['source'], more: Partial<Rung> = {}): Rung => ({
  clubId: `c${String(carryYd)}`,
  kind: 'iron',
  family: 'irons',
  carryYd,
  lowYd: carryYd - 5,
  highYd: carryYd + 5,
  source,
  ...more,
});
const wood = { kind: 'fairway', family: 'woods' } as const;

// The figures are DESIGN §7's.
describe('gapSdYd', () => {
  it('both stated: 3 yd or 2 % of the longer', () => {
    expect(gapSdYd(rung(140, 'stated'), rung(130, 'stated'))).toBe(3);
    expect(gapSdYd(rung(200, 'stated'), rung(180, 'stated'))).toBe(4);
  });
  it('both measured: quadrature of the standard errors, at least 1.5', () => {
    const a = rung(140, 'measured', { standardErrorYd: 3 });
    const b = rung(130, 'measured', { standardErrorYd: 4 });
    expect(gapSdYd(a, b)).toBe(5);
    expect(gapSdYd({ ...a, standardErrorYd: 0.1 }, { ...b, standardErrorYd: 0.1 })).toBe(1.5);
  });
  it('both interpolated in one family 2, both modelled 4', () => {
    expect(gapSdYd(rung(140, 'interpolated'), rung(130, 'interpolated'))).toBe(2);
    expect(gapSdYd(rung(140, 'modelled'), rung(130, 'modelled'))).toBe(4);
  });
  it('unmeasured across families 8', () => {
    expect(gapSdYd(rung(180, 'modelled', wood), rung(160, 'modelled'))).toBe(8);
    expect(gapSdYd(rung(180, 'interpolated', wood), rung(160, 'modelled'))).toBe(8);
  });
  it('mixed: root mean square of the two own figures', () => {
    expect(gapSdYd(rung(140, 'stated'), rung(130, 'interpolated'))).toBeCloseTo(Math.sqrt((9 + 4) / 2), 12);
  });
});

describe('chance beyond a limit', () => {
  const gap = gapBetween(rung(160, 'stated'), rung(140, 'stated')); // 20 yd, SD 3.2
  it('is a half at the limit', () => {
    expect(chanceAbove(gap, 20)).toBeCloseTo(0.5, 6);
  });
  it('is .8 at .8416 standard deviations', () => {
    expect(chanceAbove(gap, 20 - 0.8416 * 3.2)).toBeCloseTo(0.8, 4);
    expect(chanceBelow(gap, 20 + 0.8416 * 3.2)).toBeCloseTo(0.8, 4);
  });
});
