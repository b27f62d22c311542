import type { Rule } from '../rule.ts';

/**
 * Years from which newer limits bind what is made: spring effect of drivers 2008, grooves 2010 (Equipment Rules, from
 * memory; test/reference/data/rules.json). Older clubs may conform all the same: only the current lists say.
 */
const DRIVERS_FROM = 2009;
const GROOVES_FROM = 2010;

/** An old club whose year is known: check the governing body's current lists. */
export const checkConformity: Rule = ({ bag, name, words }) =>
  bag.clubs
    .filter(({ kind, yearMade = Infinity }) => {
      if (kind === 'driver') return yearMade < DRIVERS_FROM;
      return (kind === 'iron' || kind === 'wedge') && yearMade < GROOVES_FROM;
    })
    .map((club) => ({
      kind: 'check-conformity',
      clubs: [club.id],
      severity: 1,
      verdict: 'ask',
      text: words.checkConformity({ club: name(club.id) }),
      evidence: [
        {
          figure: words.figures.yearMade,
          value: String(club.yearMade ?? ''),
          source: words.figures.playerSource,
        },
      ],
    }));
