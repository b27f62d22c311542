import type { Band, Instance, Item } from '../instance.ts';
import { DRIVER, PUTTER } from '../instance.ts';
import { compareLadder } from './order.ts';

/** One bag's worth, by the words of DESIGN §8 and no cleverness: what the solver is checked against. */
export type Verdict = {
  legal: boolean;
  cost: number;
  penalty: number;
  changes: number;
  purchases: number;
};

/** The band of a pair: the last that begins at or below the longer club's carry. */
export const bandFor = (bands: readonly Band[], longerDy: number): Band | null =>
  bands.findLast((band) => band.fromDy <= longerDy) ?? null;

/** A set of excused pairs, to be asked by two ids. */
export const excusedPairs = (
  excused: Instance['excused'],
): ((longer: string, shorter: string) => boolean) => {
  const shorterOf = new Map<string, Set<string>>();
  for (const [longer, shorter] of excused) {
    const set = shorterOf.get(longer) ?? new Set();
    shorterOf.set(longer, set.add(shorter));
  }
  return (longer, shorter) => shorterOf.get(longer)?.has(shorter) ?? false;
};

/** Penalty of two neighbours that are not excused; `first`: they are the bag's two longest. */
export const pairPenalty = (instance: Instance, longer: Item, shorter: Item, first: boolean): number => {
  const band = bandFor(instance.bands, longer.carryDy);
  if (band === null) return 0;
  const { firstPair } = instance;
  const lenient =
    first && firstPair !== null && longer.kind === DRIVER && shorter.carryDy >= firstPair.secondAtLeastDy;
  const wideDy = lenient ? firstPair.wideDy : band.wideDy;
  const gapDy = longer.carryDy - shorter.carryDy;
  return (
    band.wideWeight * Math.max(0, gapDy - wideDy) + band.crowdWeight * Math.max(0, band.crowdedDy - gapDy)
  );
};

export const topPenalty = ({ top }: Instance, longest: Item): number =>
  top.weight * Math.max(0, top.atLeastDy - longest.carryDy);

export const bottomPenalty = ({ bottom }: Instance, shortest: Item): number =>
  bottom.weight * Math.max(0, shortest.carryDy - bottom.atMostDy);

/** Tier and misfit penalty of one ladder club; a locked one bears none. */
export const ownPenalty = (instance: Instance, item: Item): number => {
  if (item.locked) return 0;
  const least = Object.hasOwn(instance.leastTier, item.kind) ? (instance.leastTier[item.kind] ?? 0) : 0;
  const short = item.tier === null ? 0 : Math.max(0, least - item.tier);
  return instance.tierWeight * short + item.misfit;
};

const bagPenalty = (instance: Instance, bag: Item[]): number => {
  const ladder = bag.filter((item) => item.kind !== PUTTER).sort(compareLadder);
  const longest = ladder[0];
  const shortest = ladder.at(-1);
  if (longest === undefined || shortest === undefined) return 0;
  const isExcused = excusedPairs(instance.excused);
  let penalty = topPenalty(instance, longest) + bottomPenalty(instance, shortest);
  ladder.forEach((item, i) => {
    penalty += ownPenalty(instance, item);
    const next = ladder[i + 1];
    if (next !== undefined && !isExcused(item.id, next.id)) {
      penalty += pairPenalty(instance, item, next, i === 0);
    }
  });
  return penalty;
};

const isLegal = (instance: Instance, bag: Item[], inBag: ReadonlySet<string>): boolean => {
  const putters = bag.filter((item) => item.kind === PUTTER).length;
  const puttersOwned = instance.items.some((item) => item.kind === PUTTER && item.origin === 'owned');
  return (
    bag.length <= instance.limit &&
    (puttersOwned ? putters === 1 : putters <= 1) &&
    bag.length > putters &&
    instance.items.every((item) => !item.locked || inBag.has(item.id))
  );
};

/** What the owned clubs left out bring: a whole lot its own price, all else the club's. */
const resaleOf = (instance: Instance, leftOut: Item[]): number => {
  const owned = instance.items.filter((item) => item.origin === 'owned' && item.lot !== null);
  const size = (items: Item[], lot: string): number => items.filter((item) => item.lot === lot).length;
  const gone = instance.lots.filter(
    (lot) =>
      lot.origin === 'owned' && size(owned, lot.id) > 0 && size(owned, lot.id) === size(leftOut, lot.id),
  );
  const wholly = new Set(gone.map((lot) => lot.id));
  const single = leftOut.filter((item) => item.lot === null || !wholly.has(item.lot));
  return [...gone, ...single].reduce((sum, x) => sum + x.resale, 0);
};

/**
 * Evaluates one bag, legal or not; money in minor units, penalty in weighted tenths of a yard.
 * @throws RangeError for an id that is not an item's, or that is named twice.
 */
export const evaluate = (instance: Instance, ids: readonly string[]): Verdict => {
  const items = new Map(instance.items.map((item) => [item.id, item]));
  const inBag = new Set<string>();
  const bag = ids.map((id) => {
    const item = items.get(id);
    if (item === undefined)
      throw new RangeError(`"${id}" is no item of this instance: name one of its items`);
    if (inBag.has(id)) throw new RangeError(`"${id}" is in the bag twice: name it once`);
    inBag.add(id);
    return item;
  });
  const bought = bag.filter((item) => item.origin === 'candidate');
  const single = bought.filter((item) => item.lot === null);
  const lotsBought = instance.lots.filter((lot) => bought.some((item) => item.lot === lot.id));
  const leftOut = instance.items.filter((item) => item.origin === 'owned' && !inBag.has(item.id));
  const spent = [...single, ...lotsBought].reduce((sum, x) => sum + x.price, 0);
  const purchases = single.length + lotsBought.length;
  return {
    legal: isLegal(instance, bag, inBag),
    cost: instance.basis === 'net' ? spent - resaleOf(instance, leftOut) : spent,
    penalty: bagPenalty(instance, bag),
    changes: purchases + leftOut.length,
    purchases,
  };
};
