import type { Instance, Item, Point } from '../../solve/instance.ts';
import { evaluate } from '../../solve/model/penalty.ts';

const PUTTER = 'putter';

/**
 * Whether the weights alone make the plan leave good clubs at home. A gap is weighed by its longer club, so where
 * weights rise towards the short end, leaving out the clubs above a wide gap moves all of it to a lighter weight. True
 * when the plan (the instance's) leaves out a club for nothing that, at equal weights, would make its bag better.
 */
export function rewardsLeavingOut(instance: Instance, plan: Point | null, equalWeight: number): boolean {
  if (plan === null) return false;
  const kept = new Set(plan.items);
  const out = instance.items.filter((item) => isLeftForNothing(item) && !kept.has(item.id));
  const equal: Instance = {
    ...instance,
    bands: instance.bands.map((band) => ({ ...band, wideWeight: equalWeight })),
  };
  const before = evaluate(equal, plan.items).penalty;
  const betterWith = (items: readonly Item[]) => {
    const bag = evaluate(equal, [...plan.items, ...items.map((item) => item.id)]);
    return bag.legal && bag.penalty < before;
  };
  return out.some((item) => betterWith([item])) || betterWith(out);
}

/** An owned ladder club that brings no money when it is left out. */
function isLeftForNothing({ origin, kind, resale, lot }: Item): boolean {
  return origin === 'owned' && kind !== PUTTER && resale === 0 && lot === null;
}
