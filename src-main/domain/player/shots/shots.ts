import { measuredRange, type Range } from '../ranges.ts';
import { median } from '../statistics.ts';

/** Measured shots of one club in one session, carries in yards. */
export type ShotSummary = Range & {
  shots: number;
  /** The carry: mean of the shots that count. */
  meanYd: number;
  /** Sample standard deviation, yards; 0 for one shot. */
  sdYd: number;
  medianYd: number;
  /** Median absolute deviation × 1.4826, yards: the spread that outliers do not move. */
  madSdYd: number;
  /** Marked, shown and counted: leaving one out is the user's choice. Index into the carries given. */
  outliers: number[];
};

/** MAD × 1.4826 estimates a normal's standard deviation (Rousseeuw & Croux 1993). */
const MAD_TO_SD = 1.4826;
/** Modified z-score above which a value is marked: Iglewicz & Hoaglin 1993, via NIST/SEMATECH e-Handbook 1.3.5.17. */
const OUTLIER_Z = 3.5;
const Z_FACTOR = 0.6745;

/**
 * Mean, spread and 90 % t-interval of carries (yards). The mean, not the median, is the carry; median and MAD only
 * mark outliers. Null for no shots.
 */
export function summariseShots(carriesYd: readonly number[]): ShotSummary | null {
  const medianYd = median(carriesYd);
  if (medianYd === null) return null;
  const shots = carriesYd.length;
  const meanYd = carriesYd.reduce((sum, carry) => sum + carry, 0) / shots;
  const sdYd =
    shots < 2 ? 0 : Math.sqrt(carriesYd.reduce((sum, carry) => sum + (carry - meanYd) ** 2, 0) / (shots - 1));
  const mad = median(carriesYd.map((carry) => Math.abs(carry - medianYd))) ?? 0;
  const outliers = carriesYd.flatMap((carry, i) =>
    mad > 0 && (Z_FACTOR * Math.abs(carry - medianYd)) / mad > OUTLIER_Z ? [i] : [],
  );
  const range = shots < 2 ? { lowYd: 0, highYd: Infinity } : measuredRange(meanYd, sdYd, shots);
  return { shots, meanYd, sdYd, medianYd, madSdYd: MAD_TO_SD * mad, outliers, ...range };
}
