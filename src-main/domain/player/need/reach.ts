import { driveRollYd } from './drive.ts';

/** A club as the need sees it; a rung of the ladder is one. */
export type NeedClub = { clubId: string; kind: string; carryYd: number };

/** How far the player gets, yards of carry. */
export type Reach = {
  /** Longest club, usable from a tee. */
  teeYd: number;
  /** Roll of that club's full shot: only a drive's counts. */
  teeRollYd: number;
  /** Longest club but the driver; the driver when there is nothing else. */
  deckYd: number;
  /** Longest carry that some club could have off the ground for this player. */
  deckWishYd: number;
};

/**
 * Longest fairway wood over the driver, carry: the tours' mean is 243/275 for men and 195/218 for women
 * (published averages, CHECKVALUES §1), rounded up. A shot that asks for more asks for what nobody sells.
 */
const DECK_SHARE = 0.9;

/** Null for a ladder without a club. */
export function reachOf(ladder: readonly NeedClub[]): Reach | null {
  let longest: NeedClub | null = null;
  let driverYd = 0;
  let deckYd = 0;
  for (const club of ladder) {
    if (longest === null || club.carryYd > longest.carryYd) longest = club;
    if (club.kind === 'driver') driverYd = Math.max(driverYd, club.carryYd);
    else deckYd = Math.max(deckYd, club.carryYd);
  }
  if (longest === null) return null;
  if (deckYd === 0) deckYd = driverYd;
  return {
    teeYd: longest.carryYd,
    teeRollYd: longest.kind === 'driver' ? driveRollYd(longest.carryYd) : 0,
    deckYd,
    deckWishYd: Math.max(deckYd, DECK_SHARE * driverYd),
  };
}
