import { leastTiers, recommendedTier } from '../../../bag/conventions.ts';
import { handicapFigure, handicapText } from '../../../bag/handicap.ts';
import type { Club } from '../../../bag/types.ts';
import { playingKind } from '../../../player/families.ts';
import type { Finding } from '../../finding.ts';
import type { BagView } from '../../bag-view/view.ts';
import { isImproving } from '../whole-bag/improving.ts';
import type { Rule } from '../rule.ts';

/** Unlocked clubs below the least tier for the handicap; a set is one finding. Unknown tiers tell nothing. */
export const forgiveness: Rule = (view) => {
  const groups = new Map<string, Club[]>();
  for (const club of view.bag.clubs) {
    const kind = playingKind(club);
    if (kind === 'putter' || kind === 'wedge' || club.forgiveness === undefined || club.goTo === true)
      continue;
    if (club.forgiveness >= view.least[kind]) continue;
    const key = club.set === undefined ? `club ${club.id}` : `set ${club.set} ${String(club.forgiveness)}`;
    groups.set(key, [...(groups.get(key) ?? []), club]);
  }
  return [...groups.values()].map((clubs) => findingOf(clubs, view));
};

function findingOf(clubs: readonly Club[], view: BagView): Finding {
  const { bag, least, name, reader, words } = view;
  const first = clubs[0];
  const kind = first ? playingKind(first) : 'iron';
  const tier = first?.forgiveness ?? 1;
  const needed = kind === 'putter' || kind === 'wedge' ? tier : least[kind];
  const { handicap, targetHandicap: target } = bag.player;
  const waits =
    isImproving(bag.player) &&
    kind !== 'putter' &&
    kind !== 'wedge' &&
    tier >= leastTiers(recommendedTier(target ?? handicap, view.conventions))[kind];
  return {
    kind: 'forgiveness',
    clubs: clubs.map((club) => club.id),
    severity: needed - tier >= 2 ? 3 : 2,
    verdict: waits ? 'wait' : 'replace',
    text: waits
      ? words.forgivenessWaits({
          clubs: clubs.map((club) => name(club.id)).join(', '),
          target: target === undefined ? '' : handicapText(target, reader.numberText),
        })
      : words.forgiveness({
          clubs: clubs.map((club) => name(club.id)).join(', '),
          tier: words.tierName(tier),
          least: words.tierName(needed),
          handicap: handicapText(handicap, reader.numberText),
        }),
    evidence: [
      { figure: words.figures.tier, value: tier, source: words.figures.playerSource },
      { figure: words.figures.leastTier, value: needed, source: view.tierSource },
      {
        figure: words.figures.handicap,
        value: handicapFigure(handicap, reader.numberText),
        source: words.figures.playerSource,
      },
    ],
  };
}
