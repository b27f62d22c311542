import { driverBehindIrons } from '../rules/clubs/driver-behind-irons.ts';
import { excusedByGround } from '../rules/gaps/firm-ground.ts';
import { excusedByLongEnd, longEnd } from '../rules/gaps/long-end.ts';
import type { BagView } from '../bag-view/view.ts';

/**
 * Owned pairs, by club id in ladder order, that cost nothing while they are neighbours: unsure ones, those that firm
 * ground, a falling long end or a driver that is behind explains, and crowded ones that are both to be kept.
 */
export function excusedPairs(view: BagView): [string, string][] {
  const { pairs, club } = view;
  const ground = excusedByGround(view);
  const behind = driverBehindIrons(view).length > 0;
  const byLongEnd = new Set(excusedByLongEnd(longEnd(view)));
  return pairs
    .filter((pair) => {
      const { state, longer, shorter } = pair;
      if (state === 'unsure-wide' || state === 'unsure-crowded' || byLongEnd.has(pair)) return true;
      // A driver that is behind for a reason yet to be found is not dropped for being short.
      if (behind && (longer.kind === 'driver' || shorter.kind === 'driver')) return true;
      if (longer === ground?.[0] && shorter === ground[1]) return true;
      return state === 'crowded' && club(longer.clubId).goTo === true && club(shorter.clubId).goTo === true;
    })
    .map(({ longer, shorter }) => [longer.clubId, shorter.clubId]);
}
