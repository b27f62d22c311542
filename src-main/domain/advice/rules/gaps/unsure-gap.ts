import { pairEvidence } from './pair-evidence.ts';
import type { Rule } from '../rule.ts';

/** Beyond a limit, but not sure enough to act: measure first. */
export const unsureGap: Rule = (view) => {
  const { pairs, name, reader, words } = view;
  return pairs
    .filter((pair) => pair.state === 'unsure-wide' || pair.state === 'unsure-crowded')
    .map((pair) => {
      const limitYd = pair.state === 'unsure-wide' ? pair.wideYd : pair.crowdedYd;
      return {
        kind: 'unsure-gap',
        clubs: [pair.longer.clubId, pair.shorter.clubId],
        severity: 1,
        verdict: 'ask',
        text: words.unsureGap({
          longer: name(pair.longer.clubId),
          shorter: name(pair.shorter.clubId),
          gap: reader.distanceText(pair.gapYd),
          limit: reader.distanceText(limitYd),
          state: pair.state,
        }),
        evidence: pairEvidence(view, pair, limitYd),
      };
    });
};
