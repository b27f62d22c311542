import type { Rule } from '../rule.ts';

/** Reported pain stops all advice to buy. */
export const pain: Rule = ({ bag, words }) =>
  bag.player.pain === true
    ? [
        {
          kind: 'pain',
          clubs: [],
          severity: 3,
          verdict: 'stop',
          text: words.pain(),
          evidence: [],
        },
      ]
    : [];
