import { scaleLinear } from 'd3-scale';
import type { NeedView } from '../../state/spend/need-view.ts';
import { LETTER_PX, shortened, spread } from '../frame/text-fit.ts';

/** Height of an interval of carries. */
export const NEED_ROW_PX = 22;
const TOP_PX = 22;
const FOOT_PX = 10;
/** Between the clubs' names and the axis: room for the lines that lead from one to the other. */
const LEADER_PX = 26;
/** Figures of the axis, right of it. */
const FIGURES_PX = 40;
const NAME_STEP_PX = 15;
/** The clubs' names have the room that the longest needs, within these. */
const LEAST_NAME_PX = 44;
const MOST_NAME_PX = 210;
const NAME_SHARE = 0.28;
/** Between a bar's end and what is said of it. */
const WORD_PX = 8;
const LEAST_BAR_PX = 40;
/** A bar so many times as long as the next is broken, since it would hide what the others say. */
const BROKEN_FROM = 2.5;
/** A broken bar beside the longest whole one. */
const BROKEN_SHARE = 1.25;

export type NeedGeometry = {
  width: number;
  height: number;
  /** Where the clubs' ticks stand, and where the bars begin. */
  axisX: number;
  barX: number;
  edges: { value: number; y: number }[];
  /** From the ground first, from the tee behind it. `word` stands after the bar. */
  rows: { y: number; height: number; groundX: number; endX: number; isBroken: boolean; wordX: number }[];
  clubs: { id: string; y: number; nameX: number; nameY: number; text: string }[];
};

/**
 * Where everything of the need per round stands, in px: carries to scale from the longest downwards, a bar for each
 * interval, and the bag's clubs as ticks at their carries.
 * @param texts what is said of each bar.
 * @param widthPx of the drawing; narrower ones than 260 px are drawn at 260.
 */
export function needGeometry(view: NeedView, texts: readonly string[], widthPx: number): NeedGeometry {
  const width = Math.max(260, widthPx);
  const longest = Math.max(0, ...view.clubs.map((club) => club.name.length)) * LETTER_PX;
  const namesPx = Math.max(LEAST_NAME_PX, Math.min(longest, MOST_NAME_PX, width * NAME_SHARE));
  const axisX = namesPx + LEADER_PX;
  const barX = axisX + FIGURES_PX;
  const { rows, clubs } = view;
  const [top, bottom] = [rows[0]?.high ?? 1, rows.at(-1)?.low ?? 0];
  const depth = rows.length * NEED_ROW_PX;
  const y = scaleLinear()
    .domain([top, bottom])
    .range([TOP_PX, TOP_PX + depth]);
  const { most, brokenFrom } = scaleOf(rows.map((row) => row.shots));
  // As wide as leaves room for what is said after each bar.
  const rooms = rows.map(({ shots }, i) => {
    const wordsPx = (texts[i] ?? '').length * LETTER_PX + WORD_PX;
    return shots === 0 ? Infinity : ((width - barX - wordsPx) * most) / Math.min(shots, most);
  });
  const x = scaleLinear()
    .domain([0, most])
    .range([barX, barX + Math.max(LEAST_BAR_PX, Math.min(width - barX, ...rooms))]);
  const nameYs = spread(
    clubs.map((club) => y(club.carry)),
    NAME_STEP_PX,
    [TOP_PX - 8, TOP_PX + depth + 2],
  );
  const lowest = Math.max(TOP_PX + depth, ...nameYs);
  return {
    width,
    height: lowest + FOOT_PX,
    axisX,
    barX,
    edges: [...rows.map((row) => row.high), bottom].map((value) => ({ value, y: y(value) })),
    rows: rows.map((row) => {
      const isBroken = row.shots >= brokenFrom;
      const endX = isBroken ? x(most) : x(row.shots);
      return {
        y: y(row.high) + 2,
        height: NEED_ROW_PX - 4,
        groundX: row.shots === 0 ? barX : barX + ((endX - barX) * (row.shots - row.tee)) / row.shots,
        endX,
        isBroken,
        wordX: endX + WORD_PX,
      };
    }),
    clubs: clubs.map((club, i) => ({
      id: club.id,
      y: y(club.carry),
      nameX: namesPx,
      nameY: nameYs[i] ?? 0,
      text: shortened(club.name, namesPx),
    })),
  };
}

/** How many shots the longest bar drawn stands for; and from how many on a bar is broken off at it. */
function scaleOf(shots: readonly number[]): { most: number; brokenFrom: number } {
  const [first = 0, second = 0] = [...shots].sort((a, b) => b - a);
  if (second > 0 && first >= BROKEN_FROM * second) return { most: second * BROKEN_SHARE, brokenFrom: first };
  return { most: first === 0 ? 1 : first, brokenFrom: Infinity };
}
