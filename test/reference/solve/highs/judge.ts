import type { Instance, Item } from '../../../../src-main/domain/solve/instance.ts';

/**
 * What a bag is worth, read from DESIGN §8's words alone and in no hurry: the yardstick for the oracle's answers and
 * the solver's. It shares no code with `src-main/domain/solve`.
 */
export type Judged = {
  /** Why the bag is not legal; empty when it is. */
  faults: string[];
  cost: number;
  penalty: number;
  changes: number;
  /** Items bought singly + lots bought. */
  purchases: number;
};

/** By carry down, ties by id in code-unit order. */
export const ladderOrder = (a: Item, b: Item): number =>
  b.carryDy - a.carryDy || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);

export const isPutter = (item: Item): boolean => item.kind === 'putter';

/** Penalty of an item for being in the bag at all: tier and misfit, of unlocked ladder clubs only. */
export function ownPenaltyOf({ leastTier, tierWeight }: Instance, item: Item): number {
  if (item.locked || isPutter(item)) return 0;
  const least = Object.hasOwn(leastTier, item.kind) ? leastTier[item.kind] : undefined;
  const below = item.tier === null || least === undefined ? 0 : Math.max(0, least - item.tier);
  return tierWeight * below + item.misfit;
}

/** Penalty of two ladder neighbours; `twoLongest` when they are the longest two of their bag. */
export function pairPenaltyOf(instance: Instance, longer: Item, shorter: Item, twoLongest: boolean): number {
  if (instance.excused.some(([long, short]) => long === longer.id && short === shorter.id)) return 0;
  const band = instance.bands.findLast(({ fromDy }) => fromDy <= longer.carryDy);
  if (!band) return 0;
  const { firstPair } = instance;
  const lenient =
    twoLongest &&
    firstPair !== null &&
    longer.kind === 'driver' &&
    shorter.carryDy >= firstPair.secondAtLeastDy;
  const wideDy = lenient ? firstPair.wideDy : band.wideDy;
  const gapDy = longer.carryDy - shorter.carryDy;
  return (
    band.wideWeight * Math.max(0, gapDy - wideDy) + band.crowdWeight * Math.max(0, band.crowdedDy - gapDy)
  );
}

export const topPenaltyOf = ({ top }: Instance, longest: Item): number =>
  top.weight * Math.max(0, top.atLeastDy - longest.carryDy);

export const bottomPenaltyOf = ({ bottom }: Instance, shortest: Item): number =>
  bottom.weight * Math.max(0, shortest.carryDy - bottom.atMostDy);

function penaltyOf(instance: Instance, ladder: Item[]): number {
  const longest = ladder[0];
  const shortest = ladder.at(-1);
  if (!longest || !shortest) return 0;
  let sum = topPenaltyOf(instance, longest) + bottomPenaltyOf(instance, shortest);
  ladder.forEach((item, i) => {
    sum += ownPenaltyOf(instance, item);
    const next = ladder[i + 1];
    if (next) sum += pairPenaltyOf(instance, item, next, i === 0);
  });
  return sum;
}

function faultsOf({ items, limit }: Instance, bag: Item[]): string[] {
  const faults: string[] = [];
  const putters = bag.filter(isPutter).length;
  const ownsPutter = items.some((item) => isPutter(item) && item.origin === 'owned');
  if (bag.length > limit) faults.push(`${String(bag.length)} items, limit ${String(limit)}`);
  if (putters > 1) faults.push(`${String(putters)} putters`);
  if (ownsPutter && putters === 0) faults.push('no putter though one is owned');
  if (bag.every(isPutter)) faults.push('no ladder club');
  for (const item of items)
    if (item.locked && !bag.includes(item)) faults.push(`${item.id} is locked and left out`);
  return faults;
}

export function judge(instance: Instance, ids: readonly string[]): Judged {
  const chosen = new Set(ids);
  const bag = instance.items.filter((item) => chosen.has(item.id));
  const faults = faultsOf(instance, bag);
  if (chosen.size !== ids.length || bag.length !== ids.length) faults.push('an id twice, or of no item');

  let bought = 0;
  let purchases = 0;
  let sold = 0;
  const leftOut = instance.items.filter((item) => item.origin === 'owned' && !chosen.has(item.id));
  for (const item of bag) {
    if (item.origin === 'candidate' && item.lot === null) {
      bought += item.price;
      purchases += 1;
    }
  }
  const soldWhole = new Set<string>();
  for (const lot of instance.lots) {
    const members = instance.items.filter((item) => item.lot === lot.id);
    const kept = members.filter((item) => chosen.has(item.id)).length;
    if (lot.origin === 'candidate' && kept > 0) {
      bought += lot.price;
      purchases += 1;
    }
    if (lot.origin === 'owned' && kept === 0) {
      sold += lot.resale;
      soldWhole.add(lot.id);
    }
  }
  for (const item of leftOut) if (item.lot === null || !soldWhole.has(item.lot)) sold += item.resale;

  return {
    faults,
    cost: instance.basis === 'net' ? bought - sold : bought,
    penalty: penaltyOf(instance, bag.filter((item) => !isPutter(item)).sort(ladderOrder)),
    changes: purchases + leftOut.length,
    purchases,
  };
}
