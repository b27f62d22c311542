import { scaleLinear } from 'd3-scale';
import type { PriceBandView } from '../../state/prices/price-band-view.ts';
import { LETTER_PX } from '../frame/text-fit.ts';

/** Height of a line: the band on top, then a note each. */
export const BAND_ROW_PX = 42;
export const BAND_AXIS_PX = 28;
const SIDE_PX = 28;
/** What lies off the axis is shown at its edge. */
const EDGE_PX = 10;
/** Between a mark and the word beside it. */
const WORD_PX = 10;

export type BandLine = { y: number; x1: number; x: number; x2: number };

export type PriceBandGeometry = {
  width: number;
  height: number;
  ticks: { value: number; x: number }[];
  band: BandLine;
  /** The band's own figures above it: all three where they do not touch, else the likely one alone. */
  bandWords: { part: 'low' | 'likely' | 'high'; x: number; anchor: 'start' | 'middle' | 'end' }[];
  notes: (BandLine & {
    word: { x: number; anchor: 'start' | 'end' };
    /** An outlier would squeeze all the others: one that lies off the axis is only pointed at. */
    beyond: 'left' | 'right' | null;
  })[];
};

/**
 * Where everything of a price band stands, in px: money across; the band, then its notes, a line each.
 * @param texts the band's low, likely and high and each note's likely price, as printed.
 * @param widthPx of the drawing; narrower ones than 160 px are drawn at 160.
 */
export function priceBandGeometry(
  { band, rows }: PriceBandView,
  texts: { band: Record<'low' | 'likely' | 'high', string>; notes: readonly string[] },
  widthPx: number,
): PriceBandGeometry {
  const width = Math.max(160, widthPx);
  const counting = rows.filter((row) => !row.outlier);
  const low = Math.min(band.low, ...counting.map((row) => row.low));
  const high = Math.max(band.high, ...counting.map((row) => row.high));
  // A sure price stands in the middle of its own axis.
  const room = high > low ? 0 : Math.max(1, high * 0.1);
  const scale = scaleLinear()
    .domain([low - room, high + room])
    .range([SIDE_PX, width - SIDE_PX]);
  const inside = (x: number) => Math.min(width - EDGE_PX, Math.max(EDGE_PX, x));
  const line = (i: number, from: { low: number; likely: number; high: number }): BandLine => ({
    y: (i + 0.5) * BAND_ROW_PX,
    x1: inside(scale(from.low)),
    x: inside(scale(from.likely)),
    x2: inside(scale(from.high)),
  });
  const drawn = line(0, band);
  return {
    width,
    height: (rows.length + 1) * BAND_ROW_PX + BAND_AXIS_PX,
    ticks: scale.ticks(Math.max(2, Math.floor(width / 110))).map((value) => ({ value, x: scale(value) })),
    band: drawn,
    bandWords: wordsOfBand(drawn, texts.band, width),
    notes: rows.map((row, i) => {
      const at = line(i + 1, row);
      const needed = (texts.notes[i] ?? '').length * LETTER_PX + WORD_PX;
      const isRight = width - at.x2 >= needed || at.x1 < needed;
      const likely = scale(row.likely);
      return {
        ...at,
        beyond: likely < EDGE_PX ? 'left' : likely > width - EDGE_PX ? 'right' : null,
        word: isRight
          ? { x: Math.min(at.x2 + WORD_PX, width - needed + WORD_PX), anchor: 'start' as const }
          : { x: at.x1 - WORD_PX, anchor: 'end' as const },
      };
    }),
  };
}

function wordsOfBand(
  { x1, x, x2 }: BandLine,
  texts: Record<'low' | 'likely' | 'high', string>,
  width: number,
): PriceBandGeometry['bandWords'] {
  const half = (part: 'low' | 'likely' | 'high') => (texts[part].length * LETTER_PX) / 2;
  const inside = (at: number, part: 'low' | 'likely' | 'high') =>
    Math.min(Math.max(at, half(part)), width - half(part));
  const places = { low: inside(x1, 'low'), likely: inside(x, 'likely'), high: inside(x2, 'high') };
  const fits =
    places.low + half('low') + 6 <= places.likely - half('likely') &&
    places.likely + half('likely') + 6 <= places.high - half('high');
  const parts = fits ? (['low', 'likely', 'high'] as const) : (['likely'] as const);
  return parts.map((part) => ({ part, x: places[part], anchor: 'middle' as const }));
}
