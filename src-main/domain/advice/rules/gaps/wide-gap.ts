import { gapNeed } from '../../../player/need/need.ts';
import { freePlaces, type BagView, type Pair } from '../../bag-view/view.ts';
import { needEvidence, pairEvidence } from './pair-evidence.ts';
import type { Rule } from '../rule.ts';

/** Shots a round that want what lies in the gap: from here it is acted on first, below the other it is a note. */
const OFTEN = 2; // common practice, no source
const RARELY = 0.3; // common practice, no source
/** Holes that "a round" stands for, whatever the course given has. */
const FULL_ROUND = 18;

/** Priority of a gap by how often the course asks for it; worth acting on where that is not known. */
export function gapSeverity({ need }: Pick<BagView, 'need'>, pair: Pair): 1 | 2 | 3 {
  if (need === null) return 2;
  const round = FULL_ROUND / need.assumption.holes;
  const shots = round * gapNeed(need, pair.longer.carryYd, pair.shorter.carryYd);
  return shots >= OFTEN ? 3 : shots < RARELY ? 1 : 2;
}

/** Neighbours too far apart, and sure enough. With a free place a club can be added, else one is replaced. */
export const wideGap: Rule = (view) => {
  const { pairs, name, reader, words } = view;
  return pairs
    .filter((pair) => pair.state === 'wide')
    .map((pair) => ({
      kind: 'wide-gap',
      clubs: [pair.longer.clubId, pair.shorter.clubId],
      severity: gapSeverity(view, pair),
      verdict: freePlaces(view) > 0 ? 'add' : 'replace',
      text: words.wideGap({
        longer: name(pair.longer.clubId),
        shorter: name(pair.shorter.clubId),
        gap: reader.distanceText(pair.gapYd),
        limit: reader.distanceText(pair.wideYd),
      }),
      evidence: [...pairEvidence(view, pair, pair.wideYd), ...needEvidence(view, pair)],
    }));
};
