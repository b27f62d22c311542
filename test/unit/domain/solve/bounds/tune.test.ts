import { describe, expect, test } from 'vitest';
import { boundToGo, leastSums } from '../../../../../src-main/domain/solve/bounds/bounds.ts';
import { weightsFor } from '../../../../../src-main/domain/solve/bounds/tune.ts';
import {
  coarse,
  FIRST_SLOPES,
  hullSlopes,
  slopeAt,
  type Weight,
  type Weights,
  weightsOf,
} from '../../../../../src-main/domain/solve/bounds/weights.ts';
import { type Ladder, layOut } from '../../../../../src-main/domain/solve/model/ladder.ts';
import { type Arcs, tabulateArcs } from '../../../../../src-main/domain/solve/program/arcs.ts';
import {
  type Scenario,
  scenarioOf,
  undecided,
} from '../../../../../src-main/domain/solve/search/scenario.ts';
import { realistic } from '../../../../bench/support/solve-instances.ts';

const rowsOf = ({ size, cost, penalty, count }: Weights): Weight[] =>
  Array.from({ length: size }, (_, t) => ({
    cost: cost[t] ?? 0,
    penalty: penalty[t] ?? 0,
    count: count[t] ?? 0,
  }));

const ground = (seed: number, items: number): [Ladder, Scenario, Arcs] => {
  const ladder = layOut(realistic(seed, items));
  const scenario = scenarioOf(ladder, undecided(ladder));
  return [ladder, scenario, tabulateArcs(ladder, scenario.allowed, null)];
};

/** What a row rules out by: its least sum, less the weight of a full bag's count. */
const boundOf = ([ladder, scenario, arcs]: [Ladder, Scenario, Arcs], row: Weight): number => {
  const weights = weightsOf([row]);
  const sums = new Float64Array(weights.size);
  leastSums(ladder, scenario, arcs, weights, boundToGo(ladder, scenario, arcs, weights), sums);
  return (sums[0] ?? 0) - row.count * ladder.limit;
};

describe('weights for some slopes', () => {
  const [ladder, scenario, arcs] = ground(2, 40);
  const slopesOf = (given: number[]): number[] => [
    ...new Set(
      rowsOf(weightsFor(given, ladder, scenario, arcs)).flatMap(({ cost, penalty }) =>
        cost > 0 && penalty > 0 ? [penalty] : [],
      ),
    ),
  ];

  test('are all of them where they are few', () => {
    expect(slopesOf([7])).toEqual([7]);
    expect(slopesOf([3, 9])).toEqual([3, 9]);
    expect(slopesOf([1, 2, 3, 4, 5])).toEqual([1, 2, 3, 4, 5]);
  });
  test('are five of many, evenly, the first and the last among them', () => {
    expect(slopesOf([1, 2, 3, 4, 5, 6, 7, 8, 9])).toEqual([1, 3, 5, 7, 9]);
    const many = slopesOf(Array.from({ length: 200 }, (_, i) => i + 1));
    expect(many).toHaveLength(5);
    expect([many[0], many[4]]).toEqual([1, 200]);
  });
  test('are usual ones where none is known', () => {
    const usual = slopesOf([]);
    expect(usual.every((slope) => FIRST_SLOPES.includes(slope))).toBe(true);
    expect(usual).toHaveLength(5);
  });
  test('stand behind cost alone and penalty alone, and before penalty with a weight of count', () => {
    const rows = rowsOf(weightsFor([7], ladder, scenario, arcs));
    expect(rows.slice(0, 2)).toEqual([
      { cost: 1, penalty: 0, count: 0 },
      { cost: 0, penalty: 1, count: 0 },
    ]);
    expect(rows.at(-1)).toMatchObject({ cost: 0, penalty: 1 });
  });
});

test('the weight of count makes the bound nearly as large as any weight of count can', () => {
  let counts = 0;
  for (const [seed, items] of [
    [0, 40],
    [1, 60],
    [2, 40],
    [3, 60],
    [5, 60],
  ] as const) {
    const on = ground(seed, items);
    // The bag's worst case binds: with fewer clubs allowed, each is worth more.
    on[0] = { ...on[0], limit: 9 };
    const tuned = rowsOf(weightsFor([5, 40, 300], ...on)).slice(2, 6);
    for (const row of tuned) {
      const got = boundOf(on, row);
      const unit = row.cost > 0 ? 2000 : 4 * row.penalty;
      const others = Array.from({ length: 60 }, (_, k) => unit * 1.2 ** (k - 25));
      const best = Math.max(...[0, ...others].map((count) => boundOf(on, { ...row, count })));
      const none = boundOf(on, { ...row, count: 0 });
      // By what a weight of count can bring at all, a tenth at most is missed.
      expect(best - got, `seed ${String(seed)}, slope ${String(row.penalty)}`).toBeLessThanOrEqual(
        0.1 * (best - none) + 1e-6,
      );
      if (row.count > 0) counts++;
    }
  }
  expect(counts).toBeGreaterThan(9);
});

test('a first look takes cost and penalty alone, a middle slope and the last row', () => {
  const row = (penalty: number): Weight => ({ cost: 1, penalty, count: penalty / 2 });
  const rows = [
    { cost: 1, penalty: 0, count: 0 },
    { cost: 0, penalty: 1, count: 0 },
    ...[1, 2, 3, 4, 5].map(row),
    { cost: 0, penalty: 1, count: 9 },
  ];
  expect(rowsOf(coarse(weightsOf(rows)))).toEqual([rows[0], rows[1], row(4), rows[7]]);
});

describe('slopes of a curve', () => {
  const at = (cost: number, penalty: number) => ({ cost, penalty });
  // The hull leaves out (20, 95) and (60, 59), which lie above the chords.
  const curve = [at(0, 100), at(20, 95), at(40, 60), at(60, 59), at(100, 30), at(220, 0)];

  test('are those of its lower hull, rising', () => {
    // 40 for 40, 60 for 30, 120 for 30.
    expect(hullSlopes(curve)).toEqual([1, 2, 4]);
  });
  test('points on one line are one edge', () => {
    expect(hullSlopes([at(0, 30), at(10, 20), at(20, 10), at(60, 0)])).toEqual([1, 4]);
  });
  test('are none of a single point or of none', () => {
    expect(hullSlopes([at(5, 5)])).toEqual([]);
    expect(hullSlopes([])).toEqual([]);
  });
  test('about a penalty: the mean, in ratio, of the edges before and after it', () => {
    expect(slopeAt(curve, 60)).toBeCloseTo(Math.sqrt(1 * 2), 12);
    expect(slopeAt(curve, 59)).toBeCloseTo(Math.sqrt(2 * 4), 12);
    expect(slopeAt(curve, 30)).toBeCloseTo(Math.sqrt(2 * 4), 12);
  });
  test('at the ends: four times as steep past the last, the first alone before the first', () => {
    expect(slopeAt(curve, 0)).toBeCloseTo(Math.sqrt(4 * 16), 12);
    expect(slopeAt(curve, 100)).toBeCloseTo(Math.sqrt(1 * 1), 12);
    expect(slopeAt(curve, 500)).toBeCloseTo(1, 12);
  });
  test('where the curve tells nothing: a usual one', () => {
    const usual = slopeAt([], 20);
    expect(usual).toBeGreaterThan(1);
    expect(slopeAt([at(5, 5)], 20)).toBe(usual);
    expect(slopeAt(curve.slice(0, 4), 20)).toBe(usual);
  });
});
