import type { BagView } from './bag-view/view.ts';
import type { Swap } from './plan/swaps.ts';

/** What the reader has to bear in mind with this plan; constant lines first to last by weight. */
export function cautionsOf(view: BagView, swaps: readonly Swap[]): string[] {
  const { words } = view;
  if (view.bag.player.pain === true) return [words.cautions.pain()];
  const { own } = view;
  const buys = swaps.some((swap) => swap.action === 'buy');
  return [
    ...(own.limits || own.tiers || own.weights ? [words.cautions.ownConventions(own)] : []),
    words.cautions.ranges(),
    ...(view.bag.prices.length > 0 ? [words.cautions.prices()] : []),
    ...(buys ? [words.cautions.usedClub(), words.cautions.work()] : []),
    words.cautions.rules(),
  ];
}
