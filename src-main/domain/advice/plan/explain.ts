import { headline as headlineOf, type Hooks } from '../../solve/index.ts';
import type { Instance, Point, Solution } from '../../solve/instance.ts';
import { evaluate } from '../../solve/model/penalty.ts';
import { purchasesOf, withoutPurchases } from '../../solve/model/purchases.ts';

/** What one purchase does, found by solving again without it. Money in minor units. */
export type PurchaseReason = {
  /** Item or lot id. */
  id: string;
  /** How much more would be wrong if only this purchase were left out of the plan. */
  removes: number;
  /** The best plan without it; null when there is no bag. */
  without: { cost: number; penalty: number; buys: string[] } | null;
};

/** A point of the curve that is not the plan, against it. */
export type OtherStep = { cost: number; penalty: number; buys: string[] };

export type Explanation = {
  purchases: PurchaseReason[];
  /** What the next step up the curve would buy, whether or not the budget allows it; null at the end. */
  nextStep: OtherStep | null;
  /** When nothing is bought: the cheapest thing that would help at all; null when nothing priced does. */
  cheapestHelp: OtherStep | null;
};

/** Reasons by re-solving, not by rule of thumb. @throws SolveStopped when a hook ends a solve */
export function explain(
  instance: Instance,
  { frontier, headline, today }: Solution,
  hooks: Hooks = {},
): Explanation {
  if (headline === null) return { purchases: [], nextStep: null, cheapestHelp: null };
  const bought = purchasesOf(instance, headline.items);
  const step = (point: Point | undefined): OtherStep | null =>
    point ? { cost: point.cost, penalty: point.penalty, buys: purchasesOf(instance, point.items) } : null;
  const before = (today ?? frontier[0])?.penalty ?? 0;
  const helps = frontier.find(
    (point) => point.penalty < before && purchasesOf(instance, point.items).length > 0,
  );
  return {
    purchases: bought.map((id) => reasonFor(instance, { plan: headline, curve: frontier }, id, hooks)),
    nextStep: step(frontier.find((point) => point.cost > headline.cost && point.penalty < headline.penalty)),
    cheapestHelp: bought.length > 0 ? null : step(helps),
  };
}

function reasonFor(
  instance: Instance,
  { plan, curve }: { plan: Point; curve: readonly Point[] },
  id: string,
  hooks: Hooks,
): PurchaseReason {
  const members = new Set(
    instance.items.filter((item) => item.id === id || item.lot === id).map((item) => item.id),
  );
  const rest = evaluate(
    instance,
    plan.items.filter((item) => !members.has(item)),
  );
  const other = headlineOf(withoutPurchases(instance, new Set([id])), hooks, curve);
  return {
    id,
    removes: rest.penalty - plan.penalty,
    without: other
      ? { cost: other.cost, penalty: other.penalty, buys: purchasesOf(instance, other.items) }
      : null,
  };
}
