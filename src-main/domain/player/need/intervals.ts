import type { Need } from './need.ts';
import { countDeckBetween } from './wanted.ts';

/** Expected full shots a round that want lowYd ≤ carry < highYd; `teeShots` are those of them from a tee. */
export type NeedInterval = { lowYd: number; highYd: number; shots: number; teeShots: number };

/** The need in the intervals between the edges (yards, rising); what no interval holds is left out. */
export function needIntervals(need: Need, edgesYd: readonly number[]): NeedInterval[] {
  return edgesYd.slice(1).map((highYd, i) => {
    const lowYd = edgesYd[i] ?? 0;
    const shots = need.between(lowYd, highYd);
    return { lowYd, highYd, shots, teeShots: shots - countDeckBetween(need.wanted, lowYd, highYd) };
  });
}
