import { describe, expect, it } from 'vitest';
import { measuredRange, unmeasuredRange } from '../../../../src-main/domain/player/ranges.ts';

describe('unmeasuredRange', () => {
  it('stated: 5 yd or 3 %, the larger', () => {
    expect(unmeasuredRange(100, 'stated')).toEqual({ lowYd: 95, highYd: 105 });
    expect(unmeasuredRange(200, 'stated')).toEqual({ lowYd: 194, highYd: 206 });
  });
  it('interpolated 4 %, modelled 8 %', () => {
    expect(unmeasuredRange(150, 'interpolated')).toEqual({ lowYd: 144, highYd: 156 });
    expect(unmeasuredRange(150, 'modelled')).toEqual({ lowYd: 138, highYd: 162 });
  });
});

it('measuredRange is the 90 % t-interval: mean 208, SD 15.6, 7 shots → 208 ± 1.943·15.6/√7', () => {
  const { lowYd, highYd } = measuredRange(208, 15.6, 7);
  expect(highYd - 208).toBeCloseTo(11.456, 2);
  expect(208 - lowYd).toBeCloseTo(11.456, 2);
});
