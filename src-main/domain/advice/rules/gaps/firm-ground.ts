import type { Rung } from '../../../player/ladder/ladder.ts';
import type { BagView } from '../../bag-view/view.ts';
import type { Rule } from '../rule.ts';

/** Driver and longest fairway wood this close in carry (yd) are normal on firm ground. Common practice, no source. */
const CLOSE_YD = 10;

/** The driver and the longest fairway wood, when firm ground or a flighted ball excuses them. */
export function excusedByGround({
  bag,
  ladder,
}: Pick<BagView, 'bag' | 'ladder'>): [longer: Rung, shorter: Rung] | null {
  if (bag.player.ground !== 'firm' && bag.player.flighted !== true) return null;
  const driver = ladder.find((rung) => rung.kind === 'driver');
  const wood = ladder.find((rung) => rung.kind === 'fairway');
  if (!driver || !wood || Math.abs(driver.carryYd - wood.carryYd) > CLOSE_YD) return null;
  return driver.carryYd >= wood.carryYd ? [driver, wood] : [wood, driver];
}

/** Firm or flighted, driver and longest wood alike in carry: normal, change nothing; the pair is excused. */
export const firmGround: Rule = (view) => {
  const pair = excusedByGround(view);
  if (!pair) return [];
  const { name, reader, words } = view;
  const [longer, shorter] = pair;
  const gapYd = longer.carryYd - shorter.carryYd;
  return [
    {
      kind: 'firm-ground',
      clubs: [longer.clubId, shorter.clubId],
      severity: 1,
      verdict: 'keep',
      text: words.firmGround({
        longer: name(longer.clubId),
        shorter: name(shorter.clubId),
        gap: reader.distanceText(gapYd),
      }),
      evidence: [
        { figure: words.figures.gap, value: reader.distance(gapYd), source: words.figures.ladderSource },
        { figure: words.figures.limit, value: reader.distance(CLOSE_YD), source: words.figures.practice },
      ],
    },
  ];
};
