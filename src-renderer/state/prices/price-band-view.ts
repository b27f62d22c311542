import type { BandAnswer, CountedNote } from '../../../src-main/contract/calls/money/prices.ts';

/** A note as it went into the band, major units; `number` is the one of its line in the table of notes. */
export type BandRow = {
  number: number;
  low: number;
  likely: number;
  high: number;
  /** ISO date: when it was seen, else when it was written down. */
  day: string;
  isSeen: boolean;
  stale: boolean;
  /** Too far from the others, so not counted. */
  outlier: boolean;
  /** Its part of the band, 0 to 1. */
  share: number;
  condition: CountedNote['condition'] | null;
};

export type PriceBandView = { band: { low: number; likely: number; high: number }; rows: BandRow[] };

/** An archetype's band and the notes that made it, all for a club in the condition that bands speak of. */
export function priceBandView(band: BandAnswer, notes: readonly CountedNote[]): PriceBandView {
  const { low, likely, high } = band;
  return {
    band: { low, likely, high },
    rows: notes.map(({ inBand, seen, written, stale, outlier, share, condition }, i) => ({
      ...inBand,
      number: i + 1,
      day: seen ?? written,
      isSeen: seen !== undefined,
      stale,
      outlier,
      share,
      condition: condition ?? null,
    })),
  };
}
