/**
 * The question the solver answers, and its answers, in whole numbers:
 * carries and limits in tenths of a yard (`Dy`), money in minor units, weights in penalty per tenth.
 */

export type Origin = 'owned' | 'candidate';

/** One club that is owned or could be bought. Items and lots share one namespace of ids. */
export type Item = {
  id: string;
  origin: Origin;
  /** `putter` and `driver` have rules of their own; any other word is just a kind of ladder club. */
  kind: string;
  carryDy: number;
  /** 1 (players') to 4 (super game improvement); null: unknown, so never below the least tier. */
  tier: number | null;
  /** Penalty for being in the bag at all. */
  misfit: number;
  /** Must stay in the bag, and bears neither tier nor misfit penalty. Owned items only. */
  locked: boolean;
  /** The set it is bought or sold with. */
  lot: string | null;
  /** What buying it costs; 0 for a candidate of a lot. */
  price: number;
  /** What leaving it out brings, when it is owned. */
  resale: number;
};

/** Clubs that are bought or sold together. */
export type Lot = { id: string; origin: Origin; price: number; resale: number };

/** Limits for a pair of neighbours, chosen by the longer one's carry. */
export type Band = {
  fromDy: number;
  wideDy: number;
  crowdedDy: number;
  wideWeight: number;
  crowdWeight: number;
};

/** The wide limit of the bag's two longest, when the longer is a driver and the shorter long enough. */
export type FirstPair = { wideDy: number; secondAtLeastDy: number };

export type Instance = {
  /** Most clubs in a bag, the putter counted. */
  limit: number;
  items: Item[];
  lots: Lot[];
  bands: Band[];
  firstPair: FirstPair | null;
  top: { atLeastDy: number; weight: number };
  bottom: { atMostDy: number; weight: number };
  /** [longer, shorter] ids, free of pair penalties while the two are neighbours. */
  excused: [string, string][];
  leastTier: Record<string, number>;
  tierWeight: number;
  /** null: no budget. */
  budget: number | null;
  /** net: cost = purchases less resale; cash: purchases alone. */
  basis: 'net' | 'cash';
};

/** One bag: `items` are the ids of the whole bag, in code-unit order. */
export type Point = { cost: number; penalty: number; changes: number; items: string[] };

export type Solution = {
  /** The bag as owned, or null when it is not a legal bag. */
  today: Point | null;
  cheapestClean: Point | null;
  bestWithinBudget: Point | null;
  headline: Point | null;
  /** Every pair (cost, penalty) that no bag betters, by rising cost. */
  frontier: Point[];
  /** By item id, or lot id for a set: the highest price at which it is still worth buying; null: no ceiling. */
  walkAway: Record<string, number | null>;
};

/** The kind that is on no ladder. */
export const PUTTER = 'putter';

/** The kind that the first pair's limit is for. */
export const DRIVER = 'driver';
