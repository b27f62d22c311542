import type { BagView, Pair } from '../../bag-view/view.ts';
import { freePlaces } from '../../bag-view/view.ts';
import { clubShortName } from '../../../player/typical-loft.ts';
import { pairEvidence } from './pair-evidence.ts';
import type { Rule } from '../rule.ts';

/** A club of this loft (degrees) or more is at or below the pitching wedge. Common practice, no source. */
const PITCHING_DEG = 43;

/** Whether a pair lies below the pitching wedge: its longer club is that wedge or a shorter one. */
export function isBelowPitching(view: Pick<BagView, 'club'>, pair: Pair): boolean {
  if (pair.longer.kind === 'wedge') return true;
  const club = view.club(pair.longer.clubId);
  return clubShortName(club) === 'pw' || (pair.longer.loftDeg ?? 0) >= PITCHING_DEG;
}

/** A wide gap below the pitching wedge, where the shots of 40 to 100 yd lie: add. */
export const wedgeShortage: Rule = (view) => {
  const { pairs, name, reader, words } = view;
  return pairs
    .filter((pair) => pair.state === 'wide' && isBelowPitching(view, pair))
    .map((pair) => ({
      kind: 'wedge-shortage',
      clubs: [pair.longer.clubId, pair.shorter.clubId],
      severity: 3,
      verdict: freePlaces(view) > 0 ? 'add' : 'replace',
      text: words.wedgeShortage({
        longer: name(pair.longer.clubId),
        shorter: name(pair.shorter.clubId),
        gap: reader.distanceText(pair.gapYd),
        limit: reader.distanceText(pair.wideYd),
      }),
      evidence: pairEvidence(view, pair, pair.wideYd),
    }));
};
