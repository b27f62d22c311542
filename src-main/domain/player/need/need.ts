import type { Hole } from '../../bag/types.ts';
import { defaultCourse } from './courses.ts';
import { reachOf, type NeedClub } from './reach.ts';
import { playRound, SHORT_GAME_YD } from './round.ts';
import { usesByClub } from './uses.ts';
import { countBetween, countInside, NOTHING_WANTED, type Wanted } from './wanted.ts';

/** What a reader must be told beside every figure of need. */
export type NeedAssumption = {
  holes: number;
  totalYd: number;
  parTotal: number;
  source: 'given' | 'default';
};

/** Expected full shots of one round: what the course asks of this player. */
export type Need = {
  fullShots: number;
  /** Those of them from a tee. */
  teeShots: number;
  /** Full shots that want lowYd ≤ carry < highYd. */
  between: (lowYd: number, highYd: number) => number;
  /** Full shots for which this club is the nearest by carry; a driver only from a tee. */
  byClub: ReadonlyMap<string, number>;
  assumption: NeedAssumption;
  /** The counts themselves, as plain data. */
  wanted: Wanted;
};

export type NeedInput = {
  /** Left out or empty: the default course of the drive. */
  holes?: readonly Hole[];
  ladder: readonly NeedClub[];
  /** Standard deviation of one carry over the carry, 0–1. */
  dispersionShare: number;
};

/** Beyond any hole on earth; keeps a slip of units from filling the memory. */
const LONGEST_HOLE_YD = 2000;
const LONGEST_CARRY_YD = 500;

/**
 * The need per round. It follows from the holes, the longest club, the longest but the driver, and the dispersion;
 * the other clubs only share it out. Left out: sides, hazards, lay-ups by choice, wind, mishits beyond the dispersion.
 * A bag in which nothing that plays from the ground carries 40 yd has no full shot.
 * @throws RangeError for a length, carry or share that is no number or outside its range.
 */
export function needPerRound(input: NeedInput): Need {
  check(input);
  const { ladder, dispersionShare } = input;
  const reach = reachOf(ladder);
  const given = input.holes !== undefined && input.holes.length > 0;
  const holes = given ? (input.holes ?? []) : defaultCourse(driveCarryYd(ladder)).holes;
  const plays = reach !== null && reach.deckYd >= SHORT_GAME_YD;
  const wanted = plays ? playRound(holes, reach, dispersionShare) : NOTHING_WANTED;
  return {
    fullShots: countBetween(wanted, 0, Infinity),
    teeShots: wanted.tee.reduce((sum, { shots }) => sum + shots, 0),
    between: (lowYd, highYd) => countBetween(wanted, lowYd, highYd),
    byClub: usesByClub(ladder, wanted),
    assumption: {
      holes: holes.length,
      totalYd: holes.reduce((sum, hole) => sum + hole.lengthYd, 0),
      parTotal: holes.reduce((sum, hole) => sum + hole.par, 0),
      source: given ? 'given' : 'default',
    },
    wanted,
  };
}

/**
 * Expected shots a round in a gap: those that want a carry strictly between the two clubs'. What wants the very carry of
 * a club is that club's business: drives are no need of the first pair, and long holes' second shots, which take all
 * the longest club has, are no need of the pair below it. The first pair is asked for by long par 3s, by long holes
 * within a drive's reach, and by second shots up to what a fairway wood could carry.
 */
export function gapNeed(need: Need, longerYd: number, shorterYd: number): number {
  return countInside(need.wanted, shorterYd, longerYd);
}

function driveCarryYd(ladder: readonly NeedClub[]): number {
  const driver = ladder.filter((club) => club.kind === 'driver');
  return Math.max(0, ...(driver.length > 0 ? driver : ladder).map((club) => club.carryYd));
}

function check({ holes, ladder, dispersionShare }: NeedInput): void {
  const refuse = (what: string, value: number, most: number, unit: string) => {
    if (value >= 0 && value <= most) return;
    throw new RangeError(`${what} is ${String(value)}: give a number from 0 to ${String(most)}${unit}`);
  };
  refuse('The dispersion share', dispersionShare, 1, '');
  holes?.forEach((hole, i) => {
    refuse(`The length of hole ${String(i + 1)}`, hole.lengthYd, LONGEST_HOLE_YD, ' yd');
  });
  for (const club of ladder)
    refuse(`The carry of club ${club.clubId}`, club.carryYd, LONGEST_CARRY_YD, ' yd');
}
