import { t95 } from '../../domain/player/statistics.ts';

export type Trend = { perYearYd: number; lowYd: number; highYd: number };

/** Fewer entries, or over fewer days, tell of weather and form, not of a trend. Own choice, no source. */
const FEWEST = 3;
const LEAST_DAYS = 30;
const YEAR_DAYS = 365.25;

/**
 * How a carry (yards) changes a year: least squares on the days, with a 90 % t-range of the slope; null for too little.
 * Textbook formulas: NIST/SEMATECH e-Handbook 4.1.4.1.
 */
export function carryTrend(entries: readonly { onDate: string; carryYd: number }[]): Trend | null {
  const points = entries.map(({ onDate, carryYd }) => ({
    x: Date.parse(`${onDate}T00:00:00Z`) / 86_400_000 / YEAR_DAYS,
    y: carryYd,
  }));
  const n = points.length;
  const xs = points.map(({ x }) => x);
  if (n < FEWEST || (Math.max(...xs) - Math.min(...xs)) * YEAR_DAYS < LEAST_DAYS - 1e-6) return null;
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / n;
  const [middleX, middleY] = [mean(xs), mean(points.map(({ y }) => y))];
  const sxx = points.reduce((sum, { x }) => sum + (x - middleX) ** 2, 0);
  const sxy = points.reduce((sum, { x, y }) => sum + (x - middleX) * (y - middleY), 0);
  const perYearYd = sxy / sxx;
  const residual = points.reduce((sum, { x, y }) => sum + (y - middleY - perYearYd * (x - middleX)) ** 2, 0);
  const spread = t95(n - 2) * Math.sqrt(residual / (n - 2) / sxx);
  return { perYearYd, lowYd: perYearYd - spread, highYd: perYearYd + spread };
}
