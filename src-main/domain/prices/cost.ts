import type { Archetype, Costs, PriceBand } from '../bag/types.ts';

/** Whole minor units of `percent` of an amount, rounded half up. */
export function percentOf(amountMinor: number, percent: number): number {
  // Percent may have digits (12.9): reckon in millionths, so that .5 stays .5.
  return Math.floor((amountMinor * Math.round(percent * 1e6)) / 1e8 + 0.5 + 1e-9);
}

/** What a purchase takes out of the purse: the club at its likely price, delivery once, a grip for each member. */
export function purchaseMinor(band: PriceBand, archetype: Archetype, costs: Costs): number {
  return band.likelyMinor + extrasMinor(archetype, costs);
}

/** Delivery and grips of one purchase. */
export function extrasMinor(archetype: Archetype, costs: Costs): number {
  return costs.deliveryMinor + costs.regripMinor * (archetype.members?.length ?? 1);
}

/** What a sale brings: likely less fee and postage, at least 0; 0 for what is not offered for sale. */
export function resaleMinor(sell: PriceBand | undefined, costs: Costs): number {
  if (!sell) return 0;
  return Math.max(
    0,
    sell.likelyMinor - percentOf(sell.likelyMinor, costs.sellFeePercent) - costs.sellPostageMinor,
  );
}
