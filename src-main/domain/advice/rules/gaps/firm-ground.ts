import type { BagView } from '../../bag-view/view.ts';
import type { Rule } from '../rule.ts';

/** Driver and longest fairway wood this close in carry (yd) are normal on firm ground. Common practice, no source. */
const CLOSE_YD = 10;

/** The driver and the longest fairway wood, when firm ground or a flighted ball excuses them. */
export function excusedByGround({ bag, ladder }: Pick<BagView, 'bag' | 'ladder'>): [string, string] | null {
  if (bag.player.ground !== 'firm' && bag.player.flighted !== true) return null;
  const driver = ladder.find((rung) => rung.kind === 'driver');
  const wood = ladder.find((rung) => rung.kind === 'fairway');
  if (!driver || !wood || Math.abs(driver.carryYd - wood.carryYd) > CLOSE_YD) return null;
  return driver.carryYd >= wood.carryYd ? [driver.clubId, wood.clubId] : [wood.clubId, driver.clubId];
}

/** Firm or flighted, driver and longest wood alike in carry: normal, change nothing; the pair is excused. */
export const firmGround: Rule = (view) => {
  const pair = excusedByGround(view);
  if (!pair) return [];
  const { ladder, name, reader, words } = view;
  const carry = (id: string) => ladder.find((rung) => rung.clubId === id)?.carryYd ?? 0;
  const gapYd = carry(pair[0]) - carry(pair[1]);
  return [
    {
      kind: 'firm-ground',
      clubs: pair,
      severity: 1,
      verdict: 'keep',
      text: words.firmGround({
        longer: name(pair[0]),
        shorter: name(pair[1]),
        gap: reader.distanceText(gapYd),
      }),
      evidence: [
        { figure: words.figures.gap, value: reader.distance(gapYd), source: words.figures.ladderSource },
        { figure: words.figures.limit, value: reader.distance(CLOSE_YD), source: words.figures.practice },
      ],
    },
  ];
};
