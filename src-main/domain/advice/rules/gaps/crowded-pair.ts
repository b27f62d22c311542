import type { Rule } from '../rule.ts';
import { pairEvidence } from './pair-evidence.ts';

/** Neighbours too close, and sure enough. Which one goes, or why both stay, is settled when the plan is known. */
export const crowdedPair: Rule = (view) => {
  const { pairs, club, name, reader, words } = view;
  return pairs
    .filter((pair) => pair.state === 'crowded')
    .map((pair) => {
      const [longer, shorter] = [pair.longer.clubId, pair.shorter.clubId];
      const bothKept = club(longer).goTo === true && club(shorter).goTo === true;
      const figures = {
        longer: name(longer),
        shorter: name(shorter),
        gap: reader.distanceText(pair.gapYd),
        limit: reader.distanceText(pair.crowdedYd),
      };
      return {
        kind: 'crowded-pair',
        clubs: [longer, shorter],
        severity: pair.gapYd < pair.crowdedYd / 2 && !bothKept ? 2 : 1,
        verdict: 'keep',
        text: bothKept ? words.crowdedGoTo(figures) : words.crowdedKeep(figures),
        evidence: pairEvidence(view, pair, pair.crowdedYd),
      };
    });
};
