import { walkAways, type Hooks } from '../../solve/index.ts';
import type { Instance, Point, Solution } from '../../solve/instance.ts';
import { evaluate } from '../../solve/model/penalty.ts';

/** A pick names a club that the bag, its prices and the catalogue do not have. */
export class PickGone extends Error {
  readonly item: string;
  constructor(item: string) {
    super(`there is no ${item} among the bag and its prices`);
    this.name = 'PickGone';
    this.item = item;
  }
}

/**
 * The answers told of a bag that was picked by hand instead of the plan. Its walk-away prices are reckoned where the
 * curve reaches its penalty for no less: elsewhere another plan wins at any price, and there are none.
 * @param asked the whole question, which has every item of the bag
 * @param answered the question that was answered, which may be a smaller one
 * @throws PickGone, and SolveStopped when a hook ends it
 */
export function answersOfPicked(
  asked: Instance,
  { instance, solution }: { instance: Instance; solution: Solution },
  items: readonly string[],
  hooks: Hooks,
): Solution {
  const had = new Set(asked.items.map(({ id }) => id));
  const gone = items.find((id) => !had.has(id));
  if (gone !== undefined) throw new PickGone(gone);
  const { cost, penalty, changes } = evaluate(asked, items);
  const picked: Point = { cost, penalty, changes, items: [...items].sort() };
  const known = new Set(instance.items.map(({ id }) => id));
  const least = solution.frontier.find((point) => point.penalty <= penalty);
  const isLeast = least !== undefined && cost <= least.cost && items.every((id) => known.has(id));
  return {
    ...solution,
    headline: picked,
    walkAway: isLeast ? walkAways(instance, solution.frontier, picked, hooks) : {},
  };
}
