import { leastCostOf } from './frontier.ts';
import type { Watch } from './hooks.ts';
import type { Instance, Point } from './instance.ts';
import { layOut } from './model/ladder.ts';
import { purchasesOf, withoutPurchases } from './model/purchases.ts';

/**
 * For each purchase x of the plan: W = C(P, x barred) − (C(P) − price x), with C(P) the least cost of a bag
 * whose penalty is at most the plan's, the budget left out of it; null when no bag without x reaches P.
 * At price W buying x is still among the cheapest ways to P; at W + 1 it is not.
 * @param plan a point of the frontier, so that its cost is C(P)
 */
export const walkAwayOf = (
  instance: Instance,
  frontier: readonly Point[],
  plan: Point,
  watch: Watch,
): Record<string, number | null> => {
  const priceOf = new Map([...instance.items, ...instance.lots].map(({ id, price }) => [id, price]));
  // On no prototype, so that ids such as `__proto__` are plain keys.
  const prices = Object.create(null) as Record<string, number | null>;
  const asGood = frontier
    .filter((point) => point.penalty <= plan.penalty)
    .map(({ cost, items }) => ({ cost, bought: purchasesOf(instance, items) }));
  for (const id of purchasesOf(instance, plan.items)) {
    // A point of the curve that does without it gives a cost to begin with.
    const known = asGood.find(({ bought }) => !bought.includes(id))?.cost ?? null;
    const ladder = layOut(withoutPurchases(instance, new Set([id])));
    const without = leastCostOf(ladder, plan.penalty, known, frontier, watch);
    prices[id] = without === null ? null : without - (plan.cost - (priceOf.get(id) ?? 0));
  }
  return prices;
};
