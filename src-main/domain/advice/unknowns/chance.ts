import { amountAtChance, spreadOf, type Part, type Spread } from '../../prices/chance.ts';
import { evaluate } from '../../solve/model/penalty.ts';
import type { Built } from '../../solve/build/instance.ts';
import type { BagView } from '../bag-view/view.ts';
import { purchasesOf } from '../../solve/model/purchases.ts';
import type { PriceBand } from '../../bag/types.ts';

/** The chance at which an amount is called enough: four times in five. Own choice, no source. */
export const ENOUGH_CHANCE = 0.8;

/** Spaces of the curve that a window draws; finer ones cannot be seen. */
const CURVE_SPACES = 40;

/** What a plan may cost, minor units. `points` rise evenly from the least to the most; `atMost` is 0 to 1. */
export type CostSpread = {
  lowMinor: number;
  highMinor: number;
  /** Enough with a chance of `ENOUGH_CHANCE`. */
  enoughMinor: number;
  points: { minor: number; atMost: number }[];
};

/** `chanceInBudget` is null without a budget; `spread` where no price of a club has any part in the cost. */
export type PlanCost = { chanceInBudget: number | null; spread: CostSpread | null };

/**
 * What a plan may cost, and the chance that it fits the budget, when each price is a band (PERT, λ 4, independent, one
 * draw a set) and not its likely value. Fees on sales are taken as a share.
 */
export function planCost(view: BagView, built: Built, items: readonly string[]): PlanCost {
  const parts = costParts(view, built, items);
  const spread = spreadOf(parts);
  const { budget } = built.instance;
  return {
    chanceInBudget: budget === null ? null : rounded(spread.atMost(budget)),
    spread: parts.some((part) => part.kind === 'band') ? curveOf(spread) : null,
  };
}

function curveOf(spread: Spread): CostSpread {
  const [lowMinor, highMinor] = [Math.round(spread.lowMinor), Math.round(spread.highMinor)];
  const minors = Array.from({ length: CURVE_SPACES + 1 }, (_, i) =>
    Math.round(lowMinor + ((highMinor - lowMinor) * i) / CURVE_SPACES),
  );
  return {
    lowMinor,
    highMinor,
    enoughMinor: amountAtChance(spread, ENOUGH_CHANCE),
    points: [...new Set(minors)].map((minor) => ({ minor, atMost: rounded(spread.atMost(minor)) })),
  };
}

const rounded = (chance: number) => Math.round(chance * 1000) / 1000;

/** A plan's cost in parts, on the budget's basis: what is bought, what is sold, and the sure rest. */
function costParts(view: BagView, built: Built, items: readonly string[]): Part[] {
  const { instance } = built;
  const prices = new Map(view.bag.prices.map((price) => [price.archetype, price.band]));
  const parts: Part[] = [];
  let likely = 0;
  const put = (band: PriceBand, factor: number) => {
    parts.push({ kind: 'band', band, factor });
    likely += factor * band.likelyMinor;
  };
  for (const id of purchasesOf(instance, items)) {
    const band = prices.get(built.candidates.get(id)?.archetype.id ?? '');
    if (band) put(band, 1);
  }
  if (instance.basis === 'net') {
    for (const band of soldBands(view, built, items)) put(band, -(1 - view.bag.costs.sellFeePercent / 100));
  }
  // Everything that is no band (delivery, grips, postage, rounding) is what the reckoned cost has beyond the bands.
  const sure = evaluate(instance, items).cost - likely;
  return [...parts, { kind: 'points', points: [{ minor: sure, chance: 1 }] }];
}

/** Bands of what is sold: whole sets once, else each club that is left out and brings something. */
function soldBands(view: BagView, { instance }: Built, items: readonly string[]): PriceBand[] {
  const kept = new Set(items);
  const out = view.bag.clubs.filter(
    (club) => !kept.has(`own:${club.id}`) && instance.items.some((item) => item.id === `own:${club.id}`),
  );
  const gone = new Set(out.map((club) => club.id));
  const sets = view.bag.sets.filter(
    (set) =>
      set.sell !== undefined && view.bag.clubs.every((club) => club.set !== set.id || gone.has(club.id)),
  );
  const inSet = new Set(sets.map((set) => set.id));
  const singles = out.filter((club) => club.set === undefined || !inSet.has(club.set));
  const resale = new Map(instance.items.map((item) => [item.id, item.resale]));
  return [
    ...sets.flatMap((set) => (set.sell ? [set.sell] : [])),
    ...singles.flatMap((club) => (club.sell && (resale.get(`own:${club.id}`) ?? 0) > 0 ? [club.sell] : [])),
  ];
}
