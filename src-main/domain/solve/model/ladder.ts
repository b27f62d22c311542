import type { Instance, Item } from '../instance.ts';
import { DRIVER, PUTTER } from '../instance.ts';
import { compileLots, type LotMoney, type StatefulLot } from './lots.ts';
import { compareLadder } from './order.ts';
import { bottomPenalty, ownPenalty, topPenalty } from './penalty.ts';
import { type PutterChoice, putterChoices } from './putters.ts';
import { largestTotals } from './validate.ts';

/** An instance laid out for the program: ladder clubs by position, 0 the longest. Columns are parallel. */
export type Ladder = {
  instance: Instance;
  clubs: Item[];
  carryDy: Float64Array;
  /** At most so many items in a bag; never more than there are. */
  limit: number;
  /** Paid for keeping the club, lots apart, and 1 when that is a purchase. */
  price: Float64Array;
  single: Uint8Array;
  /** Penalty that the club brings by itself, as the longest, and as the shortest. */
  own: Float64Array;
  top: Float64Array;
  bottom: Float64Array;
  /** [i]: cost (at most 0) and changes of leaving out every position before i, lots apart. */
  skipCost: Float64Array;
  skipChanges: Int32Array;
  /** [i]: first locked position from i on (the length: none), and the number of them. */
  nextLocked: Int32Array;
  lockedFrom: Int32Array;
  /** 1 for a driver, whose pair has a limit of its own while it is the longest. */
  leads: Uint8Array;
  /** Place of the club's id among all ids in code-unit order, and the ids by place. */
  rank: Int32Array;
  idByRank: string[];
  /** The most that all money, and the penalty of any bag, can add up to. */
  largest: { money: number; penalty: number };
  putters: PutterChoice[];
  /** Lots whose money depends on which of their members are kept. */
  lots: StatefulLot[];
};

const skipColumns = (clubs: Item[], money: LotMoney): Pick<Ladder, 'skipCost' | 'skipChanges'> => {
  const skipCost = new Float64Array(clubs.length + 1);
  const skipChanges = new Int32Array(clubs.length + 1);
  clubs.forEach((item, i) => {
    skipCost[i + 1] = (skipCost[i] as number) - money.resaleOf(item);
    skipChanges[i + 1] = (skipChanges[i] as number) + (item.origin === 'owned' ? 1 : 0);
  });
  return { skipCost, skipChanges };
};

const lockColumns = (clubs: Item[]): Pick<Ladder, 'nextLocked' | 'lockedFrom'> => {
  const n = clubs.length;
  const nextLocked = new Int32Array(n + 1).fill(n);
  const lockedFrom = new Int32Array(n + 1);
  for (let i = n - 1; i >= 0; i--) {
    const locked = clubs[i]?.locked === true;
    nextLocked[i] = locked ? i : (nextLocked[i + 1] as number);
    lockedFrom[i] = (lockedFrom[i + 1] as number) + (locked ? 1 : 0);
  }
  return { nextLocked, lockedFrom };
};

/** Positions of lots' members; -1 for what is on no ladder. */
const positionsIn = (clubs: Item[]): ((item: Item) => number) => {
  const positions = new Map<Item, number>();
  clubs.forEach((item, i) => {
    if (item.lot !== null) positions.set(item, i);
  });
  return (item) => positions.get(item) ?? -1;
};

/** Lays out an instance that `checkInstance` has passed. */
export const layOut = (instance: Instance): Ladder => {
  const clubs = instance.items.filter((item) => item.kind !== PUTTER).sort(compareLadder);
  const money = compileLots(instance, positionsIn(clubs));
  // Code-unit order, as `compareIds` has it.
  const idByRank = instance.items.map((item) => item.id).sort();
  const rankOf = new Map<string, number>();
  idByRank.forEach((id, rank) => rankOf.set(id, rank));
  // Made from arrays: `from` with a function takes several times as long.
  const reals = (of: (item: Item) => number) => new Float64Array(clubs.map(of));
  const flags = (of: (item: Item) => boolean) => new Uint8Array(clubs.map((item) => (of(item) ? 1 : 0)));
  return {
    instance,
    clubs,
    carryDy: reals((item) => item.carryDy),
    limit: Math.min(instance.limit, instance.items.length),
    price: reals(money.priceOf),
    single: flags((item) => item.origin === 'candidate' && money.lotOf(item) < 0),
    own: reals((item) => ownPenalty(instance, item)),
    top: reals((item) => topPenalty(instance, item)),
    bottom: reals((item) => bottomPenalty(instance, item)),
    ...skipColumns(clubs, money),
    ...lockColumns(clubs),
    leads: flags((item) => item.kind === DRIVER && instance.firstPair !== null),
    rank: new Int32Array(clubs.map((item) => rankOf.get(item.id) as number)),
    idByRank,
    largest: largestTotals(instance),
    putters: putterChoices(instance, money, rankOf),
    lots: money.lots,
  };
};
