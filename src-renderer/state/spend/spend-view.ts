import type { Answer } from '../../../src-main/contract/calls/answers/answers.ts';
import type { ClubFile } from '../../../src-main/contract/formats/bag-file.ts';

/** A point of the spend curve. `wrong` is what is left of today's penalty, 0 to 1 (nothing wrong today: 0). */
export type SpendPoint = {
  cost: number;
  wrong: number;
  changes: number;
  /** Names of what is bought, and of what is left out. */
  buys: string[];
  leaves: string[];
  isPlan: boolean;
  withinBudget: boolean;
};

export type SpendView = { points: SpendPoint[]; budget: number | null; today: { wrong: number } };

/** The curve from today's penalty downwards, cheapest first. */
export function spendView(answer: Answer, clubs: readonly ClubFile[], budget: number | null): SpendView {
  const { plan, names, todayPenalty } = answer;
  const planned = plan.plan.items === undefined ? null : sameItems(plan.plan.items);
  const points = plan.frontier
    .filter((point) => point.penalty <= todayPenalty)
    .map((point): SpendPoint => ({
      cost: point.cost,
      wrong: todayPenalty === 0 ? 0 : point.penalty / todayPenalty,
      changes: point.changes,
      buys: [...new Set(point.items.flatMap((id) => purchaseOf(id) ?? []))].map((id) => names[id] ?? id),
      leaves: clubs.filter(({ id }) => !point.items.includes(`own:${id}`)).map(({ id }) => names[id] ?? id),
      isPlan: planned?.(point.items) ?? false,
      withinBudget: budget === null || point.cost <= budget,
    }))
    .sort((a, b) => a.cost - b.cost);
  return { points, budget, today: { wrong: todayPenalty === 0 ? 0 : 1 } };
}

const BUY = 'buy:';

/** `buy:<archetype>`, also of a set's member `buy:<archetype>:<number>`; null for an owned club. */
export function purchaseOf(item: string): string | null {
  if (!item.startsWith(BUY)) return null;
  const member = item.indexOf(':', BUY.length);
  return member === -1 ? item : item.slice(0, member);
}

export function sameItems(items: readonly string[]): (other: readonly string[]) => boolean {
  const wanted = new Set(items);
  return (other) => other.length === wanted.size && other.every((id) => wanted.has(id));
}

/** The plan's money, line by line; it adds up to what the plan file says. Major units. */
export type Totals = {
  clubs: number;
  deliveryAndGrips: number;
  cash: number;
  sales: number;
  saleCosts: number;
  net: number;
  remaining: number | null;
};

export function totalsOf({ swaps, cash, net, remaining }: Answer['plan']['plan']): Totals {
  const sum = (action: 'buy' | 'sell') =>
    swaps.reduce((total, swap) => total + (swap.action === action ? (swap.price ?? 0) : 0), 0);
  const [clubs, sales] = [sum('buy'), sum('sell')];
  return {
    clubs,
    deliveryAndGrips: cash - clubs,
    cash,
    sales,
    saleCosts: sales - (cash - net),
    net,
    remaining,
  };
}

/** A budget slider from 0 to a round sum above everything on the curve, in round steps. Major units. */
export function sliderScale(costs: readonly number[], budget: number | null): { max: number; step: number } {
  const most = Math.max(10, budget ?? 0, ...costs);
  const size = 10 ** Math.floor(Math.log10(most * 1.2));
  const max = Math.ceil((most * 1.2) / size) * size;
  return { max, step: Math.max(1, size / 20) };
}
