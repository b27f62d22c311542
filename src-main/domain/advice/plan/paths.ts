import { leastTiers, recommendedTier } from '../../bag/conventions.ts';
import type { Built } from '../../solve/build/instance.ts';
import { headline as solveHeadline, headlineOf } from '../../solve/index.ts';
import type { Instance, Solution } from '../../solve/instance.ts';
import { evaluate } from '../../solve/model/penalty.ts';
import { laterStage } from '../../solve/stage.ts';
import type { Effort } from '../effort.ts';
import { isImproving } from '../rules/whole-bag/improving.ts';
import type { BagView } from '../bag-view/view.ts';

/** When a stage of a path comes. */
export type When =
  { kind: 'now' } | { kind: 'handicap'; atMost: number } | { kind: 'sale' } | { kind: 'season' };

/** One stage: the bag after it, what it costs (minor units), and what is then still wrong. */
export type Stage = {
  when: When;
  items: string[];
  cashMinor: number;
  netMinor: number;
  penalty: number;
};

/** A plan in stages. A: the headline now; B: the best within half the budget now, the rest later. */
export type Path = { name: 'A' | 'B'; stages: Stage[] };

/**
 * The two default paths. A stage is only there when it changes the bag, and never leaves it worse than the stage
 * before. Under cash before sales the money of a sale counts only from the stage after it.
 */
export function pathsOf(view: BagView, built: Built, solved: Solution, effort: Effort): Path[] {
  const { instance } = built;
  if (solved.headline === null) return [];
  const now = stageOf(instance, { kind: 'now' }, solved.headline.items);
  // The headline is all that is worth its money now; only a weight that comes back later adds to it.
  const a: Path = {
    name: 'A',
    stages: isImproving(view.bag.player) ? withLater(view, instance, now, effort) : [now],
  };
  if (instance.budget === null || instance.budget === 0) return [a];
  // A budget cuts no curve: half of it picks another point of the same one.
  const half = headlineOf(solved.frontier, solved.today, Math.floor(instance.budget / 2));
  if (half === null) return [a];
  const first = stageOf(instance, { kind: 'now' }, half.items);
  const b: Path = { name: 'B', stages: withLater(view, instance, first, effort) };
  return [a, b];
}

function stageOf(instance: Instance, when: When, items: readonly string[]): Stage {
  const cash = evaluate({ ...instance, basis: 'cash' }, items);
  const net = evaluate({ ...instance, basis: 'net' }, items);
  return { when, items: [...items], cashMinor: cash.cost, netMinor: net.cost, penalty: net.penalty };
}

/** Adds the stage that comes when the handicap is there, or when what was sold has brought its money. */
function withLater(view: BagView, instance: Instance, now: Stage, effort: Effort): Stage[] {
  const { player } = view.bag;
  const improving = isImproving(player);
  const then = player.targetHandicap ?? player.handicap;
  const when: When = improving
    ? { kind: 'handicap', atMost: then }
    : now.netMinor < now.cashMinor
      ? { kind: 'sale' }
      : { kind: 'season' };
  const left = instance.budget === null ? null : Math.max(0, instance.budget - now.netMinor);
  const later = laterStage(instance, {
    bag: now.items,
    budget: left,
    leastTier: { ...(improving ? leastTiers(recommendedTier(then, view.conventions)) : view.least) },
    tierWeight: view.conventions.weights.tier,
  });
  const before = evaluate(later, now.items);
  const point = effort.within(null, (hooks) => solveHeadline(later, hooks));
  if (point === null || point.penalty >= before.penalty || point.changes === 0) return [now];
  return [now, stageOf(later, when, point.items)];
}
