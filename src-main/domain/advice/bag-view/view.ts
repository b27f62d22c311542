import {
  gapLimits,
  handicapToBuyFor,
  leastTiers,
  MOST_CLUBS,
  recommendedTier,
  type Conventions,
  type GapLimits,
} from '../../bag/conventions.ts';
import type { Archetype, Bag, Club } from '../../bag/types.ts';
import { chanceAbove, chanceBelow, neighbourGaps, type Gap } from '../../player/ladder/gaps.ts';
import { ownedLadder, type Rung } from '../../player/ladder/ladder.ts';
import { playerModel, type PlayerModel } from '../../player/model.ts';
import { needPerRound, type Need } from '../../player/need/need.ts';
import { ownConventions, USUAL_RECKONING, type OwnConventions, type Reckoning } from './reckoning.ts';
import type { PairState } from './pair-state.ts';
import type { Reader } from '../reader.ts';
import type { Words } from '../words/words.ts';

/** How sure one must be that a gap lies beyond its limit before it is called wide or crowded. */
export const SURE = 0.8;

/** A neighbour pair with the limits that hold for it and what they make of it. */
export type Pair = Gap & {
  wideYd: number;
  crowdedYd: number;
  state: PairState;
  chance: number;
  first: boolean;
};

/** All that the rules look at. */
export type BagView = {
  bag: Bag;
  model: PlayerModel;
  ladder: readonly Rung[];
  pairs: readonly Pair[];
  limits: GapLimits;
  least: ReturnType<typeof leastTiers>;
  conventions: Conventions;
  /** Where those are the user's own. */
  own: OwnConventions;
  /** Where the gap limits and the least tiers come from, for evidence. */
  limitSource: string;
  tierSource: string;
  /** What the course asks of this player; null where no ladder tells. */
  need: Need | null;
  club(id: string): Club;
  /** What the reader calls the club. */
  name(id: string): string;
  catalogue: readonly Archetype[];
  reader: Reader;
  words: Words;
  /** ISO date of today, for retest dates; given by the caller. */
  today: string;
};

export type ViewInput = Pick<BagView, 'bag' | 'catalogue' | 'reader' | 'words' | 'today'> & {
  /** The usual one when left out. */
  reckoning?: Reckoning | undefined;
};

/** Limits follow the driver speed; where nothing tells it, the middle row serves (no gap is called without carries). */
const UNKNOWN_SPEED_MPH = 90;

export function viewBag({ bag, catalogue, reader, words, today, reckoning }: ViewInput): BagView {
  const { conventions, air } = reckoning ?? USUAL_RECKONING;
  const model = playerModel(bag, air);
  const ladder = ownedLadder(bag, model);
  const speed = model.driverSpeedMph ?? UNKNOWN_SPEED_MPH;
  const limits = gapLimits(speed, conventions);
  const own = ownConventions(conventions, limits, speed);
  const buysFor = handicapToBuyFor(bag.player.handicap, bag.player.targetHandicap);
  const clubs = new Map(bag.clubs.map((club) => [club.id, club]));
  const club = (id: string): Club => {
    const found = clubs.get(id);
    if (!found) throw new RangeError(`no club "${id}" in this bag`);
    return found;
  };
  return {
    bag,
    model,
    ladder,
    pairs: pairsOf(ladder, limits),
    limits,
    least: leastTiers(recommendedTier(buysFor, conventions)),
    conventions,
    own,
    limitSource: own.limits ? words.figures.ownSource : words.figures.limitSource,
    tierSource: own.tiers ? words.figures.ownSource : words.figures.tierSource,
    need: needOf(bag, ladder, model),
    club,
    name: (id) => words.clubName(club(id)),
    catalogue,
    reader,
    words,
    today,
  };
}

/** Judges every neighbour pair: inside the limits silence, beyond them wide or crowded when sure enough. */
export function pairsOf(ladder: readonly Rung[], limits: GapLimits): Pair[] {
  const driver = ladder.find((rung) => rung.kind === 'driver');
  const secondYd = ladder.find((rung) => rung.kind !== 'driver')?.carryYd ?? Infinity;
  return neighbourGaps(ladder).map((gap, i) => {
    const first = i === 0 && gap.longer.kind === 'driver' && gap.shorter.carryYd >= secondYd;
    const long = driver !== undefined && gap.longer.carryYd >= limits.longShare * driver.carryYd;
    const wideYd = first ? limits.firstPairYd : long ? limits.wideLongYd : limits.wideYd;
    return { ...gap, wideYd, crowdedYd: limits.crowdedYd, first, ...judge(gap, wideYd, limits.crowdedYd) };
  });
}

function judge(gap: Gap, wideYd: number, crowdedYd: number): { state: PairState; chance: number } {
  if (gap.gapYd > wideYd) {
    const chance = chanceAbove(gap, wideYd);
    return { state: chance >= SURE ? 'wide' : 'unsure-wide', chance };
  }
  if (gap.gapYd < crowdedYd) {
    const chance = chanceBelow(gap, crowdedYd);
    return { state: chance >= SURE ? 'crowded' : 'unsure-crowded', chance };
  }
  return { state: 'fine', chance: 0 };
}

/** Places left in the bag; the putter's place is kept where none is listed. */
export function freePlaces(view: BagView): number {
  const putter = view.bag.clubs.some((club) => club.kind === 'putter') ? 0 : 1;
  return MOST_CLUBS - view.bag.clubs.length - putter;
}

function needOf(bag: Bag, ladder: readonly Rung[], model: PlayerModel): Need | null {
  if (ladder.length === 0) return null;
  return needPerRound({ ...(bag.holes ? { holes: bag.holes } : {}), ladder, dispersionShare: model.sdShare });
}
