import { describe, expect, test } from 'vitest';
import { boundsOf } from '../../../../../src-main/domain/solve/bounds/bounds.ts';
import { weightsOf } from '../../../../../src-main/domain/solve/bounds/weights.ts';
import { type Ladder, layOut } from '../../../../../src-main/domain/solve/model/ladder.ts';
import { tabulateArcs } from '../../../../../src-main/domain/solve/program/arcs.ts';
import { pickCore } from '../../../../../src-main/domain/solve/search/core.ts';
import { scenarioOf, undecided } from '../../../../../src-main/domain/solve/search/scenario.ts';
import { realistic } from '../../../../bench/support/solve-instances.ts';

const SLOPES = [5, 40, 300, 900];
const WEIGHTS = weightsOf([
  { cost: 1, penalty: 0, count: 0 },
  { cost: 0, penalty: 1, count: 0 },
  ...SLOPES.map((penalty) => ({ cost: 1, penalty, count: 0 })),
]);
const boundsFor = (ladder: Ladder) => {
  const scenario = scenarioOf(ladder, undecided(ladder));
  return boundsOf(ladder, scenario, tabulateArcs(ladder, scenario.allowed, null), WEIGHTS);
};

describe('the first clubs to try', () => {
  test('are all that is owned, and for each weight those through which its bound is least', () => {
    for (const seed of [0, 1, 2, 3]) {
      const ladder = layOut(realistic(seed, 70));
      const bounds = boundsFor(ladder);
      const n = ladder.clubs.length;
      const { size } = WEIGHTS;
      const through = (v: number, t: number) =>
        (bounds.toGo[v * size + t] ?? 0) + (bounds.upTo[v * size + t] ?? 0);
      const want = new Set(ladder.clubs.flatMap(({ origin }, i) => (origin === 'owned' ? [i] : [])));
      for (let t = 2; t < size; t++) {
        const rest = ladder.clubs
          .map((_, i) => ({ i, sum: Math.min(through(i, t), through(n + i, t)) }))
          .filter(({ i, sum }) => !want.has(i) && sum < Infinity)
          // The first of equal ones.
          .toSorted((a, b) => a.sum - b.sum || a.i - b.i);
        // 11 over six rows: two for each.
        for (const { i } of rest.slice(0, 2)) want.add(i);
      }
      const core = pickCore(ladder, bounds, 11);
      expect([...core].flatMap((one, i) => (one === 1 ? [i] : []))).toEqual([...want].sort((a, b) => a - b));
    }
  });
  test('are no clubs that no bag can hold', () => {
    const ladder = layOut(realistic(1, 40));
    const scenario = scenarioOf(ladder, undecided(ladder));
    const owned = scenario.allowed.map((_, i) => (ladder.clubs[i]?.origin === 'owned' ? 1 : 0));
    const arcs = tabulateArcs(ladder, owned, null);
    const core = pickCore(ladder, boundsOf(ladder, scenario, arcs, WEIGHTS), 500);
    expect(core).toEqual(owned);
  });
  test('are every club where there is room for all', () => {
    const ladder = layOut(realistic(1, 40));
    const core = pickCore(ladder, boundsFor(ladder), 500);
    expect(core.every((one) => one === 1)).toBe(true);
  });
});
