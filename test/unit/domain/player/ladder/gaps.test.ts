import { describe, expect, it } from 'vitest';
import {
  chanceAbove,
  chanceBelow,
  gapBetween,
  gapSdYd,
  neighbourGaps,
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

describe('mixed sources', () => {
  const mean = (a: number, b: number) => Math.sqrt((a * a + b * b) / 2);
  const measured = rung(140, 'measured', { standardErrorYd: 3 });
  it('a measured club counts as a pair of its own kind would: √2 of its standard error, at least 1.5', () => {
    expect(gapSdYd(measured, rung(130, 'stated'))).toBeCloseTo(mean(3 * Math.SQRT2, 3), 12);
    expect(gapSdYd({ ...measured, standardErrorYd: 0.5 }, rung(130, 'stated'))).toBeCloseTo(mean(1.5, 3), 12);
    expect(gapSdYd(rung(200, 'stated'), measured)).toBeCloseTo(mean(4, 3 * Math.SQRT2), 12);
  });
  it('within a family the unmeasured one counts 2 or 4, across families 8', () => {
    expect(gapSdYd(rung(140, 'interpolated'), rung(130, 'modelled'))).toBeCloseTo(mean(2, 4), 12);
    expect(gapSdYd(rung(180, 'stated', wood), rung(160, 'modelled'))).toBeCloseTo(mean(3.6, 8), 12);
    expect(gapSdYd(rung(180, 'stated', wood), rung(160, 'interpolated'))).toBeCloseTo(mean(3.6, 8), 12);
    expect(gapSdYd(rung(180, 'modelled', wood), measured)).toBeCloseTo(mean(8, 3 * Math.SQRT2), 12);
  });
});

describe('neighbourGaps', () => {
  it('is one for each two that stand beside each other, in the ladder’s order', () => {
    const [a, b, c] = [rung(150, 'stated'), rung(140, 'stated'), rung(125, 'measured')];
    expect(neighbourGaps([a, b, c])).toEqual([gapBetween(a, b), gapBetween(b, c)]);
    expect(neighbourGaps([a, b, c]).map(({ gapYd }) => gapYd)).toEqual([10, 15]);
    expect([neighbourGaps([a]), neighbourGaps([])]).toEqual([[], []]);
  });
});
