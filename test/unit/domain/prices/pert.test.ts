import { describe, expect, it } from 'vitest';
import { betaCdf, logGamma } from '../../../../src-main/domain/prices/beta.ts';
import { pertCdf, pertMean, pertShape } from '../../../../src-main/domain/prices/pert.ts';

describe('logGamma', () => {
  // Closed forms: Γ(n) = (n−1)!, Γ(1/2) = √π
  it.each([
    [1, 0],
    [5, Math.log(24)],
    [0.5, Math.log(Math.sqrt(Math.PI))],
    [6, Math.log(120)],
  ])('%d', (x, value) => {
    expect(logGamma(x)).toBeCloseTo(value, 12);
  });
});

describe('betaCdf', () => {
  // Closed forms: I_x(1, b) = 1 − (1−x)^b, I_x(a, 1) = x^a, I_x(2, 2) = 3x² − 2x³
  it.each([0, 0.1, 0.37, 0.5, 0.9, 1])('at %d', (x) => {
    expect(betaCdf(x, 1, 5)).toBeCloseTo(1 - (1 - x) ** 5, 12);
    expect(betaCdf(x, 5, 1)).toBeCloseTo(x ** 5, 12);
    expect(betaCdf(x, 2, 2)).toBeCloseTo(3 * x ** 2 - 2 * x ** 3, 12);
  });
});

describe('PERT', () => {
  const band = { lowMinor: 4000, likelyMinor: 5000, highMinor: 7000 };
  it('has the mean (low + 4·likely + high) / 6', () => {
    expect(pertMean(band)).toBeCloseTo((4000 + 20000 + 7000) / 6, 9);
    const { alpha, beta } = pertShape(band);
    expect(4000 + (3000 * alpha) / (alpha + beta)).toBeCloseTo(pertMean(band), 9);
  });
  it('gives nothing below low, all above high, and rises between', () => {
    expect([pertCdf(band, 3999), pertCdf(band, 7000), pertCdf(band, 8000)]).toEqual([0, 1, 1]);
    expect(pertCdf(band, 5000)).toBeLessThan(pertCdf(band, 5001));
  });
  it('takes a band without width as a sure price', () => {
    const sure = { lowMinor: 50, likelyMinor: 50, highMinor: 50 };
    expect([pertCdf(sure, 49), pertCdf(sure, 50)]).toEqual([0, 1]);
  });
});
