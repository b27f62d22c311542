import { type Found, merge } from './program/found.ts';
import { headlineOf } from './headline.ts';
import type { Watch } from './hooks.ts';
import type { Instance, Point } from './instance.ts';
import type { Ladder } from './model/ladder.ts';
import { compareIds } from './model/order.ts';
import { evaluate } from './model/penalty.ts';
import { planQuestion } from './plan-alone.ts';
import { atMost, NO_LIMIT, notBettered, type Region } from './bounds/region.ts';
import { search } from './search/search.ts';
import { slopeAt } from './bounds/weights.ts';

/** Ids of a bag found. Ranks rise with the ids, so that these are in code-unit order. */
const pointOf = (ladder: Ladder, found: Found): Point => ({
  cost: found.cost,
  penalty: found.penalty,
  changes: found.changes,
  items: Array.from(found.ranks, (rank) => ladder.idByRank[rank] as string),
});

/**
 * Every pair (cost, penalty) that no bag betters, by rising cost, not cut by the budget. Of the bags of one
 * pair the one with fewest changes, then fewest purchases, then the first by its sorted ids.
 * Empty when there is no legal bag.
 */
export const frontierOf = (ladder: Ladder, watch: Watch): Point[] =>
  search(ladder, { accept: notBettered, slopes: null }, watch).map((found) => pointOf(ladder, found));

/** A slope at which any penalty outweighs money, in minor units for each tenth of a yard. */
const STEEP = 2 ** 20;

/** The clean bag of least cost, with its ties as in `frontierOf`; null when no bag is clean. */
export const cheapestCleanOf = (ladder: Ladder, watch: Watch): Point | null => {
  const cleanOf = (found: readonly Found[]): Found | undefined => found.find((p) => p.penalty === 0);
  const accept = (found: readonly Found[]): Region => atMost(cleanOf(found)?.cost ?? NO_LIMIT, 0);
  const clean = cleanOf(search(ladder, { accept, slopes: [STEEP] }, watch));
  return clean === undefined ? null : pointOf(ladder, clean);
};

/**
 * The first point of the curve with at most this penalty, with its ties as in `frontierOf`; null when there is none that
 * costs no more than `mostCost`. The curve itself is not built, so it is found much sooner.
 * @param curve of a question like this one: its slopes are where this answer is looked for
 */
export const cheapestWithinOf = (
  ladder: Ladder,
  { penalty, mostCost }: { penalty: number; mostCost: number },
  curve: readonly Point[],
  watch: Watch,
): Point | null => {
  const best = (found: readonly Found[]): Found | undefined =>
    found.find((p) => p.penalty <= penalty && p.cost <= mostCost);
  // Ties of the best so far stay inside, so that the first of them is found.
  const accept = (found: readonly Found[]): Region => atMost(best(found)?.cost ?? mostCost, penalty);
  const cheapest = best(search(ladder, { accept, slopes: [slopeAt(curve, penalty)] }, watch));
  return cheapest === undefined ? null : pointOf(ladder, cheapest);
};

/**
 * Least cost of a bag with at most this penalty; null: no such bag.
 * @param known a cost that is reached, if one is known
 * @param curve of a question like this one: its slopes are where this answer is looked for
 */
export const leastCostOf = (
  ladder: Ladder,
  penalty: number,
  known: number | null,
  curve: readonly Point[],
  watch: Watch,
): number | null => {
  const best = (found: readonly Found[]): number | null => {
    const cost = found.find((p) => p.penalty <= penalty)?.cost ?? null;
    return cost === null || (known !== null && known < cost) ? known : cost;
  };
  // Ties do not matter here: only less cost is looked for.
  const accept = (found: readonly Found[]): Region => atMost((best(found) ?? NO_LIMIT + 1) - 1, penalty);
  return best(search(ladder, { accept, slopes: [slopeAt(curve, penalty)] }, watch));
};

/**
 * The plan (`headlineOf`) without the curve that it stands on; null when there is none within budget.
 * @param asked today's bag and a budget of 0 or more, if there is one
 * @param curve of a question like this one: its slopes are where this answer is looked for
 */
export const planWithin = (
  ladder: Ladder,
  { today, budget }: { today: Point; budget: number | null },
  curve: readonly Point[],
  watch: Watch,
): Point | null => {
  const known = knownBags(ladder, curve);
  const found = search(ladder, { ...planQuestion({ before: today.penalty, budget }, curve), known }, watch);
  const plan = headlineOf(found, today, budget);
  return plan === null ? null : pointOf(ladder, plan);
};

/** What the bags of another curve come to in this question; those that it has not, or does not allow, are left out. */
const knownBags = ({ instance, idByRank }: Ladder, curve: readonly Point[]): Found[] => {
  const ranks = new Map(idByRank.map((id, rank) => [id, rank]));
  const found = curve.flatMap(({ items }): Found[] => {
    if (!items.every((id) => ranks.has(id))) return [];
    const { legal, ...bag } = evaluate(instance, items);
    return legal ? [{ ...bag, ranks: Int32Array.from(items, (id) => ranks.get(id) as number).sort() }] : [];
  });
  return merge(found, []);
};

/** The last point within the budget: least penalty, then cost; null when there is none. */
export const bestWithin = (frontier: readonly Point[], budget: number | null): Point | null =>
  frontier.findLast((point) => budget === null || point.cost <= budget) ?? null;

/** The bag as owned, when it is legal. */
export const todayOf = (instance: Instance): Point | null => {
  const items = instance.items
    .filter((item) => item.origin === 'owned')
    .map((item) => item.id)
    .sort(compareIds);
  const { legal, cost, penalty, changes } = evaluate(instance, items);
  return legal ? { cost, penalty, changes, items } : null;
};
