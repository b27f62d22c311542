import { SolveStopped, type Hooks } from './hooks.ts';
import { frontier, solve } from './index.ts';
import type { Instance, Solution } from './instance.ts';

/** What is known when the solve was ended by its limit. */
export type Unproven = {
  /** No legal bag within the budget has a penalty below this. */
  penaltyAtLeast: number;
};

export type Limited = { solution: Solution; unproven: Unproven | null };

/** Labels after which a solve is ended: a few seconds on a small machine. */
export const MOST_LABELS = 3_000_000;

/** Sets kept in the smaller question that stands in for one that is too hard. */
const FEWER_LOTS = 4;

/**
 * The exact answers; where the limit ends the search, the exact answers to a smaller question (the cheapest sets only),
 * which are legal bags of the whole one, and an honest bound for what they may miss: with every set taken apart and
 * given away, whose curve is fast and below any other.
 * @throws SolveStopped when `shouldStop` ended it.
 */
export function solveLimited(instance: Instance, hooks: Hooks = {}): Limited {
  const maxLabels = hooks.maxLabels ?? MOST_LABELS;
  try {
    return { solution: solve(instance, { ...hooks, maxLabels }), unproven: null };
  } catch (error) {
    if (!(error instanceof SolveStopped) || error.reason !== 'labels') throw error;
  }
  const { maxLabels: _labels, ...rest } = hooks;
  const relaxed = withFreeSets(instance);
  const within = frontier(relaxed, rest).filter(
    (point) => relaxed.budget === null || point.cost <= relaxed.budget,
  );
  return {
    solution: solve(withFewerSets(instance, FEWER_LOTS), rest),
    unproven: { penaltyAtLeast: within.at(-1)?.penalty ?? 0 },
  };
}

/** Every candidate set's members cost nothing, every owned set brings its price and its members' on top. */
function withFreeSets(instance: Instance): Instance {
  const gain = instance.lots
    .filter((lot) => lot.origin === 'owned')
    .reduce((sum, lot) => sum + lot.resale, 0);
  return {
    ...instance,
    items: instance.items.map((item) => ({ ...item, lot: null })),
    lots: [],
    budget: instance.budget === null ? null : instance.budget + gain,
  };
}

/** The owned sets, and of the candidate sets the cheapest; ties by id. */
function withFewerSets(instance: Instance, most: number): Instance {
  const kept = new Set(
    instance.lots
      .filter((lot) => lot.origin === 'candidate')
      .sort((a, b) => a.price - b.price || (a.id < b.id ? -1 : 1))
      .slice(0, most)
      .map((lot) => lot.id),
  );
  const stays = (lot: string | null, origin: 'owned' | 'candidate') =>
    origin === 'owned' || lot === null || kept.has(lot);
  return {
    ...instance,
    items: instance.items.filter((item) => stays(item.lot, item.origin)),
    lots: instance.lots.filter((lot) => stays(lot.id, lot.origin)),
  };
}
