import type { Labels } from './labels.ts';
import { compareLists } from '../model/order.ts';
import type { Prune } from '../bounds/prune.ts';

/** One bag found: ranks of its ids, rising. */
export type Found = { cost: number; penalty: number; changes: number; purchases: number; ranks: Int32Array };

/** Order of bags: cost, penalty, changes, purchases, then the sorted ids. */
export const compareFound = (a: Found, b: Found): number =>
  a.cost - b.cost ||
  a.penalty - b.penalty ||
  a.changes - b.changes ||
  a.purchases - b.purchases ||
  compareLists(a.ranks, b.ranks, (x, y) => x - y);

/** Every nondominated (cost, penalty) of both, by rising cost, each the first of its ties. */
export const merge = (a: readonly Found[], b: readonly Found[]): Found[] => {
  const kept: Found[] = [];
  for (const point of [...a, ...b].sort(compareFound)) {
    if (point.penalty < (kept.at(-1)?.penalty ?? Infinity)) kept.push(point);
  }
  return kept;
};

/**
 * The same of whole bags among labels, those outside the region left out: their ties were not kept.
 * @param sorted by cost, penalty, changes, purchases
 */
export const foundIn = (labels: Labels, sorted: Int32Array, prune: Prune): Found[] => {
  const { cost, penalty, changes, purchases } = labels;
  const found: number[] = [];
  let least = Infinity;
  for (const l of sorted) {
    const last = found.at(-1);
    if ((penalty[l] as number) < least) {
      found.push(l);
      least = penalty[l] as number;
    } else if (
      last !== undefined &&
      cost[l] === cost[last] &&
      penalty[l] === penalty[last] &&
      changes[l] === changes[last] &&
      purchases[l] === purchases[last] &&
      labels.compareIds(l, last) < 0
    ) {
      found[found.length - 1] = l;
    }
  }
  return found
    .filter((l) => prune.holds(cost[l] as number, penalty[l] as number))
    .map((l) => ({
      // No minus zero.
      cost: (cost[l] as number) + 0,
      penalty: penalty[l] as number,
      changes: changes[l] as number,
      purchases: purchases[l] as number,
      ranks: labels.ranks(l),
    }));
};
