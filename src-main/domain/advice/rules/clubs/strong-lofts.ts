import { clubShortName } from '../../../player/typical-loft.ts';
import type { Rule } from '../rule.ts';

/** A 7-iron below this loft (degrees) is strong. Common practice, no source (club-specs.json: strong 28–30.5). */
const STRONG_DEG = 29;

/** Strong irons: flyers are likelier, and wedges go by the PW's loft, never by the number on the sole. */
export const strongLofts: Rule = ({ bag, name, words }) =>
  bag.clubs
    .filter((club) => club.kind === 'iron' && clubShortName(club) === '7i')
    .filter(({ loftDeg = Infinity }) => loftDeg < STRONG_DEG)
    .slice(0, 1)
    .map((club) => ({
      kind: 'strong-lofts',
      clubs: [club.id],
      severity: 1,
      verdict: 'keep',
      text: words.strongLofts({ club: name(club.id), measured: club.loftMeasured === true }),
      evidence: [
        {
          figure: words.figures.loft,
          value: club.loftDeg ?? 0,
          source: club.loftMeasured === true ? words.source('measured') : words.figures.playerSource,
        },
        { figure: words.figures.limit, value: STRONG_DEG, source: words.figures.practice },
      ],
    }));
