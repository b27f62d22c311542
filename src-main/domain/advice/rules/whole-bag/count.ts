import { MOST_CLUBS } from '../../../bag/conventions.ts';
import type { Rule } from '../rule.ts';

/** More clubs than a round allows. Which ones go is settled when the plan is known. */
export const count: Rule = ({ bag, words }) => {
  const clubs = bag.clubs.length;
  if (clubs <= MOST_CLUBS) return [];
  return [
    {
      kind: 'count',
      clubs: [],
      severity: 3,
      verdict: 'drop',
      text: words.count({ count: clubs, most: MOST_CLUBS, dropped: '' }),
      evidence: [
        { figure: words.figures.clubs, value: clubs, source: words.figures.playerSource },
        { figure: words.figures.limit, value: MOST_CLUBS, source: words.figures.ruleSource },
      ],
    },
  ];
};
