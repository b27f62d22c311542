import { MOST_CLUBS } from '../../../bag/conventions.ts';
import type { Rule } from '../rule.ts';

/** Expected uses in 18 holes below which a club has to say what it is for. Common practice, no source. */
const RARE_USES = 0.3;
const FULL_ROUND = 18;

/** A club that this course hardly asks for: low priority, unless the player knows what it is for. */
export const whyThisClub: Rule = ({ bag, ladder, need, name, reader, words }) => {
  if (need === null || need.fullShots === 0) return [];
  const round = FULL_ROUND / need.assumption.holes;
  const kept = new Set(bag.clubs.filter((club) => club.goTo === true).map((club) => club.id));
  return ladder
    .filter(({ clubId, kind }) => kind !== 'driver' && !kept.has(clubId))
    .map(({ clubId }) => ({ clubId, uses: (need.byClub.get(clubId) ?? 0) * round }))
    .filter(({ uses }) => uses < RARE_USES)
    .slice(0, MOST_CLUBS)
    .map(({ clubId, uses }) => ({
      kind: 'why-this-club',
      clubs: [clubId],
      severity: 1,
      verdict: 'keep',
      text: words.whyThisClub({ club: name(clubId), need: reader.numberText(uses, 1) }),
      evidence: [
        {
          figure: words.figures.need,
          value: Math.round(uses * 100) / 100,
          source: words.needSource(need.assumption),
        },
        { figure: words.figures.limit, value: RARE_USES, source: words.figures.practice },
      ],
    }));
};
