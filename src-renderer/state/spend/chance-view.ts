import type { Answer } from '../../../src-main/contract/calls/answers/answers.ts';
import { toMinor } from '../../../src-main/contract/money.ts';

/** What the plan may cost, and how surely a sum is enough. Major units; chances 0 to 1. */
export type ChanceView = {
  /** Rising; at least two, or the cost would be sure. */
  points: { cost: number; atMost: number }[];
  low: number;
  high: number;
  enough: { share: number; cost: number };
  /** At the likely prices, as the plan prints it. */
  likely: { cost: number; atMost: number };
  budget: { amount: number; chance: number } | null;
  /** Whether money from sales is taken off. */
  isNet: boolean;
};

/** One certain cost: there is nothing to draw. */
export type SureCost = { cost: number };

/** Null where nothing that has a price is bought or sold. */
export function chanceView(answer: Answer, budget: number | null): ChanceView | SureCost | null {
  const { costSpread, plan } = answer;
  if (costSpread === null) return null;
  const { points, low, high, enough } = costSpread;
  if (points.length < 2) return { cost: low };
  const isNet = plan.instance.basis === 'net';
  const likely = isNet ? plan.plan.net : plan.plan.cash;
  return {
    points,
    low,
    high,
    enough,
    likely: { cost: likely, atMost: chanceAt(points, likely) },
    budget: budget === null ? null : { amount: budget, chance: chanceOf(answer, points, budget) },
    isNet,
  };
}

type Points = ChanceView['points'];

/** The plan's own figure where it was reckoned for that budget; a slider may be ahead of its answer. */
function chanceOf({ plan }: Answer, points: Points, budget: number): number {
  const isOwn = plan.instance.budget === toMinor(budget, plan.units.currency);
  return (isOwn ? plan.plan.chanceInBudget : undefined) ?? chanceAt(points, budget);
}

/** Chance that the cost is at most so much: between two points in a straight line, beyond the ends 0 or 1. */
export function chanceAt(points: Points, cost: number): number {
  const after = points.findIndex((point) => point.cost >= cost);
  const [before, next] = [points[after - 1], points[after]];
  if (next === undefined) return 1;
  if (before === undefined) return cost < next.cost ? 0 : next.atMost;
  const share = (cost - before.cost) / (next.cost - before.cost);
  return before.atMost + share * (next.atMost - before.atMost);
}

/** The least cost that is enough with a chance; the most of all where the points do not reach it. */
export function costAt(points: Points, chance: number): number {
  const after = points.findIndex((point) => point.atMost >= chance);
  const [before, next] = [points[after - 1], points[after]];
  if (next === undefined) return points.at(-1)?.cost ?? 0;
  if (before === undefined) return next.cost;
  const share = (chance - before.atMost) / (next.atMost - before.atMost);
  return before.cost + share * (next.cost - before.cost);
}

export type ChanceRow = { chance: number; cost: number; which: 'enough' | 'likely' | 'budget' | null };

/** The chances that the table lists beside the marked sums. */
const LISTED = [0.05, 0.1, 0.25, 0.5, 0.75, 0.9, 0.95];

/** The curve as a table: the sum for each listed chance, and the marked sums among them, the least first. */
export function chanceRows({ points, enough, likely, budget }: ChanceView): ChanceRow[] {
  const rows: ChanceRow[] = [
    ...LISTED.map((chance) => ({ chance, cost: costAt(points, chance), which: null })),
    { chance: enough.share, cost: enough.cost, which: 'enough' as const },
    { chance: likely.atMost, cost: likely.cost, which: 'likely' as const },
    ...(budget === null ? [] : [{ chance: budget.chance, cost: budget.amount, which: 'budget' as const }]),
  ];
  return rows.sort((a, b) => a.cost - b.cost || a.chance - b.chance);
}
