import { lowestFairwayLoft } from '../../../bag/conventions.ts';
import { handicapFigure } from '../../../bag/handicap.ts';
import type { Rung } from '../../../player/ladder/ladder.ts';
import type { BagView } from '../../bag-view/view.ts';
import type { Rule } from '../rule.ts';

/** A fairway wood below this loft (degrees) is the one in question; above this handicap it is hard at any speed. */
const LOW_LOFT_DEG = 17; // common practice, no source
const HIGH_HANDICAP = 20.4; // common practice, no source

/** Fairway woods that this player is unlikely to lift off the ground; go-to clubs prove the contrary. */
export function hardWoods({
  bag,
  ladder,
  model,
}: Pick<BagView, 'bag' | 'ladder' | 'model'>): (Rung & { loftDeg: number })[] {
  const speed = model.driverSpeedMph;
  if (speed === null) return [];
  const keep = new Set(bag.clubs.filter((club) => club.goTo === true).map((club) => club.id));
  return ladder.flatMap((rung) => {
    const { kind, loftDeg = Infinity, clubId } = rung;
    if (kind !== 'fairway' || loftDeg >= LOW_LOFT_DEG || keep.has(clubId)) return [];
    const isHard = loftDeg < lowestFairwayLoft(speed) || bag.player.handicap > HIGH_HANDICAP;
    return isHard ? [{ ...rung, loftDeg }] : [];
  });
}

/** A strong fairway wood at low speed or high handicap: a higher-lofted wood or a hybrid does the job. */
export const hardFromTheDeck: Rule = (view) => {
  const { bag, model, name, reader, words } = view;
  return hardWoods(view).map(({ clubId, loftDeg, loftAssumed }) => ({
    kind: 'hard-from-the-deck',
    clubs: [clubId],
    severity: 2,
    verdict: 'replace',
    text: words.hardFromTheDeck({ club: name(clubId) }),
    evidence: [
      {
        figure: words.figures.loft,
        value: loftDeg,
        source: loftAssumed === true ? words.figures.typical : words.figures.playerSource,
      },
      {
        figure: words.figures.speed,
        value: reader.speed(model.driverSpeedMph ?? 0),
        source: words.speedSource(model.speedFrom),
      },
      {
        figure: words.figures.handicap,
        value: handicapFigure(bag.player.handicap, reader.numberText),
        source: words.figures.playerSource,
      },
    ],
  }));
};
