import { scaleLinear } from 'd3-scale';
import type { PairState } from '../../state/ladder/ladder-view.ts';
import type { OverlayStep, OverlayView, Page } from '../../state/side/overlay-view.ts';
import { AXIS_PX, placeWords, type Words } from './ladder-geometry.ts';

/** A club's line: a lane for each page, and below them room for the gap to the next club. */
export const OVERLAY_ROW_PX = 50;
const LANE_PX: Record<Page, number> = { left: 12, right: 25 };
const GAP_PX = 42;
/** A second gap that begins at the same club stands this much below the first. */
const SECOND_PX = 13;
const SIDE_PX = 18;
const WORDS_PX = 8;
const CROWDED_WORDS_PX = 16;

export type OverlayMark = { page: Page; x: number; x1: number; x2: number; y: number; isReckoned: boolean };
export type OverlayGap = {
  on: OverlayStep['on'];
  state: PairState;
  x1: number;
  x2: number;
  y1: number;
  y: number;
  y2: number;
  words: Words;
};

export type OverlayGeometry = {
  width: number;
  height: number;
  ticks: { value: number; x: number }[];
  rows: { id: string; y: number; marks: OverlayMark[] }[];
  gaps: OverlayGap[];
};

/**
 * Where everything of two ladders on one scale stands, in px: one line a club, the longest on top; only gaps beyond
 * a limit are drawn.
 * @param textsOf what is said of a step, the fullest first: the first that fits is taken, else the last, cut.
 * @param widthPx of the drawing; narrower ones than 160 px are drawn at 160.
 */
export function overlayGeometry(
  { rows, steps }: OverlayView,
  textsOf: (step: OverlayStep) => readonly string[],
  widthPx: number,
): OverlayGeometry {
  const width = Math.max(160, widthPx);
  const scale = scaleLinear()
    .domain(
      rows.length === 0
        ? [0, 1]
        : [Math.min(...rows.map((row) => row.low)), Math.max(...rows.map((row) => row.high))],
    )
    .range([SIDE_PX, width - SIDE_PX]);
  const laneY = (row: number, page: Page) => row * OVERLAY_ROW_PX + LANE_PX[page];
  const begun = new Map<number, number>();
  return {
    width,
    height: rows.length * OVERLAY_ROW_PX + AXIS_PX,
    ticks: scale.ticks(Math.max(3, Math.floor(width / 90))).map((value) => ({ value, x: scale(value) })),
    rows: rows.map((row, i) => ({
      id: row.id,
      y: i * OVERLAY_ROW_PX,
      marks: (['left', 'right'] as const).flatMap((page): OverlayMark[] =>
        row.on[page]
          ? [
              {
                page,
                x: scale(row.carry),
                x1: scale(row.low),
                x2: scale(row.high),
                y: laneY(i, page),
                isReckoned: row.source === 'interpolated' || row.source === 'modelled',
              },
            ]
          : [],
      ),
    })),
    gaps: steps
      .filter((step) => step.state !== 'fine')
      .map((step): OverlayGap => {
        const { on, state, longer, shorter } = step;
        const before = begun.get(longer) ?? 0;
        begun.set(longer, before + 1);
        const [x1, x2] = [scale(rows[longer]?.carry ?? 0), scale(rows[shorter]?.carry ?? 0)];
        const away = state === 'crowded' ? CROWDED_WORDS_PX : WORDS_PX;
        return {
          on,
          state,
          x1,
          x2,
          y1: laneY(longer, on === 'left' ? 'left' : 'right'),
          y: longer * OVERLAY_ROW_PX + GAP_PX + before * SECOND_PX,
          y2: laneY(shorter, on === 'right' ? 'right' : 'left'),
          words: placeWords(textsOf(step), { start: x1 + away, end: x2 - away, width }),
        };
      }),
  };
}
