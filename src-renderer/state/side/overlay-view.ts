import type { SideAnswer } from '../../../src-main/contract/calls/answers/answers.ts';
import type { PairState, Source } from '../ladder/ladder-view.ts';

export type Page = 'left' | 'right';
export const PAGES: readonly Page[] = ['left', 'right'];

/** A club of either ladder, in the bag's unit. */
export type OverlayRow = {
  id: string;
  name: string;
  carry: number;
  low: number;
  high: number;
  source: Source;
  bought: boolean;
  on: Record<Page, boolean>;
};

/** Two clubs that are neighbours on a page, by their rows; on both pages where both have the very pair. */
export type OverlayStep = {
  on: Page | 'both';
  longer: number;
  shorter: number;
  gap: number;
  limit: number | null;
  state: PairState;
};

export type OverlayView = { rows: OverlayRow[]; steps: OverlayStep[] };

/** Two ladders on one scale, the longest club first. */
export function overlayView(
  sides: Record<Page, Pick<SideAnswer, 'ladder' | 'marks'>>,
  names: Readonly<Record<string, string>>,
): OverlayView {
  const rows: OverlayRow[] = [];
  for (const page of PAGES) {
    for (const { clubId, ...figures } of sides[page].ladder) {
      // A club that plays differently on the other page is another line.
      const known = rows.find((row) => row.id === clubId && row.carry === figures.carry);
      if (known) known.on[page] = true;
      else {
        rows.push({
          ...figures,
          id: clubId,
          name: names[clubId] ?? clubId,
          bought: clubId.startsWith('buy:'),
          on: { left: page === 'left', right: page === 'right' },
        });
      }
    }
  }
  rows.sort((a, b) => b.carry - a.carry);
  const steps: OverlayStep[] = [];
  for (const page of PAGES) {
    const own = rows.flatMap((row, i) => (row.on[page] ? [i] : []));
    own.slice(1).forEach((shorter, i) => {
      const longer = own[i] ?? shorter;
      const same = steps.find((step) => step.longer === longer && step.shorter === shorter);
      if (same) same.on = 'both';
      else steps.push({ on: page, longer, shorter, ...judged(rows, longer, shorter, sides[page].marks) });
    });
  }
  return { rows, steps: steps.sort((a, b) => a.longer - b.longer) };
}

function judged(
  rows: readonly OverlayRow[],
  longer: number,
  shorter: number,
  marks: SideAnswer['marks'],
): Pick<OverlayStep, 'gap' | 'limit' | 'state'> {
  const [a, b] = [rows[longer], rows[shorter]];
  const mark = marks.find((one) => one.longer === a?.id && one.shorter === b?.id);
  return {
    gap: (a?.carry ?? 0) - (b?.carry ?? 0),
    limit: mark?.limit ?? null,
    state: mark?.state ?? 'fine',
  };
}
