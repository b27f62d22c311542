import { describe, expect, test } from 'vitest';
import { chanceGeometry } from '../../../../../src-renderer/charts/geometry/chance-geometry.ts';
import type { ChanceView } from '../../../../../src-renderer/state/spend/chance-view.ts';

const view: ChanceView = {
  points: [0, 0.1, 0.5, 0.9, 1].map((atMost, i) => ({ cost: 100 + 10 * i, atMost })),
  low: 100,
  high: 140,
  enough: { share: 0.8, cost: 127.5 },
  likely: { cost: 118, atMost: 0.42 },
  budget: { amount: 125, chance: 0.7 },
  isNet: true,
};
const texts = { enough: '£127.50 is enough, 80% sure', likely: 'the plan: £118', budget: 'budget £125: 70%' };
const drawn = (changes: Partial<ChanceView> = {}, width = 700) =>
  chanceGeometry({ ...view, ...changes }, texts, width);

describe('the chance of cost', () => {
  test('rises to the right, from nothing at the least to all at the most', () => {
    const { points, inner } = drawn();
    points.slice(1).forEach((point, i) => {
      expect(point.x).toBeGreaterThan(points[i]?.x ?? NaN);
      expect(point.y).toBeLessThan(points[i]?.y ?? NaN);
    });
    expect(points[0]?.y).toBe(inner.bottom);
    expect(points.at(-1)?.y).toBe(inner.top);
  });

  test('the marked sums stand where their cost and their chance are', () => {
    const { enough, points, inner } = drawn();
    expect(enough.y).toBeCloseTo(inner.bottom + 0.8 * (inner.top - inner.bottom), 6);
    const perPound = ((points[1]?.x ?? NaN) - (points[0]?.x ?? NaN)) / 10;
    expect((enough.x - (points[0]?.x ?? NaN)) / perPound).toBeCloseTo(27.5, 6);
  });

  test('a budget that is near is drawn, one that is far is pointed at', () => {
    expect(drawn().budget?.beyond).toBeNull();
    expect(drawn({ budget: { amount: 170, chance: 1 } }).budget?.beyond).toBeNull();
    expect(drawn({ budget: { amount: 181, chance: 1 } }).budget?.beyond).toBe('right');
    expect(drawn({ budget: { amount: 400, chance: 1 } }).budget?.beyond).toBe('right');
    expect(drawn({ budget: { amount: 10, chance: 0 } }).budget?.beyond).toBe('left');
    expect(drawn({ budget: null }).budget).toBeNull();
    // However far it lies, the curve keeps at least a third of the axis.
    for (const amount of [-400, 0, 62, 138, 178, 179, 4000]) {
      const { points, inner } = drawn({ budget: { amount, chance: 0 } });
      const share = ((points.at(-1)?.x ?? NaN) - (points[0]?.x ?? NaN)) / (inner.right - inner.left);
      expect(share).toBeGreaterThan(1 / 3);
    }
  });

  test('words stay inside the frame, on the side that has room for them', () => {
    for (const width of [260, 480, 700, 1400]) {
      const { enough, likely, budget } = drawn({}, width);
      for (const [said, { wordX, anchor }] of [
        [texts.enough, enough],
        [texts.likely, likely],
        [texts.budget, budget ?? enough],
      ] as const) {
        const long = said.length * 6;
        expect(anchor === 'start' ? wordX + long : wordX - long).toSatisfy(
          (end: number) => end > -12 && end < width + 12,
        );
      }
    }
  });
});
