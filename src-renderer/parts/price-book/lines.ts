import type { CallResult } from '../../../src-main/contract/calls/index.ts';
import type { BandAnswer } from '../../../src-main/contract/calls/money/prices.ts';
import type { CatalogueLine } from '../../state/prices/catalogue.svelte.ts';
import { searchCatalogue } from '../prices/archetype-search.ts';

type Other = CallResult<'prices.bands'>['otherCurrencies'][number];

/** A club of the catalogue with what is known of its price in the bag's currency, and in others. */
export type BookLine = {
  archetype: string;
  name: string;
  band: BandAnswer | undefined;
  others: { currency: string; notes: number }[];
};

const NONE: ReadonlySet<string> = new Set();

/**
 * With nothing typed, the clubs that have any note, in the catalogue's order; else what the words find in all of it.
 */
export function bookLines(
  catalogue: readonly CatalogueLine[],
  bands: readonly BandAnswer[],
  otherCurrencies: readonly Other[],
  typed: string,
): BookLine[] {
  const bandOf = new Map(bands.map((band) => [band.archetype, band]));
  const others = Map.groupBy(otherCurrencies, (other) => other.archetype);
  const found =
    typed.trim() === ''
      ? catalogue.filter(({ archetype: { id } }) => bandOf.has(id) || others.has(id))
      : searchCatalogue(catalogue, typed, NONE);
  return found.map(({ archetype: { id }, name }) => ({
    archetype: id,
    name,
    band: bandOf.get(id),
    others: byCurrency(others.get(id) ?? []),
  }));
}

function byCurrency(others: readonly Other[]): BookLine['others'] {
  const sums = new Map<string, number>();
  for (const { currency, notes } of others) sums.set(currency, (sums.get(currency) ?? 0) + notes);
  return [...sums].map(([currency, notes]) => ({ currency, notes }));
}
