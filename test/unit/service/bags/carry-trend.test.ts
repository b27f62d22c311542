import { expect, it } from 'vitest';
import { carryTrend } from '../../../../src-main/service/bags/carry-trend.ts';

const on = (onDate: string, carryYd: number) => ({ onDate, carryYd });

it('is the least-squares slope with its 90 % t-range', () => {
  // Worked: 0, 1 and 2 years (365.25 days each, to a day): 150, 152, 157. Slope (157 − 150) / 2 = 3.5 a year;
  // residuals .5, −1, .5 (sum of squares 1.5), n − 2 = 1, Sxx = 2: standard error √(1.5 / 2) = .8660;
  // t.95 with 1 degree of freedom 6.314 (NIST table): ±5.468.
  const trend = carryTrend([on('2023-01-01', 150), on('2024-01-01', 152), on('2025-01-01', 157)]);
  expect(trend?.perYearYd).toBeCloseTo(3.5, 2);
  expect((trend?.highYd ?? 0) - 3.5).toBeCloseTo(5.468, 1);
  expect(3.5 - (trend?.lowYd ?? 0)).toBeCloseTo(5.468, 1);
});

it('does not depend on the order, and is sure of a straight line', () => {
  const line = [on('2026-03-01', 150), on('2026-01-01', 140), on('2026-02-01', 145.254)];
  const trend = carryTrend(line);
  expect(carryTrend([...line].reverse())?.perYearYd).toBeCloseTo(trend?.perYearYd ?? 0, 9);
  expect((trend?.highYd ?? 0) - (trend?.lowYd ?? 0)).toBeLessThan(2);
});

it('is not told from two days, or from less than a month', () => {
  expect(carryTrend([])).toBeNull();
  expect(carryTrend([on('2020-01-01', 150), on('2026-01-01', 160)])).toBeNull();
  expect(carryTrend([on('2026-01-01', 150), on('2026-01-15', 152), on('2026-01-30', 153)])).toBeNull();
  expect(carryTrend([on('2026-01-01', 150), on('2026-01-15', 152), on('2026-01-31', 153)])).not.toBeNull();
});
