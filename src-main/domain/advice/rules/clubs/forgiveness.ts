import { leastTiers, recommendedTier } from '../../../bag/conventions.ts';
import { handicapFigure, handicapText } from '../../../bag/handicap.ts';
import type { Club, Tier } from '../../../bag/types.ts';
import { playingKind } from '../../../player/families.ts';
import type { Finding } from '../../finding.ts';
import type { BagView } from '../../bag-view/view.ts';
import type { Rule } from '../rule.ts';

/** Clubs that are told of together: of one kind and tier. */
type Group = { kind: keyof BagView['least']; tier: Tier; clubs: Club[] };

/** Unlocked clubs below the least tier for the handicap; a set is one finding. Unknown tiers tell nothing. */
export const forgiveness: Rule = (view) => {
  const groups = new Map<string, Group>();
  for (const club of view.bag.clubs) {
    const kind = playingKind(club);
    const tier = club.forgiveness;
    if (kind === 'putter' || kind === 'wedge' || tier === undefined || club.goTo === true) continue;
    if (tier >= view.least[kind]) continue;
    const key = club.set === undefined ? `club ${club.id}` : `set ${club.set} ${String(tier)}`;
    const group = groups.get(key) ?? { kind, tier, clubs: [] };
    group.clubs.push(club);
    groups.set(key, group);
  }
  return [...groups.values()].map((group) => findingOf(group, view));
};

function findingOf({ kind, tier, clubs }: Group, view: BagView): Finding {
  const { bag, least, name, reader, words } = view;
  const needed = least[kind];
  const { handicap, targetHandicap: target = handicap } = bag.player;
  // It fell short of where the handicap is going within reason; further on, a better player is forgiven less.
  const waits = tier >= leastTiers(recommendedTier(target, view.conventions))[kind];
  const names = clubs.map((club) => name(club.id)).join(', ');
  return {
    kind: 'forgiveness',
    clubs: clubs.map((club) => club.id),
    severity: needed - tier >= 2 ? 3 : 2,
    verdict: waits ? 'wait' : 'replace',
    text: waits
      ? words.forgivenessWaits({ clubs: names, target: handicapText(target, reader.numberText) })
      : words.forgiveness({
          clubs: names,
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
