import type { ConventionsFile } from '../../../src-main/contract/calls/answers/reckoning.ts';

/** How many of the values are not the usual ones. */
export function ownValues(now: ConventionsFile, usual: ConventionsFile): number {
  const before = valuesOf(usual);
  return valuesOf(now).filter((value, i) => value !== before[i]).length;
}

function valuesOf({ limits, longShare, tierUpTo, weights }: ConventionsFile): number[] {
  return [
    ...limits.flatMap((row) => [row.crowdedYd, row.wideYd, row.wideLongYd, row.firstPairYd]),
    longShare,
    ...tierUpTo,
    weights.wide,
    weights.crowd,
    weights.tier,
  ];
}
