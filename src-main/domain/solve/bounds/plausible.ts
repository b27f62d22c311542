import type { Screen } from '../program/arcs.ts';
import type { Ladder } from '../model/ladder.ts';
import { penaltyAt, type Region } from './region.ts';
import type { Scenario } from '../search/scenario.ts';

/**
 * Pairs that bare sums do not rule out: all owned clubs left out but for the two, whose own and pair
 * penalties stand alone. Much weaker than bounds, and much quicker than making the arcs.
 */
export const plausible = (ladder: Ladder, scenario: Scenario, region: Region): Screen => {
  const { clubs, own } = ladder;
  const { leastSkipCost, leastPrice, starts, lotAt, lotPrice } = scenario;
  let base = starts.reduce((least, s) => Math.min(least, s.leastCost), Infinity);
  // What keeping a club costs above leaving it out, open lots apart.
  const kept = new Float64Array(
    clubs.map((club, i) => {
      if (club.locked) return 0;
      const skip = (leastSkipCost[i + 1] as number) - (leastSkipCost[i] as number);
      base += skip;
      return ((lotAt[i] as number) < 0 ? (leastPrice[i] as number) : 0) - skip;
    }),
  );
  const mostAt = penaltyAt(region);
  // The most that the pair's penalty may be, whatever the other club costs.
  const most = kept.map((cost, i) => mostAt(base + cost + (lotPrice[i] as number)) - (own[i] as number));
  const allows = (j: number, i: number, penalty: number): boolean => {
    if (penalty > (most[j] as number) || penalty > (most[i] as number)) return false;
    const oneLot = (lotAt[j] as number) >= 0 && lotAt[j] === lotAt[i];
    const lots = (lotPrice[j] as number) + (oneLot ? 0 : (lotPrice[i] as number));
    const cost = base + (kept[j] as number) + (kept[i] as number) + lots;
    return mostAt(cost) >= penalty + (own[j] as number) + (own[i] as number);
  };
  return { most, allows };
};
