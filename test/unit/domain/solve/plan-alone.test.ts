import { describe, expect, test } from 'vitest';
import { NO_LIMIT, type Region } from '../../../../src-main/domain/solve/bounds/region.ts';
import { MENDED, NEEDS_MENDING } from '../../../../src-main/domain/solve/headline.ts';
import { planQuestion } from '../../../../src-main/domain/solve/plan-alone.ts';
import { type Found, merge } from '../../../../src-main/domain/solve/program/found.ts';
import { dice } from '../../../reference/solve/small-instances.ts';

const found = (...points: [cost: number, penalty: number][]): Found[] =>
  points.map(([cost, penalty]) => ({ cost, penalty, changes: 0, purchases: 0, ranks: Int32Array.of(0) }));
const heightAt = ({ x, y }: Region, cost: number): number => y[x.findIndex((corner) => corner >= cost)] ?? -1;
const curveOf = (region: Region): [number, number][] => [...region.x].map((x, i) => [x, region.y[i] ?? 0]);

/** DESIGN §8 times the scale: what a bag is worth. */
const scoreOf = (before: number, budget: number, cost: number, penalty: number): number =>
  before - penalty - (Math.max(before, NEEDS_MENDING) * Math.max(0, cost)) / (2 * budget);

describe('where a better plan can lie', () => {
  test('nothing found yet: anywhere within budget', () => {
    const at = (budget: number | null) => curveOf(planQuestion({ before: 300, budget }, []).accept([]));
    expect(at(500)).toEqual([[500, NO_LIMIT]]);
    expect(at(null)).toEqual([[NO_LIMIT, NO_LIMIT]]);
  });
  test('a mended bag found where one is needed: what is mended and costs no more', () => {
    const { accept } = planQuestion({ before: NEEDS_MENDING, budget: 500 }, []);
    expect(curveOf(accept(found([0, 100], [90, MENDED])))).toEqual([[90, MENDED]]);
    // At 21 it is not mended: the line of equal scores.
    expect(accept(found([0, 100], [90, MENDED + 1])).x.length).toBeGreaterThan(1);
  });
  test('a mended bag where none is needed is no end: a cheaper one may score as much', () => {
    const { accept } = planQuestion({ before: NEEDS_MENDING - 1, budget: 500 }, []);
    expect(heightAt(accept(found([90, 5])), 80)).toBeGreaterThan(MENDED - 15);
  });
  test('without a budget: what is no worse than today and costs no more, or what nothing found betters', () => {
    const kept = planQuestion({ before: 60, budget: null }, []).accept(found([10, 60], [30, 7]));
    expect(curveOf(kept)).toEqual([[10, 60]]);
    const mending = planQuestion({ before: 300, budget: null }, []).accept(found([10, 60], [30, 40]));
    expect([
      heightAt(mending, 9),
      heightAt(mending, 10),
      heightAt(mending, 29),
      heightAt(mending, 31),
    ]).toEqual([NO_LIMIT, 60, 59, 39]);
  });
  test('a budget of nothing: nothing that costs', () => {
    const region = planQuestion({ before: 60, budget: 0 }, []).accept(found([-5, 60], [0, 50]));
    expect(heightAt(region, 0)).toBe(50);
    expect(heightAt(region, 1)).toBe(-1);
  });
});

test('with a budget: all that scores no less, and little more', () => {
  const d = dice(17);
  let tight = 0;
  for (let round = 0; round < 120; round++) {
    const before = d.pick([40, 99, 100, 180, 600]);
    const budget = d.whole(1, 400);
    const needsMending = before >= NEEDS_MENDING;
    const bags = Array.from({ length: d.whole(1, 4) }, (): [number, number] => [
      d.whole(-20, budget),
      d.whole(needsMending ? MENDED + 1 : 0, before),
    ]);
    const curve = merge(found(...bags), []);
    const region = planQuestion({ before, budget }, []).accept(curve);
    const best = Math.max(...curve.map(({ cost, penalty }) => scoreOf(before, budget, cost, penalty)));
    const scale = Math.max(before, NEEDS_MENDING);
    for (let cost = -25; cost <= budget + 3; cost++) {
      // The most penalty that scores as much at this cost, and that nothing found betters.
      const line = Math.floor(before - best - (scale * Math.max(0, cost)) / (2 * budget) + 1e-9);
      const cheaper = curve.filter((one) => one.cost <= cost);
      const free = Math.min(
        Infinity,
        ...cheaper.map((one) => (one.cost === cost ? one.penalty : one.penalty - 1)),
      );
      const got = heightAt(region, cost);
      if (cost > budget) {
        expect(got).toBe(-1);
        continue;
      }
      const floor = needsMending ? MENDED : 0;
      const want = Math.min(free, Math.max(line, needsMending ? MENDED : -1));
      const asked = `${JSON.stringify(curveOf(region))} ${String(before)} ${String(budget)} at ${String(cost)}`;
      expect(got, asked).toBeGreaterThanOrEqual(want);
      // A sixteenth of the way is a step; within it the height is that of its cheap end, and a unit more.
      const step = (scale * (budget / 16 + 1)) / (2 * budget) + 2;
      expect(got, asked).toBeLessThanOrEqual(Math.min(free, Math.max(line + step, floor)));
      if (got < free) tight++;
    }
    const corners = curveOf(region);
    corners.slice(1).forEach(([x, y], i) => {
      expect(x).toBeGreaterThan(corners[i]?.[0] ?? 0);
      expect(y).toBeLessThan(corners[i]?.[1] ?? 0);
    });
  }
  expect(tight).toBeGreaterThan(2000);
});

describe('the slopes to look along', () => {
  const curve = [
    { cost: 0, penalty: 100 },
    { cost: 80, penalty: 20 },
    { cost: 120, penalty: 0 },
  ];
  test('are those along which scores are equal, and where the curve is mended, if that is needed', () => {
    // Half a budget is worth as much as the whole of today's penalty, or 100 of it: 2 · 150 / 100, 2 · 600 / 200.
    expect(planQuestion({ before: 60, budget: 150 }, curve).slopes).toEqual([3]);
    const { slopes } = planQuestion({ before: 200, budget: 600 }, curve);
    expect(slopes).toEqual([Math.sqrt(2), 6]);
    const [low, high] = planQuestion({ before: 200, budget: 100 }, curve).slopes ?? [];
    expect([low, high]).toEqual([1, Math.sqrt(2)]);
  });
  test('are that of the curve alone where money is no measure', () => {
    expect(planQuestion({ before: 200, budget: null }, curve).slopes).toEqual([Math.sqrt(2)]);
  });
  test('are those of what is found where there is neither', () => {
    expect(planQuestion({ before: 200, budget: null }, []).slopes).toBeNull();
    expect(planQuestion({ before: 200, budget: null }, curve.slice(0, 1)).slopes).toBeNull();
    expect(planQuestion({ before: 60, budget: null }, curve).slopes).toBeNull();
    expect(planQuestion({ before: 60, budget: 0 }, curve).slopes).toBeNull();
  });
});
