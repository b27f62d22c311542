import { headlineOf } from '../../domain/solve/headline.ts';
import { frontier, type Hooks } from '../../domain/solve/index.ts';
import type { Instance, Point } from '../../domain/solve/instance.ts';
import { todayOf } from '../../domain/solve/frontier.ts';
import { compareIds, compareLists } from '../../domain/solve/model/order.ts';
import { purchasesOf, withoutPurchases } from '../../domain/solve/model/purchases.ts';

/**
 * The spend curve as a function of the price of one purchase x: the points that do without x, and those that hold it,
 * reckoned as if it cost nothing. At a price of q the latter cost q more, so that every price is answered by two solves.
 */
export type PricedCurve = {
  /** The item, or lot, whose price is open. */
  id: string;
  without: readonly Point[];
  /** At a price of 0. */
  withFree: readonly Point[];
  today: Point | null;
  budget: number | null;
  instance: Instance;
};

/** @param without the curve of the instance without x, where it is known already. Throws as `frontier` does. */
export function pricedCurve(
  instance: Instance,
  id: string,
  options: { without?: readonly Point[]; hooks?: Hooks } = {},
): PricedCurve {
  const { hooks = {} } = options;
  const free = withPrice(instance, id, 0);
  return {
    id,
    without: options.without ?? frontier(withoutPurchases(instance, new Set([id])), hooks),
    withFree: frontier(free, hooks).filter((point) => purchasesOf(free, point.items).includes(id)),
    today: todayOf(instance),
    budget: instance.budget,
    instance: free,
  };
}

/** The instance with another price of one candidate, or one candidate lot. */
export function withPrice(instance: Instance, id: string, price: number): Instance {
  const priced = <T extends { id: string; price: number }>(one: T): T =>
    one.id === id ? { ...one, price } : one;
  // Members of a lot cost nothing by themselves; their ids differ from the lot's.
  return { ...instance, items: instance.items.map(priced), lots: instance.lots.map(priced) };
}

/** The plan when x costs `price`, and whether it buys x. Null when there is no plan. */
export function headlineAt(curve: PricedCurve, price: number): { point: Point; buys: boolean } | null {
  const held = curve.withFree.map((point) => ({ ...point, cost: point.cost + price }));
  const bought = new Set<Point>(held);
  const point = headlineOf(nondominated(curve, [...curve.without, ...held]), curve.today, curve.budget);
  return point === null ? null : { point, buys: bought.has(point) };
}

/** Least cost, then penalty, then the ties of the solver; of each penalty reached, the first. */
function nondominated({ instance }: PricedCurve, points: readonly Point[]): Point[] {
  const count = (point: Point) => purchasesOf(instance, point.items).length;
  const sorted = [...points].sort(
    (a, b) =>
      a.cost - b.cost ||
      a.penalty - b.penalty ||
      a.changes - b.changes ||
      count(a) - count(b) ||
      compareLists(a.items, b.items, compareIds),
  );
  const kept: Point[] = [];
  for (const point of sorted) {
    if (point.penalty < (kept.at(-1)?.penalty ?? Infinity)) kept.push(point);
  }
  return kept;
}

/** Beyond any price of a club, in minor units of any currency. */
const ANY_PRICE = 1e12;

/**
 * The price at which x first enters the plan: the highest whole price (minor units, with delivery and grips) at which
 * the headline buys x. Null: at any price; undefined: not even for nothing. As the price falls, plans with x get
 * cheaper and those without stay as they are, so that x, once in, stays in: halving finds it.
 */
export function entryPrice(curve: PricedCurve): number | null | undefined {
  const buysAt = (price: number) => headlineAt(curve, price)?.buys === true;
  if (!buysAt(0)) return undefined;
  if (buysAt(ANY_PRICE)) return null;
  let inside = 0;
  let outside = ANY_PRICE;
  while (outside - inside > 1) {
    const middle = Math.floor((inside + outside) / 2);
    if (buysAt(middle)) inside = middle;
    else outside = middle;
  }
  return inside;
}

/**
 * The walk-away price of x when the plan at `price` buys it: W = C(P, x banned) − (C(P) − price), P being the plan's
 * penalty (DESIGN §8); null: no bag without x reaches P.
 */
export function walkAwayAt({ without }: PricedCurve, plan: Point, price: number): number | null {
  const others = without.find((point) => point.penalty <= plan.penalty);
  return others === undefined ? null : others.cost - (plan.cost - price);
}
