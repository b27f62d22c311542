import type { PriceBand } from '../bag/types.ts';
import { inCondition, type Condition, type PriceAssumptions } from './condition.ts';
import { markOutliers } from './outliers.ts';
import { lowerQuantile, upperQuantile, weightedMedian, type Weighed } from './weighted.ts';

/** One used price that somebody saw, all of one archetype and one currency. */
export type SeenPrice = {
  band: PriceBand;
  /** ISO date: when it was seen, else when it was written down. */
  onDate: string;
  condition?: Condition;
};

/** A note as it went into a band. */
export type WeighedNote = {
  /** In the condition that the band speaks of. */
  band: PriceBand;
  /** Its part of the whole, 0 to 1; 0 for an outlier. */
  share: number;
  /** Far from what most of the weight says: shown, and left out of the band. */
  outlier: boolean;
};

export type DerivedBand = {
  band: PriceBand;
  method: 'one' | 'two' | 'many';
  /** The newest day among the notes that count. */
  newestOn: string;
  /** Notes that count. */
  counted: number;
  /** In the order given. */
  notes: WeighedNote[];
};

/** Of many notes, this share of the weight may lie below low, and as much above high. Own choice, no source. */
const TAIL = 0.1;

/**
 * Price notes (minor units of one currency) → the PERT band that they stand for; null for no notes.
 *
 * Each note is first brought to one condition (`inCondition`). It weighs 2^(−age / half-life), the age counted from
 * the newest note, so that the day of asking changes nothing. Outliers (`markOutliers`) are marked and left out.
 * - one note: the band is the note;
 * - two: likely is their weighted mean; low the lower of the lows, high the higher of the highs, since two prices do
 *   not tell how far prices spread;
 * - three and more: likely is the weighted median of the likely prices, low the weighted 10 % quantile of the lows,
 *   high the 90 % quantile of the highs. Of three equal notes these are still the lowest low and the highest high.
 * All is rounded to whole minor units, and low ≤ likely ≤ high holds.
 */
export function priceBand(notes: readonly SeenPrice[], assumptions: PriceAssumptions): DerivedBand | null {
  if (notes.length === 0) return null;
  const { condition, factors, halfLifeDays } = assumptions;
  const newest = notes.reduce((day, note) => (note.onDate > day ? note.onDate : day), '');
  const weighed = notes.map((note) => ({
    note,
    band: bandIn(note, condition, factors),
    weight: 2 ** (-daysBetween(note.onDate, newest) / halfLifeDays),
  }));
  const outliers = markOutliers(weighed.map(({ band, weight }) => ({ value: band.likelyMinor, weight })));
  const counting = weighed.filter((_, i) => outliers[i] !== true);
  const total = counting.reduce((sum, { weight }) => sum + weight, 0);
  return {
    ...combined(counting),
    newestOn: counting.reduce((day, { note }) => (note.onDate > day ? note.onDate : day), ''),
    counted: counting.length,
    notes: weighed.map(({ band, weight }, i) => ({
      band,
      outlier: outliers[i] === true,
      share: outliers[i] === true ? 0 : weight / total,
    })),
  };
}

/** Whether what was last seen on a day is older than the user's limit. Days to come are not stale. */
export function isStale(onDate: string, today: string, { staleDays }: PriceAssumptions): boolean {
  return daysBetween(onDate, today) > staleDays;
}

/** Whole days from one ISO date to another; negative backwards. */
export function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / 86_400_000);
}

function bandIn(
  { band, condition }: SeenPrice,
  wanted: Condition,
  factors: PriceAssumptions['factors'],
): PriceBand {
  if (condition === undefined) return band;
  const to = (minor: number) => inCondition(minor, condition, wanted, factors);
  return { lowMinor: to(band.lowMinor), likelyMinor: to(band.likelyMinor), highMinor: to(band.highMinor) };
}

type Counting = { band: PriceBand; weight: number };

function combined(notes: readonly Counting[]): { band: PriceBand; method: DerivedBand['method'] } {
  const [first] = notes;
  if (notes.length === 1 && first) return { band: first.band, method: 'one' };
  const of = (pick: (band: PriceBand) => number): Weighed[] =>
    notes.map(({ band, weight }) => ({ value: pick(band), weight }));
  const lows = of((band) => band.lowMinor);
  const likelies = of((band) => band.likelyMinor);
  const highs = of((band) => band.highMinor);
  const two = notes.length === 2;
  const likely = Math.round(two ? weightedMean(likelies) : weightedMedian(likelies));
  const low = two ? lowerQuantile(lows, 0) : lowerQuantile(lows, TAIL);
  const high = two ? upperQuantile(highs, 1) : upperQuantile(highs, 1 - TAIL);
  return {
    band: { lowMinor: Math.min(low, likely), likelyMinor: likely, highMinor: Math.max(high, likely) },
    method: two ? 'two' : 'many',
  };
}

function weightedMean(values: readonly Weighed[]): number {
  const total = values.reduce((sum, { weight }) => sum + weight, 0);
  return values.reduce((sum, { value, weight }) => sum + value * weight, 0) / total;
}
