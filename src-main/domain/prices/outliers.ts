import { weightedMedian, type Weighed } from './weighted.ts';

/** Modified z-score above which a value is marked: Iglewicz & Hoaglin 1993, via NIST/SEMATECH e-Handbook 1.3.5.17. */
const OUTLIER_Z = 3.5;
const Z_FACTOR = 0.6745;
/** Prices within this factor of the middle are never odd, however alike the others are. Common practice, no source. */
const NEAR = 1.5;
/** Of three prices none can be called the odd one. Own choice, no source. */
const FEWEST = 4;

/**
 * Which of some prices (minor units, with weights) lie far from the others: by the modified z-score of their
 * logarithms, since prices differ by factors. The middle is the weighted one, so that old prices do not make new ones
 * odd. In the order given; all false below four prices.
 */
export function markOutliers(prices: readonly Weighed[]): boolean[] {
  if (prices.length < FEWEST) return prices.map(() => false);
  // A price of nothing has no logarithm; one minor unit is as near to it as prices come.
  const logs = prices.map(({ value, weight }) => ({ value: Math.log(Math.max(1, value)), weight }));
  const middle = weightedMedian(logs);
  const off = logs.map(({ value, weight }) => ({ value: Math.abs(value - middle), weight }));
  const spread = weightedMedian(off);
  return off.map(({ value }) => value > Math.log(NEAR) && Z_FACTOR * value > OUTLIER_Z * spread);
}
