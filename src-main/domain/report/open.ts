import type { Finding } from '../advice/finding.ts';
import { asksForMoney } from '../advice/finding.ts';
import { pairsOf } from '../advice/bag-view/view.ts';
import { namedLadder, type Context } from './context.ts';

export type OpenGap = { longer: string; shorter: string; gapYd: number; limitYd: number };

/** The gaps that are surely wide after the plan's first stage, longest clubs first. */
export function openGaps(context: Context): OpenGap[] {
  const after = namedLadder(context, context.advice.afterLadder);
  const name = (id: string) => after.find(({ clubId }) => clubId === id)?.name ?? '';
  return pairsOf(after, context.advice.view.limits)
    .filter(({ state }) => state === 'wide')
    .map(({ longer, shorter, gapYd, wideYd }) => ({
      longer: name(longer.clubId),
      shorter: name(shorter.clubId),
      gapYd,
      limitYd: wideYd,
    }));
}

/** Whether no stage of the plan takes out the clubs of a finding that asks money for another reason than a gap. */
export function staysOpen({ advice }: Context, finding: Finding): boolean {
  if (!asksForMoney(finding) || finding.kind === 'wide-gap' || finding.kind === 'wedge-shortage')
    return false;
  const leaves = new Set(advice.swaps.flatMap(({ action, clubId }) => (action === 'buy' ? [] : [clubId])));
  return finding.clubs.some((id) => !leaves.has(id));
}
