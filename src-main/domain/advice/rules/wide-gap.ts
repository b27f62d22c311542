import { freePlaces } from '../view.ts';
import { pairEvidence } from './pair-evidence.ts';
import type { Rule } from './rule.ts';

/** A gap this much beyond its limit is acted on first: `common practice, no source`. */
const URGENT_SHARE = 1.5;

/** Neighbours too far apart, and sure enough. With a free place a club can be added, else one is replaced. */
export const wideGap: Rule = (view) => {
  const { pairs, name, reader, words } = view;
  return pairs
    .filter((pair) => pair.state === 'wide')
    .map((pair) => ({
      kind: 'wide-gap',
      clubs: [pair.longer.clubId, pair.shorter.clubId],
      severity: pair.gapYd >= URGENT_SHARE * pair.wideYd ? 3 : 2,
      verdict: freePlaces(view) > 0 ? 'add' : 'replace',
      text: words.wideGap({
        longer: name(pair.longer.clubId),
        shorter: name(pair.shorter.clubId),
        gap: reader.distanceText(pair.gapYd),
        limit: reader.distanceText(pair.wideYd),
      }),
      evidence: pairEvidence(view, pair, pair.wideYd),
    }));
};
