import type { PriceBand } from '../../bag/types.ts';
import { resaleMinor } from '../../prices/cost.ts';
import type { Swap } from '../../advice/plan/swaps.ts';
import { given, type Context } from '../context.ts';
import type { Section, Table, TableRow } from '../model.ts';

/** Clubs that leave now, with what a sale brings after fees; null where none does. */
export function leaveSection(context: Context): Section | null {
  const { advice, words } = context;
  const rows = leaveRows(context, advice.view.words.stageNow);
  if (rows.length === 0) return null;
  return { id: 'leave', title: words.sections.leave, blocks: [leaveTable(context, rows)] };
}

export function leaveTable({ words }: Context, rows: TableRow[]): Table {
  return {
    kind: 'table',
    caption: words.leave.caption,
    columns: [
      { label: words.leave.club, align: 'left' },
      { label: words.leave.action, align: 'left' },
      { label: words.leave.asking, align: 'right' },
      { label: words.leave.brings, align: 'right' },
      { label: words.leave.why, align: 'left', prose: true },
    ],
    rows,
  };
}

export function leaveRows(context: Context, stage: string): TableRow[] {
  return context.advice.swaps
    .filter((swap) => swap.action !== 'buy' && swap.stage === stage)
    .map((swap) => leaveRow(context, swap));
}

function leaveRow(context: Context, swap: Swap): TableRow {
  const { advice, words } = context;
  const { view } = advice;
  const { reader } = view;
  const name = view.name(swap.clubId ?? '');
  const price = swap.priceMinor;
  const band = price === undefined ? undefined : bandOf(context, swap.clubId ?? '', price);
  const bringsMinor = band ? resaleMinor(band, view.bag.costs) : null;
  const action =
    swap.action === 'drop'
      ? words.leave.stayHome
      : price === undefined
        ? words.leave.withItsSet
        : words.leave.sell;
  return given(context, {
    cells: [
      name,
      action,
      price === undefined ? '' : reader.moneyText(price),
      bringsMinor === null ? '' : reader.moneyText(bringsMinor),
      swap.why,
    ],
    data: {
      item: name,
      state: action,
      stage: swap.stage,
      text: swap.why,
      ...(price === undefined ? {} : { priceLikely: reader.money(price) }),
      ...(bringsMinor === null ? {} : { amount: reader.money(bringsMinor) }),
    },
  });
}

/** The asking band that the line's price comes from: the club's own or its set's. */
function bandOf({ advice }: Context, clubId: string, likelyMinor: number): PriceBand | undefined {
  const { bag } = advice.view;
  const club = bag.clubs.find(({ id }) => id === clubId);
  const set = bag.sets.find(({ id }) => id === club?.set);
  return [set?.sell, club?.sell].find((band) => band?.likelyMinor === likelyMinor);
}
