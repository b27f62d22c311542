import type { Finding } from '../finding.ts';
import type { BagView } from '../view.ts';
import { count } from './count.ts';
import { crowdedPair } from './crowded-pair.ts';
import { forgiveness } from './forgiveness.ts';
import { goTo } from './go-to.ts';
import { nothingNeeded } from './nothing-needed.ts';
import { pain } from './pain.ts';
import type { Rule } from './rule.ts';
import { tooLittleData } from './too-little-data.ts';
import { unsureGap } from './unsure-gap.ts';
import { wideGap } from './wide-gap.ts';

/** The rules in the order in which their findings are told: safety, cannot tell, (technique), bag. */
const RULES: readonly Rule[] = [
  pain,
  tooLittleData,
  unsureGap,
  count,
  wideGap,
  forgiveness,
  crowdedPair,
  goTo,
];

/** Every finding of a bag, before the plan is known. */
export function findAll(view: BagView): Finding[] {
  const found = RULES.flatMap((rule) => rule(view));
  return [...found, ...nothingNeeded(view, found)];
}
