import type { Formats } from '../state/format/formats.ts';
import type { BandRow } from '../state/prices/price-band-view.ts';
import { words } from '../words/index.ts';

/** What is said of a note beside its shape: how old it is, and how much it counts. */
export function saidOfNote({ stale, outlier, share }: BandRow, formats: Formats): string {
  const text = words.charts.band;
  const counts = outlier ? text.outlier : text.share(formats.share(share));
  return stale ? `${text.stale}, ${counts}` : counts;
}
