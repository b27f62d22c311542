import { MOST_CLUBS } from '../../bag/conventions.ts';
import type { ArchetypePrice } from '../../bag/types.ts';
import type { Rung } from '../../player/ladder/ladder.ts';
import { playingKind } from '../../player/families.ts';
import { extrasMinor } from '../../prices/cost.ts';
import type { Changes, Purchase } from './changes.ts';
import type { BagView } from '../bag-view/view.ts';

/** One line of a plan. Money in minor units; `price` is the club alone at its likely price. */
export type Swap = {
  action: 'buy' | 'drop' | 'sell';
  clubId?: string;
  archetype?: string;
  inPlaceOf?: string[];
  why: string;
  priceMinor?: number;
  walkAwayMinor?: number | null;
  stage: string;
};

/** Purchases first, longest club first; then each club that leaves the bag, in ladder order. */
export function swapsOf(
  view: BagView,
  changes: Changes,
  walkAway: Readonly<Record<string, number | null>>,
  stage: string,
): Swap[] {
  const prices = new Map(view.bag.prices.map((price) => [price.archetype, price]));
  return [
    ...changes.purchases.map((purchase) => buyLine(view, changes, purchase, prices, walkAway, stage)),
    ...changes.leftOut.map((clubId) => leavingLine(view, changes, clubId, stage)),
  ];
}

function buyLine(
  view: BagView,
  changes: Changes,
  purchase: Purchase,
  prices: ReadonlyMap<string, ArchetypePrice>,
  walkAway: Readonly<Record<string, number | null>>,
  stage: string,
): Swap {
  const { archetype } = purchase.candidate;
  const band = prices.get(archetype.id)?.band;
  const worth = walkAway[purchase.id];
  return {
    action: 'buy',
    archetype: archetype.id,
    inPlaceOf: purchase.inPlaceOf,
    why: whyBuy(view, changes, purchase),
    ...(band ? { priceMinor: band.likelyMinor } : {}),
    ...(band && worth !== undefined
      ? {
          walkAwayMinor:
            worth === null
              ? null
              : Math.max(0, Math.min(worth - extrasMinor(archetype, view.bag.costs), band.highMinor)),
        }
      : {}),
    stage,
  };
}

/** The gap of today's ladder that the purchase mends, else the tier it lifts, else the place it takes. */
function whyBuy(view: BagView, changes: Changes, purchase: Purchase): string {
  const { words, reader, name } = view;
  const archetype = words.archetypeName(purchase.candidate.archetype);
  const clubs = purchase.inPlaceOf.map(name).join(', ');
  for (const rung of purchase.rungs) {
    const pair = view.pairs.find(
      ({ state, longer, shorter }) =>
        (state === 'wide' || state === 'unsure-wide') &&
        rung.carryYd < longer.carryYd &&
        rung.carryYd > shorter.carryYd,
    );
    if (!pair) continue;
    const { above, below } = gapsAround(changes.after, rung);
    return words.swap.fillsGap({
      archetype,
      longer: name(pair.longer.clubId),
      shorter: name(pair.shorter.clubId),
      before: reader.distanceText(pair.gapYd),
      above: reader.distanceText(above),
      below: reader.distanceText(below),
    });
  }
  if (purchase.inPlaceOf.some((clubId) => isBelowTier(view, clubId))) {
    return words.swap.moreForgiving({ archetype, clubs });
  }
  const [first] = purchase.rungs;
  const last = purchase.rungs.at(-1);
  if (first && first.clubId === changes.after[0]?.clubId && first.carryYd > (view.ladder[0]?.carryYd ?? 0)) {
    return words.swap.topEnd({ archetype, carry: reader.distanceText(first.carryYd) });
  }
  if (
    last &&
    last.clubId === changes.after.at(-1)?.clubId &&
    last.carryYd < (view.ladder.at(-1)?.carryYd ?? Infinity)
  ) {
    return words.swap.bottomEnd({ archetype, carry: reader.distanceText(last.carryYd) });
  }
  return clubs === '' ? words.swap.evensSet({ archetype }) : words.swap.takesPlaceOf({ archetype, clubs });
}

function gapsAround(after: readonly Rung[], rung: Rung): { above: number; below: number } {
  const at = after.findIndex((one) => one.clubId === rung.clubId);
  const above = after[at - 1];
  const below = after[at + 1];
  return {
    above: above ? above.carryYd - rung.carryYd : 0,
    below: below ? rung.carryYd - below.carryYd : 0,
  };
}

function isBelowTier(view: BagView, clubId: string): boolean {
  const club = view.club(clubId);
  const kind = playingKind(club);
  if (kind === 'putter' || kind === 'wedge' || club.forgiveness === undefined) return false;
  return club.forgiveness < view.least[kind];
}

/** A club that leaves: sold when a price is asked for it (or its whole set), else just taken out. */
function leavingLine(view: BagView, changes: Changes, clubId: string, stage: string): Swap {
  const { words, reader } = view;
  const club = view.club(clubId);
  const set = view.bag.sets.find(({ id, sell }) => id === club.set && sell !== undefined);
  const wholeSet =
    set !== undefined &&
    view.bag.clubs.every((other) => other.set !== set.id || changes.leftOut.includes(other.id));
  const sold = wholeSet ? set.sell : club.sell;
  const price = sold && sold.likelyMinor > 0 ? sold : undefined;
  // A set brings its price once: it stands at the set's first club.
  const first = !wholeSet || view.bag.clubs.find((other) => other.set === set.id)?.id === clubId;
  const why = whyLeave(view, changes, clubId);
  return {
    action: price ? 'sell' : 'drop',
    clubId,
    why:
      price && first ? `${why} ${words.swap.soldToPay({ money: reader.moneyText(price.likelyMinor) })}` : why,
    ...(price && first ? { priceMinor: price.likelyMinor } : {}),
    stage,
  };
}

function whyLeave(view: BagView, changes: Changes, clubId: string): string {
  const { words, reader, name } = view;
  const by = changes.purchases.find((purchase) => purchase.inPlaceOf.includes(clubId));
  if (by) return words.swap.replaced({ by: words.archetypeName(by.candidate.archetype) });
  const pair = view.pairs.find(
    ({ state, longer, shorter }) =>
      state === 'crowded' && (longer.clubId === clubId || shorter.clubId === clubId),
  );
  if (pair) {
    const other = pair.longer.clubId === clubId ? pair.shorter.clubId : pair.longer.clubId;
    return words.swap.crowded({ neighbour: name(other), gap: reader.distanceText(pair.gapYd) });
  }
  return view.bag.clubs.length > MOST_CLUBS ? words.swap.overCount({ most: MOST_CLUBS }) : words.swap.spare();
}
