import { describe, expect, it } from 'vitest';
import { median, normalCdf, t95 } from '../../../../src-main/domain/player/statistics.ts';

describe('t95', () => {
  // NIST/SEMATECH e-Handbook 1.3.6.7.2, upper critical values, .95
  it.each([
    [1, 6.314],
    [6, 1.943],
    [12, 1.782],
    [30, 1.697],
    [40, 1.684],
    [60, 1.671],
    [100, 1.66],
  ])('%i degrees of freedom: %d', (df, value) => {
    expect(t95(df)).toBeCloseTo(value, 3);
  });
  it('is without bound below one degree of freedom', () => {
    expect(t95(0)).toBe(Infinity);
  });
});

describe('normalCdf', () => {
  // Standard normal table
  it.each([
    [0, 0.5],
    [0.8416212, 0.8],
    [-0.8416212, 0.2],
    [1.6448536, 0.95],
    [3, 0.9986501],
  ])('%d → %d', (x, p) => {
    expect(normalCdf(x)).toBeCloseTo(p, 6);
  });
});

describe('median', () => {
  it.each([
    [[], null],
    [[3], 3],
    [[9, 1, 5], 5],
    [[4, 1, 3, 2], 2.5],
  ])('%j → %s', (values, middle) => {
    expect(median(values)).toBe(middle);
  });
});
