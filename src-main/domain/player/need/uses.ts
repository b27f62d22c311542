import { ladderOrder } from '../ladder/ladder.ts';
import type { NeedClub } from './reach.ts';
import { countBetween, countDeckBetween, NOTHING_WANTED, type Wanted } from './wanted.ts';

/**
 * Expected uses of each club a round by nearest choice: up to halfway to the next longer club, from halfway to the next
 * shorter. From the ground the driver is no choice while there is another club. Of clubs of equal carry the first in
 * ladder order takes the longer shots, the last the shorter. The uses add up to all full shots.
 */
export function usesByClub(ladder: readonly NeedClub[], wanted: Wanted): ReadonlyMap<string, number> {
  const clubs = [...ladder].sort(ladderOrder);
  const notDriver = clubs.filter((club) => club.kind !== 'driver');
  const onDeck = notDriver.length > 0 ? notDriver : clubs;
  const uses = new Map(clubs.map((club) => [club.clubId, 0]));
  const add = (among: readonly NeedClub[], count: (lowYd: number, highYd: number) => number) => {
    let highYd = Infinity;
    among.forEach((club, i) => {
      const shorter = among[i + 1];
      const lowYd = shorter === undefined ? 0 : (club.carryYd + shorter.carryYd) / 2;
      uses.set(club.clubId, (uses.get(club.clubId) ?? 0) + count(lowYd, highYd));
      highYd = lowYd;
    });
  };
  const teeOnly: Wanted = { ...NOTHING_WANTED, tee: wanted.tee };
  add(clubs, (lowYd, highYd) => countBetween(teeOnly, lowYd, highYd));
  add(onDeck, (lowYd, highYd) => countDeckBetween(wanted, lowYd, highYd));
  return uses;
}
