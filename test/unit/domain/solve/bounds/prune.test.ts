import { describe, expect, test } from 'vitest';
import { Prune } from '../../../../../src-main/domain/solve/bounds/prune.ts';
import { atMost, everywhere, notBettered } from '../../../../../src-main/domain/solve/bounds/region.ts';
import { weightsOf } from '../../../../../src-main/domain/solve/bounds/weights.ts';
import { layOut } from '../../../../../src-main/domain/solve/model/ladder.ts';
import { LARGEST_TOTAL } from '../../../../../src-main/domain/solve/model/validate.ts';
import { dice } from '../../../../reference/solve/small-instances.ts';
import { candidate, instance, item } from '../instances.ts';

const WEIGHTS = weightsOf([
  { cost: 1, penalty: 0, count: 0 },
  { cost: 0, penalty: 1, count: 0 },
  { cost: 1, penalty: 2, count: 0 },
  { cost: 1, penalty: 0.5, count: 3 },
  { cost: 0, penalty: 1, count: 4 },
  { cost: 1, penalty: 8, count: 1 },
]);
const LIMIT = 5;
const ladder = layOut(
  instance(
    Array.from({ length: 9 }, (_, i) => candidate(`c${String(i)}`, 10, { carryDy: 100 * i })),
    { limit: LIMIT },
  ),
);

describe('whether anything can lie in the region', () => {
  // Source: the definition. All sums are binary fractions far from rounding.
  test('is told corner by corner and weight by weight, whatever was asked before', () => {
    const d = dice(11);
    const met = { empty: 0, not: 0 };
    for (let round = 0; round < 60; round++) {
      const costs = [...new Set(Array.from({ length: 4 }, () => d.whole(-9, 30)))].sort((a, b) => a - b);
      let penalty = 40;
      const curve = costs.map((cost) => ({ cost, penalty: (penalty -= d.whole(1, 9)) }));
      const region = d.pick([notBettered(curve), atMost(d.whole(-5, 30), d.whole(0, 40)), everywhere()]);
      const prune = new Prune(ladder, region, WEIGHTS);
      for (let ask = 0; ask < 30; ask++) {
        const one = { cost: d.whole(-12, 32), penalty: d.whole(0, 45), count: d.whole(0, LIMIT) };
        const more = Array.from(WEIGHTS.cost, (_, t) => (t < 2 ? 0 : d.whole(0, 6) / 2));
        const sums = Array.from(
          WEIGHTS.cost,
          (weight, t) =>
            weight * one.cost +
            (WEIGHTS.penalty[t] ?? 0) * one.penalty +
            (WEIGHTS.count[t] ?? 0) * one.count +
            (more[t] ?? 0),
        );
        const want = ![...region.x].some((x, corner) =>
          sums.every((sum, t) => {
            const y = region.y[corner] ?? 0;
            return (
              sum <=
              (WEIGHTS.cost[t] ?? 0) * x + (WEIGHTS.penalty[t] ?? 0) * y + (WEIGHTS.count[t] ?? 0) * LIMIT
            );
          }),
        );
        // The same asked of a label and of what may follow it.
        const toGo = Float64Array.from([...more.map(() => 99), ...more]);
        expect(prune.hopeless(toGo, 1, one.cost, one.penalty, one.count)).toBe(want);
        prune.least.set(sums);
        expect(prune.empty()).toBe(want);
        if (want) met.empty++;
        else met.not++;
        const inside = [...region.x].some(
          (x, corner) => one.cost <= x && one.penalty <= (region.y[corner] ?? 0),
        );
        expect(prune.holds(one.cost, one.penalty)).toBe(inside);
      }
    }
    expect(Math.min(met.empty, met.not)).toBeGreaterThan(200);
  });
});

describe('rounding', () => {
  // Money as large as is let in, and slopes that no double holds exactly.
  const price = Math.floor(LARGEST_TOTAL / 16);
  const parts = [price - 1, price - 3, price - 7, price - 9, price - 13];
  const rich = layOut(instance(parts.map((of, i) => candidate(`c${String(i)}`, of, { carryDy: 100 * i }))));
  const slopes = [0.1, 0.7, 1 / 3, 3.3, 41 / 7];
  const weights = weightsOf([
    { cost: 1, penalty: 0, count: 0 },
    { cost: 0, penalty: 1, count: 0 },
    ...slopes.map((penalty) => ({ cost: 0.3, penalty, count: 0.1 })),
  ]);
  const total = parts.reduce((sum, of) => sum + of, 0);

  test('never rules out a bag that lies on the corner, in whatever order its sums were made', () => {
    const d = dice(5);
    const prune = new Prune(rich, atMost(total, 97), weights);
    let above = 0;
    for (let ask = 0; ask < 200; ask++) {
      prune.least.forEach((_, t) => {
        const of = (weight: number, list: readonly number[]) => list.map((one) => weight * one);
        const terms = d.shuffle([
          ...of(weights.cost[t] ?? 0, parts),
          ...of(weights.penalty[t] ?? 0, [13, 29, 55]),
          ...of(weights.count[t] ?? 0, [1, 1, 1, 1, 1]),
        ]);
        const sum = terms.reduce((all, one) => all + one, 0);
        prune.least[t] = t < 2 ? ([total, 97][t] ?? 0) : sum;
        const whole =
          (weights.cost[t] ?? 0) * total + (weights.penalty[t] ?? 0) * 97 + (weights.count[t] ?? 0) * 5;
        if (sum > whole) above++;
      });
      expect(prune.empty()).toBe(false);
    }
    // Without an allowance some would have been ruled out.
    expect(above).toBeGreaterThan(20);
  });

  test('allows for little: a millionth of the total more is ruled out', () => {
    const prune = new Prune(rich, atMost(total, 97), weights);
    for (let t = 2; t < weights.size; t++) {
      weights.cost.forEach((cost, row) => {
        const sum = cost * total + (weights.penalty[row] ?? 0) * 97 + (weights.count[row] ?? 0) * 5;
        prune.least[row] = row === t ? sum * (1 + 1e-6) : sum * (1 - 1e-6);
      });
      expect(prune.empty(), `row ${String(t)}`).toBe(true);
    }
  });

  test('goes by the penalty too where that is the larger', () => {
    const heavy = layOut(
      instance([item('a', { carryDy: 900 }), item('b', { carryDy: 100 })], {
        bands: [{ fromDy: 0, wideDy: 0, crowdedDy: 0, wideWeight: 2 ** 38, crowdWeight: 0 }],
      }),
    );
    const penalty = 800 * 2 ** 38;
    const rows = weightsOf([
      { cost: 1, penalty: 0, count: 0 },
      { cost: 0, penalty: 1, count: 0 },
      { cost: 1, penalty: 0.1, count: 0 },
    ]);
    const prune = new Prune(heavy, atMost(0, penalty), rows);
    let above = 0;
    for (let step = 1; step < 200; step++) {
      const sum = 0.1 * step + 0.1 * (penalty - step);
      if (sum > 0.1 * penalty) above++;
      prune.least.set([0, penalty, sum, sum]);
      expect(prune.empty()).toBe(false);
    }
    expect(above).toBeGreaterThan(0);
  });
});
