import type { Instance, Item } from '../instance.ts';

/** A lot whose money depends on more than one of its members. */
export type StatefulLot = {
  candidate: boolean;
  /** Paid once when a member of a candidate lot is kept. */
  price: number;
  /** What leaving out all of an owned lot brings beyond its members' own resale; may be negative. */
  gain: number;
  /** Ladder positions of the members, rising; putters, which are chosen first, stand at -1. */
  at: number[];
  /** Position of the last member. */
  last: number;
};

/** Money of every item once the lots that need no memory are folded into it. */
export type LotMoney = {
  lots: StatefulLot[];
  /** Index into `lots`, or -1. */
  lotOf: (item: Item) => number;
  /** Paid for keeping a candidate, stateful lots apart. */
  priceOf: (item: Item) => number;
  /** Brought by leaving out an owned item, stateful lots' gain apart; 0 on the cash basis. */
  resaleOf: (item: Item) => number;
};

/**
 * Folds lots into their members where that is exact:
 * a lot of one member is that member's price or resale; an owned lot with a locked member is never left out
 * whole; one that brings just what its members bring is no different from them; and on the cash basis resale
 * counts for nothing. A lot without members can be neither bought nor sold.
 */
export const compileLots = (instance: Instance, positionOf: (item: Item) => number): LotMoney => {
  // Of the only members of lots.
  const price = new Map<Item, number>();
  const resale = new Map<Item, number>();
  const lotOf = new Map<Item, number>();
  const lots: StatefulLot[] = [];
  const net = instance.basis === 'net';
  const membersOf = Map.groupBy(
    instance.items.filter((item) => item.lot !== null),
    (item) => item.lot,
  );
  for (const lot of instance.lots) {
    const members = membersOf.get(lot.id) ?? [];
    const only = members.length === 1 ? members[0] : undefined;
    const candidate = lot.origin === 'candidate';
    if (only !== undefined) {
      if (candidate) price.set(only, lot.price);
      else if (net) resale.set(only, lot.resale);
      continue;
    }
    const apart = members.reduce((sum, item) => sum + item.resale, 0);
    const gain = candidate || !net || members.some((item) => item.locked) ? 0 : lot.resale - apart;
    if (members.length === 0 || (!candidate && gain === 0)) continue;
    const at = members.map(positionOf).sort((a, b) => a - b);
    for (const item of members) lotOf.set(item, lots.length);
    lots.push({ candidate, price: candidate ? lot.price : 0, gain, at, last: at.at(-1) as number });
  }
  return {
    lots,
    lotOf: (item) => lotOf.get(item) ?? -1,
    priceOf: (item) => price.get(item) ?? (item.origin === 'candidate' ? item.price : 0),
    resaleOf: (item) => resale.get(item) ?? (item.origin === 'owned' && net ? item.resale : 0),
  };
};

/**
 * What the bounds count for each member of a lot, so that they need not remember lots: keeping a member of a
 * candidate lot costs its share of the price, leaving out one of an owned lot brings its share of the gain.
 * Whatever is kept, that is never more cost than the truth.
 * @param counted part of the price that is counted elsewhere
 */
export const shareOf = (lot: StatefulLot, counted = 0): number =>
  lot.candidate
    ? Math.floor((lot.price - counted) / lot.at.length)
    : Math.ceil(Math.max(0, lot.gain) / lot.at.length);
