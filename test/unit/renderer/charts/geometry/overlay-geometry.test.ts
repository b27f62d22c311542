import { describe, expect, test } from 'vitest';
import {
  overlayGeometry,
  OVERLAY_ROW_PX,
} from '../../../../../src-renderer/charts/geometry/overlay-geometry.ts';
import { overlayView } from '../../../../../src-renderer/state/side/overlay-view.ts';
import { answerTo, demoBag } from '../../support.ts';
import { asText } from '../as-text.ts';

const { plan, marks, names } = answerTo(demoBag());
const view = overlayView(
  { left: { ladder: plan.ladder, marks }, right: { ladder: plan.plan.afterLadder, marks: [] } },
  names,
);
const said = () => ['a long saying that wants room', 'short'];

describe('the demo’s ladder today and after the plan', () => {
  test('as text', () => {
    expect(asText(overlayGeometry(view, said, 640))).toMatchSnapshot();
  });

  test('only gaps beyond a limit are drawn, from club to club of their page', () => {
    const { gaps, rows } = overlayGeometry(view, said, 640);
    expect(gaps.map(({ on, state }) => [on, state])).toEqual([
      ['left', 'wide'],
      ['left', 'crowded'],
    ]);
    const xs = rows.flatMap((row) => row.marks).map(({ x }) => x);
    for (const { x1, x2, y1, y, y2 } of gaps) {
      expect(xs).toContain(x1);
      expect(xs).toContain(x2);
      expect(y1 < y && y < y2).toBe(true);
    }
  });

  test('a club on both pages has two marks, one above the other, at the same carry', () => {
    const both = overlayGeometry(view, said, 640).rows.filter(({ marks: two }) => two.length === 2);
    expect(both.length).toBeGreaterThan(5);
    for (const {
      marks: [left, right],
    } of both) {
      expect(left?.x).toBe(right?.x);
      expect((right?.y ?? 0) - (left?.y ?? 0)).toBeGreaterThan(9);
    }
  });

  test('nothing leaves the drawing', () => {
    for (const width of [160, 320, 640, 1400]) {
      const { rows, ticks, gaps, height } = overlayGeometry(view, said, width);
      const xs = [
        ...rows.flatMap((row) => row.marks.flatMap(({ x, x1, x2 }) => [x, x1, x2])),
        ...ticks.map(({ x }) => x),
        ...gaps.flatMap(({ x1, x2 }) => [x1, x2]),
      ];
      for (const x of xs) expect(x >= 0 && x <= width).toBe(true);
      for (const { y } of gaps) expect(y).toBeLessThan(height);
    }
  });
});

test('two gaps that begin at one club do not lie on each other', () => {
  const mark = { state: 'wide' as const, gap: 40, limit: 20 };
  const club = (clubId: string, carry: number) => ({
    clubId,
    carry,
    low: carry,
    high: carry,
    source: 'stated' as const,
  });
  const two = overlayView(
    {
      left: { ladder: [club('a', 200), club('b', 160)], marks: [{ ...mark, longer: 'a', shorter: 'b' }] },
      right: { ladder: [club('a', 200), club('c', 150)], marks: [{ ...mark, longer: 'a', shorter: 'c' }] },
    },
    {},
  );
  const [first, second] = overlayGeometry(two, said, 600).gaps;
  expect((second?.y ?? 0) - (first?.y ?? 0)).toBeGreaterThanOrEqual(12);
});

test('no clubs: an axis alone', () => {
  const empty = overlayGeometry({ rows: [], steps: [] }, said, 500);
  expect(empty.rows).toEqual([]);
  expect(empty.height).toBeLessThan(OVERLAY_ROW_PX);
});
