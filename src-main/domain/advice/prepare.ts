import { buildInstance, TIER_WEIGHT, WIDE_WEIGHT, type Built } from '../solve/build/instance.ts';
import { excusedPairs } from './excused.ts';
import type { Finding } from './finding.ts';
import { misfitsOf } from './misfits.ts';
import { needWeights } from './need-weights.ts';
import { rewardsLeavingOut } from './perverse.ts';
import { isImproving } from './rules/improving.ts';
import { findAll } from './rules/table.ts';
import { viewBag, type BagView, type ViewInput } from './view.ts';

/** All that is known before anything is solved: the bag as the rules see it, what they find, the question in integers. */
export type Prepared = { view: BagView; found: Finding[]; built: Built };

export function prepare(input: ViewInput): Prepared {
  const view = viewBag(input);
  const { bag, catalogue } = input;
  const question = {
    bag,
    model: view.model,
    ladder: view.ladder,
    catalogue,
    limits: view.limits,
    excused: excusedPairs(view),
    ...misfitsOf(view),
    // What only adds forgiveness waits while the handicap falls.
    tierWeight: isImproving(bag.player) ? 0 : TIER_WEIGHT,
  };
  const weighed = buildInstance({ ...question, wideWeights: needWeights(view.need, view.ladder) });
  const built = rewardsLeavingOut(weighed.instance, WIDE_WEIGHT)
    ? buildInstance({ ...question, wideWeights: [{ fromYd: 0, weight: WIDE_WEIGHT }] })
    : weighed;
  return { view, found: findAll(view), built };
}
