import { describe, expect, it } from 'vitest';
import { summariseShots } from '../../../../../src-main/domain/player/shots/shots.ts';

describe('summariseShots', () => {
  it('is null for no shots', () => {
    expect(summariseShots([])).toBeNull();
  });
  it('gives mean, sample SD, median and t-interval', () => {
    // 208 ± t(.95, 4)·SD/√5, SD = √(1000/4): worked by hand
    const summary = summariseShots([188, 198, 208, 218, 228]);
    expect(summary).toMatchObject({ shots: 5, meanYd: 208, medianYd: 208, outliers: [] });
    expect(summary?.sdYd).toBeCloseTo(15.811, 3);
    expect(summary?.highYd).toBeCloseTo(208 + (2.132 * 15.811) / Math.sqrt(5), 2);
  });
  it('marks an outlier without dropping it', () => {
    const summary = summariseShots([150, 151, 149, 152, 148, 90]);
    expect(summary?.outliers).toEqual([5]);
    expect(summary?.meanYd).toBeCloseTo(140, 9);
  });
  it('marks none where all are alike', () => {
    expect(summariseShots([150, 150, 150, 150, 149])?.outliers).toEqual([]);
  });
  it('one shot has no range', () => {
    expect(summariseShots([150])).toMatchObject({ sdYd: 0, lowYd: 0, highYd: Infinity });
  });
  it('two shots have a range: t(.95, 1) = 6.314', () => {
    const { sdYd = NaN, lowYd, highYd } = summariseShots([150, 152]) ?? {};
    expect(sdYd).toBeCloseTo(Math.SQRT2, 9);
    expect(highYd).toBeCloseTo(151 + 6.314, 6);
    expect(lowYd).toBeCloseTo(151 - 6.314, 6);
  });
  it('the spread that outliers do not move is 1.4826 × the median of the deviations', () => {
    expect(summariseShots([148, 149, 150, 152, 400])?.madSdYd).toBeCloseTo(1.4826 * 2, 9);
  });
});
