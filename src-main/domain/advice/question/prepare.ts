import { headlineOf, type Hooks } from '../../solve/index.ts';
import { todayOf } from '../../solve/frontier.ts';
import type { Point } from '../../solve/instance.ts';
import type { LimitedCurve } from '../../solve/limited.ts';
import { buildInstance, type Built } from '../../solve/build/instance.ts';
import { excusedPairs } from './excused.ts';
import type { Finding } from '../finding.ts';
import { knownCurve } from './known-curves.ts';
import { misfitsOf } from './misfits.ts';
import { needWeights } from './need-weights.ts';
import { rewardsLeavingOut } from './perverse.ts';
import { isImproving } from '../rules/whole-bag/improving.ts';
import { findAll } from '../rules/table.ts';
import { viewBag, type BagView, type ViewInput } from '../bag-view/view.ts';

/** The bag as the rules see it, what they find, the question in integers, and its curve, which its weights hang on. */
export type Prepared = { view: BagView; found: Finding[]; built: Built; limited: LimitedCurve };

/** @throws SolveStopped when a hook ends the solve. */
export function prepare(input: ViewInput, hooks: Hooks = {}): Prepared {
  const view = viewBag(input);
  const { bag, catalogue } = input;
  const { weights } = view.conventions;
  const question = {
    bag,
    model: view.model,
    ladder: view.ladder,
    catalogue,
    limits: view.limits,
    weights,
    least: view.least,
    excused: excusedPairs(view),
    ...misfitsOf(view),
    // What only adds forgiveness waits while the handicap falls.
    tierWeight: isImproving(bag.player) ? 0 : weights.tier,
  };
  const weighed = buildInstance({
    ...question,
    wideWeights: needWeights(view.need, view.ladder, weights.wide),
  });
  const found = findAll(view);
  const limited = knownCurve(weighed.instance, hooks);
  if (!rewardsLeavingOut(limited.instance, planOn(limited), weights.wide)) {
    return { view, found, built: weighed, limited };
  }
  const built = buildInstance({ ...question, wideWeights: [{ fromYd: 0, weight: weights.wide }] });
  return { view, found, built, limited: knownCurve(built.instance, hooks) };
}

function planOn({ instance, curve }: LimitedCurve): Point | null {
  return headlineOf(curve, todayOf(instance), instance.budget);
}
