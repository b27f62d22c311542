import { scaleLinear } from 'd3-scale';
import { curveStepAfter, line } from 'd3-shape';
import type { SpendView } from '../../state/spend/spend-view.ts';

const EDGE_PX = { top: 34, right: 20, bottom: 42, left: 52 };
export const SPEND_HEIGHT_PX = 310;

export type SpendGeometry = {
  width: number;
  height: number;
  inner: { left: number; right: number; top: number; bottom: number };
  costTicks: { value: number; x: number }[];
  wrongTicks: { value: number; y: number }[];
  /** What each sum buys at best: flat until the next point is in reach. */
  path: string;
  points: { x: number; y: number; isPlan: boolean; within: boolean }[];
  today: { x: number; y: number } | null;
  budgetX: number | null;
};

/**
 * Where everything of the spend curve stands, in px: cost across (below nothing where sales bring more than is paid),
 * what is still wrong upwards, as a share of today's bag.
 * @param widthPx of the drawing; narrower ones than 220 px are drawn at 220.
 */
export function spendGeometry(view: SpendView, widthPx: number): SpendGeometry {
  const width = Math.max(220, widthPx);
  const height = SPEND_HEIGHT_PX;
  const inner = {
    left: EDGE_PX.left,
    right: width - EDGE_PX.right,
    top: EDGE_PX.top,
    bottom: height - EDGE_PX.bottom,
  };
  const costs = [
    0,
    ...view.points.map((point) => point.cost),
    ...(view.budget === null ? [] : [view.budget]),
  ];
  const most = Math.max(...costs);
  const least = Math.min(...costs);
  const ticks = Math.max(2, Math.floor(width / 110));
  // A little room at both ends, so that no mark stands on the edge.
  const room = (most === least ? 1 : most - least) * 0.04;
  const x = scaleLinear()
    .domain([least - room, most + room])
    .range([inner.left, inner.right]);
  const y = scaleLinear().domain([0, 1]).range([inner.bottom, inner.top]);
  const curve = line<{ cost: number; wrong: number }>()
    .x((point) => x(point.cost))
    .y((point) => y(point.wrong))
    .curve(curveStepAfter)
    .digits(1);
  const last = view.points.at(-1);
  // Beyond the last point more money mends nothing more: the line runs on to the edge.
  const drawn = last ? [...view.points, { cost: x.domain()[1] ?? last.cost, wrong: last.wrong }] : [];
  return {
    width,
    height,
    inner,
    costTicks: x.ticks(ticks).map((value) => ({ value, x: x(value) })),
    wrongTicks: [0, 0.25, 0.5, 0.75, 1].map((value) => ({ value, y: y(value) })),
    path: curve(drawn) ?? '',
    points: view.points.map((point) => ({
      x: x(point.cost),
      y: y(point.wrong),
      isPlan: point.isPlan,
      within: point.withinBudget,
    })),
    today: { x: x(0), y: y(view.today.wrong) },
    budgetX: view.budget === null ? null : x(view.budget),
  };
}
