/** How a used club looks, in our own words, best first. */
export const CONDITIONS = ['unmarked', 'light wear', 'played', 'worn', 'damaged'] as const;
export type Condition = (typeof CONDITIONS)[number];

export type ConditionFactors = Readonly<Record<Condition, number>>;

/** What the user may change of how notes become bands. */
export type PriceAssumptions = {
  /** A condition's price as a share of an unmarked club's used price. */
  factors: ConditionFactors;
  /** The condition that bands and walk-away prices speak of; a note without one is taken to be of it. */
  condition: Condition;
  /** A note older than this is stale: shown as such, and counted all the same. */
  staleDays: number;
  /** A note this much older than another counts half as much. */
  halfLifeDays: number;
};

/**
 * Factors: test/reference/data/market-defaults.json, common practice, no source. The other three: common practice,
 * no source; the half-life equals the stale limit, so that a note that has just gone stale counts half of a new one.
 */
export const DEFAULT_ASSUMPTIONS: PriceAssumptions = {
  factors: { unmarked: 1, 'light wear': 0.85, played: 0.72, worn: 0.55, damaged: 0.35 },
  condition: 'played',
  staleDays: 60,
  halfLifeDays: 60,
};

/** The price (minor units) of the same club in another condition, rounded half up. */
export function inCondition(
  priceMinor: number,
  from: Condition,
  to: Condition,
  factors: ConditionFactors,
): number {
  return from === to ? priceMinor : Math.round((priceMinor * factors[to]) / factors[from]);
}
