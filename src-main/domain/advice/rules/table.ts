import { asksForMoney, type Finding } from '../finding.ts';
import type { BagView } from '../bag-view/view.ts';
import { bend } from './gaps/bend.ts';
import { checkConformity } from './clubs/check-conformity.ts';
import { count } from './whole-bag/count.ts';
import { crowdedPair } from './gaps/crowded-pair.ts';
import { driverBehindIrons } from './clubs/driver-behind-irons.ts';
import { driverLaunchSpin } from './clubs/driver-launch-spin.ts';
import { excusedByGround, firmGround } from './gaps/firm-ground.ts';
import { flex } from './clubs/flex.ts';
import { forgiveness } from './clubs/forgiveness.ts';
import { goTo } from './clubs/go-to.ts';
import { hardFromTheDeck } from './clubs/hard-from-the-deck.ts';
import { improving } from './whole-bag/improving.ts';
import { longEnd } from './gaps/long-end.ts';
import { longEndFallsOff } from './gaps/long-end-falls-off.ts';
import { nothingNeeded } from './whole-bag/nothing-needed.ts';
import { oneLength } from './clubs/one-length.ts';
import { pain } from './whole-bag/pain.ts';
import type { Rule } from './rule.ts';
import { strongLofts } from './clubs/strong-lofts.ts';
import { tooLittleData } from './whole-bag/too-little-data.ts';
import { unsureGap } from './gaps/unsure-gap.ts';
import { isBelowPitching, wedgeShortage } from './gaps/wedge-shortage.ts';
import { surplusWedges, wedgeSurplus } from './gaps/wedge-surplus.ts';
import { whyThisClub } from './clubs/why-this-club.ts';
import { wideGap } from './gaps/wide-gap.ts';

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
  const isThis = (a: string, b: string) => a === longer && b === shorter;
  switch (finding.kind) {
    case 'wide-gap':
      return view.pairs.some(
        (pair) => isThis(pair.longer.clubId, pair.shorter.clubId) && isBelowPitching(view, pair),
      );
    case 'crowded-pair':
    case 'unsure-gap': {
      const ground = excusedByGround(view);
      if (ground && isThis(ground[0].clubId, ground[1].clubId)) return true;
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
