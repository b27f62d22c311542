import type { Rung } from '../../../player/ladder/ladder.ts';
import { median } from '../../../player/statistics.ts';
import type { LongEndCause } from './long-end-cause.ts';
import type { BagView, Pair } from '../../bag-view/view.ts';

/** Two or more narrow gaps at the long end, the short end normal. Common practice, no source. */
const FEWEST_NARROW = 2;
const FEWEST_SHORT = 2;
/** A gap under half the player's own usual one is narrow, whatever the limit. */
const NARROW_SHARE = 0.5;
/** Ball speed that rises less than this from club to club (mph) is flat. Common practice, no source. */
const FLAT_MPH = 1.5;
/** What is wrong at the long end: the narrow pairs in ladder order and what the data let us say of the cause. */
export type LongEnd = {
  cause: LongEndCause;
  pairs: Pair[];
  /** The player's usual gap at the short end, yards. */
  usualYd: number;
  /** Mean rise of ball speed from club to club, mph; null where it is not known. */
  riseMph: number | null;
};

/** Null when the long end does not fall off. */
export function longEnd(
  view: Pick<BagView, 'bag' | 'ladder' | 'pairs' | 'club' | 'model' | 'limits'>,
): LongEnd | null {
  const driverYd = view.ladder.find((rung) => rung.kind === 'driver')?.carryYd ?? null;
  const longestYd = driverYd ?? (view.ladder[0] ? view.ladder[0].carryYd / 0.9 : 0);
  const isLong = (pair: Pair) =>
    pair.longer.kind !== 'driver' && pair.longer.carryYd >= view.limits.longShare * longestYd;
  const short = view.pairs.filter((pair) => pair.longer.kind !== 'driver' && !isLong(pair));
  const usualYd = median(short.map((pair) => pair.gapYd));
  if (usualYd === null || short.length < FEWEST_SHORT) return null;
  if (short.some((pair) => isNarrow(pair, usualYd))) return null;
  const pairs = view.pairs.filter((pair) => isLong(pair) && isNarrow(pair, usualYd) && isKnown(pair));
  if (pairs.length >= FEWEST_NARROW) return { ...causeOf(view, pairs, usualYd), pairs, usualYd };
  const [odd] = pairs;
  return odd && isOddInSet(view, odd) ? { cause: 'odd-pair', pairs, usualYd, riseMph: null } : null;
}

function isNarrow(pair: Pair, usualYd: number): boolean {
  return pair.gapYd < Math.max(pair.crowdedYd, NARROW_SHARE * usualYd);
}

/** The model's own guesses narrow by themselves at low speed; only real carries can accuse. */
function isKnown({ longer, shorter }: Pair): boolean {
  const real = (rung: Rung) => rung.source === 'measured' || rung.source === 'stated';
  return real(longer) && real(shorter);
}

function causeOf(
  view: Pick<BagView, 'club'>,
  pairs: readonly Pair[],
  usualYd: number,
): { cause: LongEndCause; riseMph: number | null } {
  const rises = pairs.flatMap(({ longer, shorter }) => {
    const [a, b] = [view.club(longer.clubId).ballSpeedMph, view.club(shorter.clubId).ballSpeedMph];
    return a === undefined || b === undefined ? [] : [a - b];
  });
  const riseMph =
    rises.length >= FEWEST_NARROW ? rises.reduce((sum, rise) => sum + rise, 0) / rises.length : null;
  // Ball speed that rises with the club: loft or length give too little for the speed (CHECKVALUES §9).
  if (riseMph !== null) return { cause: riseMph < FLAT_MPH ? 'flat-ball-speed' : 'make-up', riseMph };
  const ids = new Set(pairs.flatMap(({ longer, shorter }) => [longer.clubId, shorter.clubId]));
  const spread = [...ids].filter((id) => (view.club(id).carrySdYd ?? 0) > usualYd / 2);
  return { cause: spread.length >= FEWEST_NARROW ? 'wide-spread' : 'unknown', riseMph };
}

/** One odd pair within a set, whose lofts should step evenly and have not been measured. */
function isOddInSet(view: Pick<BagView, 'club'>, { longer, shorter }: Pair): boolean {
  const [a, b] = [view.club(longer.clubId), view.club(shorter.clubId)];
  return a.set !== undefined && a.set === b.set && !(a.loftMeasured === true && b.loftMeasured === true);
}

/** The pairs that the finding excuses: all but where the make-up itself is the cause. */
export function excusedByLongEnd(found: LongEnd | null): Pair[] {
  return found === null || found.cause === 'make-up' ? [] : found.pairs;
}
