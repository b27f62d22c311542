import { chanceAtMost, type Part } from '../prices/chance.ts';
import { evaluate } from '../solve/penalty.ts';
import type { Built } from '../solve/build/instance.ts';
import type { BagView } from './view.ts';
import { purchasesOf } from '../solve/purchases.ts';
import type { PriceBand } from '../bag/types.ts';

/**
 * Chance that a plan fits the budget when each price is a band (PERT, λ 4, independent, one draw a set) and not its
 * likely value. Fees on sales are taken as a share. Null without a budget.
 */
export function chanceInBudget(view: BagView, built: Built, items: readonly string[]): number | null {
  const { instance } = built;
  if (instance.budget === null) return null;
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
  return (
    Math.round(
      chanceAtMost([...parts, { kind: 'points', points: [{ minor: sure, chance: 1 }] }], instance.budget) *
        1000,
    ) / 1000
  );
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
