import { scaleLinear } from 'd3-scale';
import { LETTER_PX, shortened } from '../frame/text-fit.ts';
import type { LadderRow, LadderStep, PairState } from '../../state/ladder/ladder-view.ts';

/** Height of a club's line, which holds two lines of text. */
export const ROW_PX = 42;
export const AXIS_PX = 30;
/** Room at both ends for range caps and tick labels. */
const SIDE_PX = 18;
/** Between the end of a step and its words; a crowded pair's arrowheads reach over the ends. */
const WORDS_PX = 8;
const CROWDED_WORDS_PX = 16;

export type Words = { text: string; x: number; anchor: 'start' | 'end' };

export type LadderGeometry = {
  width: number;
  height: number;
  ticks: { value: number; x: number }[];
  rows: { id: string; y: number; x: number; x1: number; x2: number; isReckoned: boolean }[];
  steps: {
    longer: string;
    state: PairState;
    /** From the longer club's carry down, across the gap, and down to the shorter club's. */
    x1: number;
    x2: number;
    y1: number;
    y: number;
    y2: number;
    words: Words;
  }[];
};

/**
 * Where everything of the ladder chart stands, in px: one line a club, the longest on top, carries to scale across.
 * @param texts what is said of each step, the fullest first: the first that fits is taken, else the last, cut.
 * @param widthPx of the drawing; narrower ones than 160 px are drawn at 160.
 */
export function ladderGeometry(
  rows: readonly LadderRow[],
  steps: readonly LadderStep[],
  texts: readonly (readonly string[])[],
  widthPx: number,
): LadderGeometry {
  const width = Math.max(160, widthPx);
  const ticks = Math.max(3, Math.floor(width / 90));
  const low = Math.min(...rows.map((row) => row.low));
  const high = Math.max(...rows.map((row) => row.high));
  const scale = scaleLinear()
    .domain(rows.length === 0 ? [0, 1] : [low, high])
    .range([SIDE_PX, width - SIDE_PX]);
  const middle = (i: number) => i * ROW_PX + ROW_PX / 2;
  return {
    width,
    height: rows.length * ROW_PX + AXIS_PX,
    ticks: scale.ticks(ticks).map((value) => ({ value, x: scale(value) })),
    rows: rows.map((row, i) => ({
      id: row.id,
      y: middle(i),
      x: scale(row.carry),
      x1: scale(row.low),
      x2: scale(row.high),
      isReckoned: row.source === 'interpolated' || row.source === 'modelled',
    })),
    steps: steps.map(({ longer, state }, i) => {
      const x1 = scale(rows[i]?.carry ?? 0);
      const x2 = scale(rows[i + 1]?.carry ?? 0);
      const away = state === 'crowded' ? CROWDED_WORDS_PX : WORDS_PX;
      return {
        longer,
        state,
        x1,
        x2,
        y1: middle(i),
        y: (i + 1) * ROW_PX,
        y2: middle(i + 1),
        words: placeWords(texts[i] ?? [], { start: x1 + away, end: x2 - away, width }),
      };
    }),
  };
}

/** Beside the step's long end, else beside its short end: both sides are empty at that height. The last is cut to fit. */
export function placeWords(
  texts: readonly string[],
  { start, end, width }: { start: number; end: number; width: number },
): Words {
  for (const text of texts) {
    const wanted = text.length * LETTER_PX;
    if (width - start >= wanted) return { text, x: start, anchor: 'start' };
    if (end >= wanted) return { text, x: end, anchor: 'end' };
  }
  const [after, before] = [width - start, end];
  const text = shortened(texts.at(-1) ?? '', Math.max(after, before));
  return after >= before ? { text, x: start, anchor: 'start' } : { text, x: end, anchor: 'end' };
}
