import {
  bestWithin,
  cheapestCleanOf,
  cheapestWithinOf,
  frontierOf,
  planWithin,
  todayOf,
} from './frontier.ts';
import { headlineOf } from './headline.ts';
import { type Hooks, Watch } from './hooks.ts';
import type { Instance, Point, Solution } from './instance.ts';
import { layOut } from './model/ladder.ts';
import { NO_LIMIT } from './bounds/region.ts';
import { requireInstance } from './model/validate.ts';
import { walkAwayOf } from './walk-away.ts';

export { headlineOf, MENDED, NEEDS_MENDING } from './headline.ts';
export { type Hooks, SolveStopped } from './hooks.ts';
export type { Band, FirstPair, Instance, Item, Lot, Origin, Point, Solution } from './instance.ts';
export { evaluate, type Verdict } from './model/penalty.ts';
export { DEFAULT_LIMIT, readInstance } from './model/read.ts';
export { InstanceError, type Refusal } from './model/refusal.ts';
export { checkInstance } from './model/validate.ts';

/**
 * All answers of DESIGN §8, each proven.
 * @throws InstanceError when the instance is refused, SolveStopped when a hook ends the solve
 */
export const solve = (instance: Instance, hooks: Hooks = {}): Solution => {
  requireInstance(instance);
  const watch = new Watch(hooks);
  return answersOn(instance, frontierOf(layOut(instance), watch), watch);
};

/**
 * The same where the instance's curve is known already. Throws as `solve` does.
 * @param frontier as `frontier` gives it
 */
export const solveOn = (instance: Instance, frontier: Point[], hooks: Hooks = {}): Solution =>
  answersOn(instance, frontier, new Watch(hooks));

/**
 * The same without walk-away prices, which alone need more solves.
 * @param frontier as `frontier` gives it
 */
export const planOn = (instance: Instance, frontier: Point[]): Solution => {
  const today = todayOf(instance);
  const last = frontier.at(-1);
  return {
    today,
    cheapestClean: last?.penalty === 0 ? last : null,
    bestWithinBudget: bestWithin(frontier, instance.budget),
    headline: headlineOf(frontier, today, instance.budget),
    frontier,
    walkAway: {},
  };
};

const answersOn = (instance: Instance, frontier: Point[], watch: Watch): Solution => {
  const plan = planOn(instance, frontier);
  const { headline } = plan;
  return headline === null ? plan : { ...plan, walkAway: walkAwayOf(instance, frontier, headline, watch) };
};

/**
 * Walk-away prices of what a point of the curve buys (DESIGN §8). Throws as `solve` does.
 * @param frontier as `frontier` gives it
 */
export const walkAways = (
  instance: Instance,
  frontier: readonly Point[],
  plan: Point,
  hooks: Hooks = {},
): Record<string, number | null> => walkAwayOf(instance, frontier, plan, new Watch(hooks));

/** The spend curve alone: every nondominated (cost, penalty), by rising cost. Throws as `solve` does. */
export const frontier = (instance: Instance, hooks: Hooks = {}): Point[] => {
  requireInstance(instance);
  return frontierOf(layOut(instance), new Watch(hooks));
};

/** The clean bag of least (cost, changes) alone; null when there is none. Throws as `solve` does. */
export const cheapestClean = (instance: Instance, hooks: Hooks = {}): Point | null => {
  requireInstance(instance);
  return cheapestCleanOf(layOut(instance), new Watch(hooks));
};

/**
 * The first point of the curve with at most `penalty` alone; null when there is none that costs at most `mostCost`.
 * Throws as `solve` does.
 * @param curve the spend curve of a question like this one, which says where to look first; may be empty
 */
export const cheapestWithin = (
  instance: Instance,
  asked: { penalty: number; mostCost?: number },
  curve: readonly Point[] = [],
  hooks: Hooks = {},
): Point | null => {
  requireInstance(instance);
  const { penalty, mostCost = NO_LIMIT } = asked;
  return cheapestWithinOf(layOut(instance), { penalty, mostCost }, curve, new Watch(hooks));
};

/** The bag of least (penalty, cost, changes) within budget alone. Throws as `solve` does. */
export const bestWithinBudget = (instance: Instance, hooks: Hooks = {}): Point | null =>
  bestWithin(frontier(instance, hooks), instance.budget);

/**
 * The plan (DESIGN §8) alone, much sooner than by its curve. Throws as `solve` does.
 * @param curve the spend curve of a question like this one, which says where to look first; may be empty
 */
export const headline = (
  instance: Instance,
  hooks: Hooks = {},
  curve: readonly Point[] = [],
): Point | null => {
  requireInstance(instance);
  const today = todayOf(instance);
  const { budget } = instance;
  // Without a bag today the curve's own beginning stands for it.
  if (today === null || (budget !== null && budget < 0)) {
    return headlineOf(frontier(instance, hooks), today, budget);
  }
  return planWithin(layOut(instance), { today, budget }, curve, new Watch(hooks));
};
