import { asksForMoney, type Finding } from '../finding.ts';
import type { BagView } from '../view.ts';
import { bend } from './bend.ts';
import { checkConformity } from './check-conformity.ts';
import { count } from './count.ts';
import { crowdedPair } from './crowded-pair.ts';
import { driverBehindIrons } from './driver-behind-irons.ts';
import { driverLaunchSpin } from './driver-launch-spin.ts';
import { excusedByGround, firmGround } from './firm-ground.ts';
import { flex } from './flex.ts';
import { forgiveness } from './forgiveness.ts';
import { goTo } from './go-to.ts';
import { hardFromTheDeck } from './hard-from-the-deck.ts';
import { improving } from './improving.ts';
import { longEnd } from './long-end.ts';
import { longEndFallsOff } from './long-end-falls-off.ts';
import { nothingNeeded } from './nothing-needed.ts';
import { oneLength } from './one-length.ts';
import { pain } from './pain.ts';
import type { Rule } from './rule.ts';
import { strongLofts } from './strong-lofts.ts';
import { tooLittleData } from './too-little-data.ts';
import { unsureGap } from './unsure-gap.ts';
import { isBelowPitching, wedgeShortage } from './wedge-shortage.ts';
import { surplusWedges, wedgeSurplus } from './wedge-surplus.ts';
import { whyThisClub } from './why-this-club.ts';
import { wideGap } from './wide-gap.ts';

/** The rules in the order in which their findings are told: safety, cannot tell, technique, bag, notes. */
const RULES: readonly Rule[] = [
  pain,
  tooLittleData,
  unsureGap,
  longEndFallsOff,
  driverBehindIrons,
  driverLaunchSpin,
  flex,
  count,
  wedgeShortage,
  wideGap,
  hardFromTheDeck,
  forgiveness,
  wedgeSurplus,
  crowdedPair,
  improving,
  bend,
  firmGround,
  strongLofts,
  oneLength,
  checkConformity,
  whyThisClub,
  goTo,
];

/** Every finding of a bag, before the plan is known; one finding a pair, the higher rank first. */
export function findAll(view: BagView): Finding[] {
  const all = RULES.flatMap((rule) => rule(view)).filter((finding) => !outranked(view, finding));
  const stopped = all.some((finding) => finding.verdict === 'stop');
  // Pain stops all advice to buy, in the findings too.
  const found = stopped ? all.filter((finding) => !asksForMoney(finding)) : all;
  return [...found, ...nothingNeeded(view, found)];
}

/** A pair that a more telling rule has spoken of is not told again as merely wide, crowded or unsure. */
function outranked(view: BagView, finding: Finding): boolean {
  const [longer, shorter] = finding.clubs;
  if (longer === undefined || shorter === undefined) return false;
  const isThis = (a: string, b: string) => a === longer && b === shorter;
  switch (finding.kind) {
    case 'wide-gap': {
      const pair = view.pairs.find((one) => isThis(one.longer.clubId, one.shorter.clubId));
      return pair !== undefined && isBelowPitching(view, pair);
    }
    case 'crowded-pair':
    case 'unsure-gap': {
      const ground = excusedByGround(view);
      if (ground && isThis(...ground)) return true;
      if (longEnd(view)?.pairs.some((pair) => isThis(pair.longer.clubId, pair.shorter.clubId))) return true;
      const narrow = view.pairs.some(
        (pair) => isThis(pair.longer.clubId, pair.shorter.clubId) && pair.state.endsWith('crowded'),
      );
      return narrow && surplusWedges(view).some(({ id }) => id === longer || id === shorter);
    }
    default:
      return false;
  }
}
