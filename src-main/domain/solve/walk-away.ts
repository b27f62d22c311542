import type { Watch } from './hooks.ts';
import type { Instance, Item, Point } from './instance.ts';
import { layOut } from './ladder.ts';
import { leastCostOf } from './frontier.ts';

/** A single candidate or a whole lot, as one purchase. */
type Purchase = { id: string; price: number; members: Set<string> };

const purchasesOf = (instance: Instance, plan: Point): Purchase[] => {
  const bag = new Set(plan.items);
  const bought = instance.items.filter((item) => item.origin === 'candidate' && bag.has(item.id));
  const single = bought.filter((item) => item.lot === null);
  const lots = instance.lots.filter((lot) => bought.some((item) => item.lot === lot.id));
  const membersOf = (id: string): Item[] => instance.items.filter((item) => item.lot === id);
  return [
    ...single.map((item) => ({ id: item.id, price: item.price, members: new Set([item.id]) })),
    ...lots.map((lot) => ({
      id: lot.id,
      price: lot.price,
      members: new Set(membersOf(lot.id).map((item) => item.id)),
    })),
  ];
};

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
  // On no prototype, so that ids such as `__proto__` are plain keys.
  const prices = Object.create(null) as Record<string, number | null>;
  for (const { id, price, members } of purchasesOf(instance, plan)) {
    const others = instance.items.filter((item) => !members.has(item.id));
    // Points of the curve that do without it give a cost to begin with.
    const known = frontier.find(
      (point) => point.penalty <= plan.penalty && !point.items.some((item) => members.has(item)),
    );
    const without = leastCostOf(layOut({ ...instance, items: others }), plan.penalty, known?.cost ?? null, watch);
    prices[id] = without === null ? null : without - (plan.cost - price);
  }
  return prices;
};
