import type { Answer, SideAnswer } from '../../../src-main/contract/calls/answers/answers.ts';
import type { PairState } from '../ladder/ladder-view.ts';
import { bagsOf, type Way } from './ways.ts';

/** A pair of neighbours beyond a limit, in the bag's unit. */
export type Fault = {
  longer: string;
  shorter: string;
  state: Exclude<PairState, 'fine'>;
  gap: number;
  limit: number;
};

export type SwapLine = {
  action: 'buy' | 'drop' | 'sell';
  name: string;
  inPlaceOf: string[];
  price: number | null;
  why: string;
  isLater: boolean;
};

/** One page of two: a way to spend with its money now and later (major units), and what it leaves of today's faults. */
export type Column = {
  way: Way;
  now: { cash: number; net: number };
  later: { when: string; cash: number; net: number } | null;
  totalNet: number;
  /** Of the first stage, which is what the budget is for; null without a budget. */
  chance: number | null;
  /** Share of today's penalty that is gone in the end, below 0 where more is wrong; null where nothing is today. */
  mendedShare: number | null;
  clubs: number;
  mended: Fault[];
  still: Fault[];
  made: Fault[];
  swaps: SwapLine[];
  /** The bag in the end. */
  end: SideAnswer;
};

type Names = Readonly<Record<string, string>>;

/** @param sides as many as `bagsOf(way)` asked for, in that order. */
export function columnOf(
  way: Way,
  sides: readonly SideAnswer[],
  names: Names,
  { marks, todayPenalty }: Pick<Answer, 'marks' | 'todayPenalty'>,
): Column | null {
  const [first] = sides;
  const end = sides[bagsOf(way).length - 1];
  const stage = way.stages[0];
  if (!first || !end || !stage) return null;
  const last = way.stages.at(-1);
  const later =
    last && last !== stage
      ? { when: last.when, ...(last.money ?? { cash: end.cash - first.cash, net: end.net - first.net }) }
      : null;
  const now = stage.money ?? { cash: first.cash, net: first.net };
  const fault = ({ longer, shorter, ...mark }: SideAnswer['marks'][number]): Fault => ({
    ...mark,
    longer: names[longer] ?? longer,
    shorter: names[shorter] ?? shorter,
  });
  const has = (list: readonly SideAnswer['marks'][number][], mark: SideAnswer['marks'][number]) =>
    list.some((one) => one.longer === mark.longer && one.shorter === mark.shorter);
  return {
    way,
    now,
    later,
    totalNet: now.net + (later?.net ?? 0),
    chance: first.chanceInBudget,
    mendedShare: todayPenalty === 0 ? null : way.key === 'today' ? 0 : 1 - end.penalty / todayPenalty,
    clubs: end.items.length,
    mended: marks.filter((mark) => !has(end.marks, mark)).map(fault),
    still: end.marks.filter((mark) => has(marks, mark)).map(fault),
    made: end.marks.filter((mark) => !has(marks, mark)).map(fault),
    swaps: swapLines(first, end, names),
    end,
  };
}

type Swap = SideAnswer['swaps'][number];

/** First what changes hands now, then what only the last stage changes. */
function swapLines(first: SideAnswer, end: SideAnswer, names: Names): SwapLine[] {
  const idOf = ({ archetype, clubId }: Swap) =>
    archetype === undefined ? (clubId ?? '') : `buy:${archetype}`;
  const line = (swap: Swap, isLater: boolean): SwapLine => ({
    action: swap.action,
    name: names[idOf(swap)] ?? idOf(swap),
    inPlaceOf: (swap.inPlaceOf ?? []).map((id) => names[id] ?? id),
    price: swap.price ?? null,
    why: swap.why,
    isLater,
  });
  const done = new Set(first.swaps.map((swap) => `${swap.action} ${idOf(swap)}`));
  const later = end.swaps.filter((swap) => !done.has(`${swap.action} ${idOf(swap)}`));
  const outAgain = first.items
    .filter((id) => id.startsWith('buy:') && !end.items.includes(id))
    .map((id): SwapLine => ({
      action: 'drop',
      name: names[id] ?? id,
      inPlaceOf: [],
      price: null,
      why: '',
      isLater: true,
    }));
  return [
    ...first.swaps.map((swap) => line(swap, false)),
    ...later.map((swap) => line(swap, true)),
    ...outAgain,
  ];
}
