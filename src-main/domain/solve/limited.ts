import { SolveStopped, type Hooks } from './hooks.ts';
import { frontier, solve, solveOn } from './index.ts';
import type { Instance, Point, Solution } from './instance.ts';
import { compareIds } from './model/order.ts';

/** What is known when the solve was ended by its limit. */
export type Unproven = {
  /** No legal bag within the budget has a penalty below this. */
  penaltyAtLeast: number;
};

/** A curve, whole or of a smaller question that stands in for the asked one, and that question. */
export type LimitedCurve = { instance: Instance; curve: Point[]; unproven: Unproven | null };

/** The answers to `instance`: the question asked, or the smaller one. */
export type Limited = { instance: Instance; solution: Solution; unproven: Unproven | null };

/** Labels after which a solve is ended: a few seconds on a small machine. */
export const MOST_LABELS = 3_000_000;

/** Sets kept in the smaller question that stands in for one that is too hard. */
const FEWER_LOTS = 4;

/**
 * The exact curve; where the limit ends the search, the exact curve of a smaller question (the cheapest sets only),
 * whose bags are legal bags of the whole one, and an honest bound for what they may miss: with every set taken apart
 * and given away, whose curve is fast and below any other.
 * @throws SolveStopped when `shouldStop` ended it.
 */
export function curveLimited(instance: Instance, hooks: Hooks = {}): LimitedCurve {
  const curve = withinLimit(() => frontier(instance, limited(hooks)));
  if (curve !== null) return { instance, curve, unproven: null };
  const smaller = withFewerSets(instance, FEWER_LOTS);
  return { instance: smaller, curve: frontier(smaller, unlimited(hooks)), unproven: bound(instance, hooks) };
}

/** All answers on such a curve. @throws SolveStopped when `shouldStop` ended it. */
export function solveLimited(
  instance: Instance,
  hooks: Hooks = {},
  known: LimitedCurve = curveLimited(instance, hooks),
): Limited {
  const { unproven } = known;
  const hooked = unproven === null ? limited(hooks) : unlimited(hooks);
  const solution = withinLimit(() => solveOn(known.instance, known.curve, hooked));
  if (solution !== null) return { instance: known.instance, solution, unproven };
  const smaller = withFewerSets(instance, FEWER_LOTS);
  return {
    instance: smaller,
    solution: solve(smaller, unlimited(hooks)),
    unproven: bound(instance, hooks),
  };
}

/** What the work gives; null when its label limit ended it. */
export function withinLimit<T>(work: () => T): T | null {
  try {
    return work();
  } catch (error) {
    if (error instanceof SolveStopped && error.reason === 'labels') return null;
    throw error;
  }
}

function limited(hooks: Hooks): Hooks {
  return { ...hooks, maxLabels: hooks.maxLabels ?? MOST_LABELS };
}

function unlimited({ maxLabels: _labels, ...rest }: Hooks): Hooks {
  return rest;
}

function bound(instance: Instance, hooks: Hooks): Unproven {
  const relaxed = withFreeSets(instance);
  const within = frontier(relaxed, unlimited(hooks)).filter(
    (point) => relaxed.budget === null || point.cost <= relaxed.budget,
  );
  return { penaltyAtLeast: within.at(-1)?.penalty ?? 0 };
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
      .sort((a, b) => a.price - b.price || compareIds(a.id, b.id))
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
