import { scaleLinear } from 'd3-scale';
import { curveMonotoneX, line } from 'd3-shape';
import type { ChanceView } from '../../state/spend/chance-view.ts';
import { LETTER_PX } from '../frame/text-fit.ts';

const EDGE_PX = { top: 34, right: 20, bottom: 42, left: 52 };
export const CHANCE_HEIGHT_PX = 290;
const WORD_PX = 12;

type Said = { x: number; y: number; wordX: number; wordY: number; anchor: 'start' | 'end' };

export type ChanceGeometry = {
  width: number;
  height: number;
  inner: { left: number; right: number; top: number; bottom: number };
  costTicks: { value: number; x: number }[];
  chanceTicks: { value: number; y: number }[];
  path: string;
  points: { x: number; y: number }[];
  enough: Said;
  likely: Said;
  /** `beyond`: the budget lies off this end of the axis, and is only pointed at. */
  budget: (Said & { beyond: 'left' | 'right' | null }) | null;
};

/**
 * Where everything of the chance of cost stands, in px: cost across, the chance that it is enough upwards.
 * @param texts what is said of each marked sum.
 * @param widthPx of the drawing; narrower ones than 220 px are drawn at 220.
 */
export function chanceGeometry(
  view: ChanceView,
  texts: { enough: string; likely: string; budget: string },
  widthPx: number,
): ChanceGeometry {
  const width = Math.max(220, widthPx);
  const height = CHANCE_HEIGHT_PX;
  const { left, top } = EDGE_PX;
  const inner = { left, right: width - EDGE_PX.right, top, bottom: height - EDGE_PX.bottom };
  const budget = view.budget?.amount ?? null;
  const [from, to] = domainOf(view, budget);
  const x = scaleLinear().domain([from, to]).range([inner.left, inner.right]);
  const y = scaleLinear().domain([0, 1]).range([inner.bottom, inner.top]);
  const curve = line<{ cost: number; atMost: number }>()
    .x((point) => x(point.cost))
    .y((point) => y(point.atMost))
    .curve(curveMonotoneX)
    .digits(1);
  // Flat on both sides of what is possible: never below the least, always by the most.
  const drawn = [{ cost: from, atMost: 0 }, ...view.points, { cost: to, atMost: 1 }];
  const place = (cost: number, chance: number, said: string, prefer: 'start' | 'end'): Said => {
    const at = Math.min(inner.right, Math.max(inner.left, x(cost)));
    return { x: at, y: y(chance), wordY: y(chance) + 4, ...beside(at, said, prefer, inner) };
  };
  return {
    width,
    height,
    inner,
    costTicks: x.ticks(Math.max(2, Math.floor(width / 110))).map((value) => ({ value, x: x(value) })),
    chanceTicks: [0, 0.25, 0.5, 0.75, 1].map((value) => ({ value, y: y(value) })),
    path: curve(drawn) ?? '',
    points: view.points.map((point) => ({ x: x(point.cost), y: y(point.atMost) })),
    // Above its curve the left is empty, below it the right.
    enough: place(view.enough.cost, view.enough.share, texts.enough, 'end'),
    likely: place(view.likely.cost, view.likely.atMost, texts.likely, 'start'),
    budget:
      view.budget === null || budget === null
        ? null
        : {
            ...place(budget, view.budget.chance, texts.budget, 'start'),
            wordY: inner.top - 12,
            beyond: budget < from ? 'left' : budget > to ? 'right' : null,
          },
  };
}

/** What is possible with a little room; the budget too, unless that would squeeze the curve to less than a third. */
function domainOf({ low, high }: ChanceView, budget: number | null): [from: number, to: number] {
  const span = high - low;
  const room = span * 0.06;
  const isNear = budget !== null && budget > low - span && budget < high + span;
  return [Math.min(low, isNear ? budget : low) - room, Math.max(high, isNear ? budget : high) + room];
}

/** On the side that is preferred where the words fit there, else on the other if they fit, else where more room is. */
function beside(
  at: number,
  said: string,
  prefer: 'start' | 'end',
  inner: { left: number; right: number },
): { wordX: number; anchor: 'start' | 'end' } {
  const needed = said.length * LETTER_PX + WORD_PX;
  const room = { start: inner.right + EDGE_PX.right - at, end: at - inner.left };
  const other = prefer === 'start' ? 'end' : 'start';
  const more = room.start >= room.end ? 'start' : 'end';
  const anchor = room[prefer] >= needed ? prefer : room[other] >= needed ? other : more;
  return { wordX: anchor === 'start' ? at + WORD_PX : at - WORD_PX, anchor };
}
