import { describe, expect, test } from 'vitest';
import { spendGeometry } from '../../../../../src-renderer/charts/geometry/spend-geometry.ts';
import type { SpendPoint, SpendView } from '../../../../../src-renderer/state/spend/spend-view.ts';
import { asText } from '../as-text.ts';

const point = (cost: number, wrong: number, isPlan = false): SpendPoint => ({
  cost,
  wrong,
  changes: 1,
  buys: [],
  leaves: [],
  isPlan,
  withinBudget: cost <= 180,
});

const view: SpendView = {
  points: [point(-7.12, 0.8), point(54.88, 0.05, true), point(210, 0)],
  budget: 180,
  today: { wrong: 1 },
};

describe('the spend curve', () => {
  test('as text', () => {
    expect(asText(spendGeometry(view, 700))).toMatchSnapshot();
  });

  test('more money stands further right, less wrong further down', () => {
    const { points, inner } = spendGeometry(view, 700);
    const [first, second, third] = points;
    expect(first && second && third && first.x < second.x && second.x < third.x).toBe(true);
    expect(first && second && third && first.y < second.y && second.y < third.y).toBe(true);
    expect(third?.y).toBe(inner.bottom);
  });

  test('everything is inside the frame, at every width', () => {
    for (const width of [220, 480, 1400]) {
      const { points, inner, budgetX, today, costTicks } = spendGeometry(view, width);
      const xs = [
        ...points.map(({ x }) => x),
        budgetX ?? inner.left,
        today?.x ?? 0,
        ...costTicks.map(({ x }) => x),
      ];
      for (const x of xs) expect(x >= inner.left && x <= inner.right).toBe(true);
    }
  });

  test('flat until the next point, and on to the edge after the last', () => {
    const { path, points, inner } = spendGeometry(view, 700);
    // A step is drawn as "across, then down": two lines a point.
    expect(path.match(/L/g)).toHaveLength(2 * points.length);
    expect(path.endsWith(`${String(inner.right)},${String(inner.bottom)}`)).toBe(true);
  });

  test('without points, budget or any sum there is still a frame', () => {
    const empty = spendGeometry({ points: [], budget: null, today: { wrong: 0 } }, 500);
    expect(empty.path).toBe('');
    expect(empty.budgetX).toBeNull();
    expect(empty.costTicks.every(({ x }) => Number.isFinite(x))).toBe(true);
  });
});
