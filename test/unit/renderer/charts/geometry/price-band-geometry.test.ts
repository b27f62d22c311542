import { describe, expect, test } from 'vitest';
import {
  BAND_ROW_PX,
  priceBandGeometry,
} from '../../../../../src-renderer/charts/geometry/price-band-geometry.ts';
import type { PriceBandView } from '../../../../../src-renderer/state/prices/price-band-view.ts';
import { demoPriceBand } from '../demo.ts';

const view = demoPriceBand();
const textsOf = ({ rows }: PriceBandView) => ({
  band: { low: '£25.66', likely: '£45', high: '£65' },
  notes: rows.map((row) => `£${String(row.likely)}`),
});
const drawn = (of: PriceBandView, width = 600) => priceBandGeometry(of, textsOf(of), width);

describe('a price band and its notes', () => {
  test('stand a line each, the band first, all to one scale', () => {
    const { band, notes, height } = drawn(view);
    expect([band, ...notes].map(({ y }) => y)).toEqual(
      [0, 1, 2, 3, 4, 5].map((i) => (i + 0.5) * BAND_ROW_PX),
    );
    expect(height).toBeGreaterThan((notes.at(-1)?.y ?? NaN) + BAND_ROW_PX / 2);
    const [first] = notes;
    const perPound = (band.x2 - band.x1) / (view.band.high - view.band.low);
    expect(((first?.x ?? NaN) - band.x1) / perPound).toBeCloseTo(
      (view.rows[0]?.likely ?? NaN) - view.band.low,
      6,
    );
  });

  test('an outlier does not squeeze the others: it is pointed at from the edge it lies beyond', () => {
    const { notes } = drawn(view);
    expect(notes.map(({ beyond }) => beyond)).toEqual([null, null, null, null, 'right']);
    const cheap = {
      ...view,
      rows: view.rows.map((row) => (row.outlier ? { ...row, low: 1, likely: 1, high: 1 } : row)),
    };
    expect(drawn(cheap).notes.at(-1)?.beyond).toBe('left');
    const near = {
      ...view,
      rows: view.rows.map((row) => (row.outlier ? { ...row, low: 60, likely: 62, high: 64 } : row)),
    };
    expect(drawn(near).notes.at(-1)?.beyond).toBeNull();
  });

  test('nothing leaves the drawing, at any width', () => {
    for (const width of [160, 320, 640, 1400]) {
      const { band, notes, ticks, bandWords } = drawn(view, width);
      const xs = [
        ...[band, ...notes].flatMap(({ x1, x, x2 }) => [x1, x, x2]),
        ...ticks.map(({ x }) => x),
        ...bandWords.map(({ x }) => x),
        ...notes.map(({ word }) => word.x),
      ];
      for (const x of xs) expect(x >= 0 && x <= width).toBe(true);
    }
  });

  test('the band’s three figures, or its likely one alone where they would touch', () => {
    expect(drawn(view).bandWords.map(({ part }) => part)).toEqual(['low', 'likely', 'high']);
    const long = {
      ...textsOf(view),
      band: { low: 'US$1,025.66', likely: 'US$1,045.00', high: 'US$1,065.00' },
    };
    const parts = (width: number) => priceBandGeometry(view, long, width).bandWords.map(({ part }) => part);
    expect(parts(600)).toHaveLength(3);
    expect(parts(200)).toEqual(['likely']);
  });

  test('a sure price has a place in the middle, and divides by nothing', () => {
    const sure: PriceBandView = { band: { low: 40, likely: 40, high: 40 }, rows: [] };
    const { band } = drawn(sure);
    expect([band.x1, band.x, band.x2]).toEqual([300, 300, 300]);
    expect(drawn({ ...sure, band: { low: 0, likely: 0, high: 0 } }).band.x).toSatisfy(Number.isFinite);
  });
});
