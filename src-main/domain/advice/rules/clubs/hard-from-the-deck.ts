import { lowestFairwayLoft } from '../../../bag/conventions.ts';
import { handicapFigure } from '../../../bag/handicap.ts';
import type { BagView } from '../../bag-view/view.ts';
import type { Rule } from '../rule.ts';

/** A fairway wood below this loft (degrees) is the one in question; above this handicap it is hard at any speed. */
const LOW_LOFT_DEG = 17; // common practice, no source
const HIGH_HANDICAP = 20.4; // common practice, no source

/** Fairway woods that this player is unlikely to lift off the ground; go-to clubs prove the contrary. */
export function hardWoods({ bag, ladder, model }: Pick<BagView, 'bag' | 'ladder' | 'model'>): string[] {
  const speed = model.driverSpeedMph;
  if (speed === null) return [];
  const keep = new Set(bag.clubs.filter((club) => club.goTo === true).map((club) => club.id));
  return ladder
    .filter(({ kind, loftDeg, clubId }) => {
      if (kind !== 'fairway' || loftDeg === undefined || loftDeg >= LOW_LOFT_DEG || keep.has(clubId))
        return false;
      return loftDeg < lowestFairwayLoft(speed) || bag.player.handicap > HIGH_HANDICAP;
    })
    .map(({ clubId }) => clubId);
}

/** A strong fairway wood at low speed or high handicap: a higher-lofted wood or a hybrid does the job. */
export const hardFromTheDeck: Rule = (view) => {
  const { bag, model, ladder, name, reader, words } = view;
  return hardWoods(view).map((id) => {
    const rung = ladder.find((one) => one.clubId === id);
    return {
      kind: 'hard-from-the-deck',
      clubs: [id],
      severity: 2,
      verdict: 'replace',
      text: words.hardFromTheDeck({ club: name(id) }),
      evidence: [
        {
          figure: words.figures.loft,
          value: rung?.loftDeg ?? 0,
          source: rung?.loftAssumed === true ? words.figures.typical : words.figures.playerSource,
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
    };
  });
};
