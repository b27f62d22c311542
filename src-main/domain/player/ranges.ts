import type { Source } from '../bag/types.ts';
import { t95 } from './statistics.ts';

/** A 90 % range in yards. */
export type Range = { lowYd: number; highYd: number };

/** Half widths of the unmeasured sources (CHECKVALUES §8: one amateur from speed and loft, ±5–8 %; rest own reckoning). */
export const STATED_YD = 5;
export const STATED_SHARE = 0.03;
const SHARE: Record<'interpolated' | 'modelled', number> = { interpolated: 0.04, modelled: 0.08 };

/** Range of a carry that was not measured. */
export function unmeasuredRange(carryYd: number, source: Exclude<Source, 'measured'>): Range {
  const half = source === 'stated' ? Math.max(STATED_YD, STATED_SHARE * carryYd) : SHARE[source] * carryYd;
  return { lowYd: Math.max(0, carryYd - half), highYd: carryYd + half };
}

/** t-interval (90 %) of the mean of `shots` carries with standard deviation `sdYd`; needs two shots or more. */
export function measuredRange(carryYd: number, sdYd: number, shots: number): Range {
  const half = (t95(shots - 1) * sdYd) / Math.sqrt(shots);
  return { lowYd: Math.max(0, carryYd - half), highYd: carryYd + half };
}
