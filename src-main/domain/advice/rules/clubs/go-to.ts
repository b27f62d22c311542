import type { Rule } from '../rule.ts';

/** A club that the player marked is kept and never swapped. */
export const goTo: Rule = ({ bag, name, words }) =>
  bag.clubs
    .filter((club) => club.goTo === true)
    .map((club) => ({
      kind: 'go-to',
      clubs: [club.id],
      severity: 1,
      verdict: 'keep',
      text: words.goTo({ club: name(club.id) }),
      evidence: [],
    }));
