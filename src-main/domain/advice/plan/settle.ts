import { MOST_CLUBS } from '../../bag/conventions.ts';
import type { Changes } from './changes.ts';
import type { Finding } from '../finding.ts';
import type { Status } from './status.ts';
import type { BagView } from '../bag-view/view.ts';

/**
 * What only the plan can tell: which of a crowded pair goes, which clubs of too many, whether anything is bought.
 * While an open question decides what is worth buying, nobody can say that nothing is.
 */
export function settleFindings(
  view: BagView,
  findings: readonly Finding[],
  changes: Changes,
  status: Status,
): Finding[] {
  const buysNothing = changes.purchases.length === 0 && status !== 'ask-first';
  return findings
    .filter((finding) => finding.kind !== 'nothing-needed' || buysNothing)
    .map((finding) => {
      if (finding.kind === 'crowded-pair') return settleCrowded(view, finding, changes);
      if (finding.kind === 'nothing-needed' && changes.leftOut.length > 0) {
        return { ...finding, text: view.words.nothingToBuy() };
      }
      if (finding.kind === 'count') return settleCount(view, finding, changes);
      return finding;
    });
}

function settleCrowded(view: BagView, finding: Finding, { leftOut }: Changes): Finding {
  const out = finding.clubs.filter((id) => leftOut.includes(id));
  const pair = view.pairs.find(
    ({ longer, shorter }) => longer.clubId === finding.clubs[0] && shorter.clubId === finding.clubs[1],
  );
  if (out.length === 0 || !pair) return finding;
  return {
    ...finding,
    verdict: 'drop',
    text: view.words.crowdedDrop({
      longer: view.name(pair.longer.clubId),
      shorter: view.name(pair.shorter.clubId),
      gap: view.reader.distanceText(pair.gapYd),
      limit: view.reader.distanceText(pair.crowdedYd),
      dropped: out.map(view.name).join(', '),
    }),
  };
}

function settleCount(view: BagView, finding: Finding, { leftOut }: Changes): Finding {
  return {
    ...finding,
    clubs: [...leftOut],
    text: view.words.count({
      count: view.bag.clubs.length,
      most: MOST_CLUBS,
      dropped: leftOut.map(view.name).join(', '),
    }),
  };
}
