import type { BandAnswer, CountedNote } from '../../../../src-main/contract/calls/money/prices.ts';
import { isStale, priceBand } from '../../../../src-main/domain/prices/band.ts';
import { DEFAULT_ASSUMPTIONS } from '../../../../src-main/domain/prices/condition.ts';
import { priceBandView, type PriceBandView } from '../../../../src-renderer/state/prices/price-band-view.ts';

const ARCHETYPE = 'hybrid-25-t3';

/** Invented notes on a hybrid of the demo: fresh ones, a stale one, one of another condition, one far off. */
const NOTES = [
  { likely: 45, seen: '2026-11-01', condition: 'played' },
  { likely: 55, seen: '2026-11-10', condition: 'light wear' },
  { likely: 50, seen: '2026-08-01', condition: 'played' },
  { likely: 28, seen: '2026-10-20', condition: 'worn' },
  { likely: 220, seen: '2026-11-12', condition: 'played' },
] as const;

const band = (likely: number) => ({
  lowMinor: likely * 70,
  likelyMinor: likely * 100,
  highMinor: likely * 130,
});
const major = ({ lowMinor, likelyMinor, highMinor }: ReturnType<typeof band>) => ({
  low: lowMinor / 100,
  likely: likelyMinor / 100,
  high: highMinor / 100,
});

/** As the service answers, reckoned by the domain itself. */
export function demoPriceBand(notes: readonly (typeof NOTES)[number][] = NOTES): PriceBandView {
  const derived = priceBand(
    notes.map(({ likely, seen, condition }) => ({ band: band(likely), onDate: seen, condition })),
    DEFAULT_ASSUMPTIONS,
  );
  if (!derived) throw new Error('there are notes to make a band of');
  const answer: BandAnswer = {
    archetype: ARCHETYPE,
    ...major(derived.band),
    method: derived.method,
    counted: derived.counted,
    outliers: notes.length - derived.counted,
    newest: derived.newestOn,
    stale: false,
    own: true,
  };
  return priceBandView(
    answer,
    notes.map(({ likely, seen, condition }, i): CountedNote => ({
      id: i + 1,
      archetype: ARCHETYPE,
      ...major(band(likely)),
      currency: 'GBP',
      seen,
      condition,
      written: seen,
      stale: isStale(seen, '2026-11-26', DEFAULT_ASSUMPTIONS),
      share: derived.notes[i]?.share ?? 0,
      outlier: derived.notes[i]?.outlier ?? false,
      inBand: major(derived.notes[i]?.band ?? band(likely)),
    })),
  );
}
