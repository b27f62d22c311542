import type { Arcs } from './arcs.ts';
import { boundToGo, leastSums } from './bounds.ts';
import type { Ladder } from './ladder.ts';
import type { Reached } from './region.ts';
import type { Scenario } from './scenario.ts';

/** Weights of cost, penalty and count, by column: each row makes one number of a bag, to be made least. */
export type Weights = { size: number; cost: Float64Array; penalty: Float64Array; count: Float64Array };

type Row = { cost: number; penalty: number; count: number };

/** Pure cost and pure penalty: the first two rows of all weights. */
const PURE: readonly Row[] = [
  { cost: 1, penalty: 0, count: 0 },
  { cost: 0, penalty: 1, count: 0 },
];

/** Number of rows that weigh one thing alone. */
export const PURES = PURE.length;

/** Rows are padded to a multiple of this, by repeating the last: bounds are made four at a time. */
const BLOCK = 4;

const table = (rows: readonly Row[]): Weights => {
  const padded = [...rows];
  while (padded.length % BLOCK !== 0) padded.push(rows.at(-1) as Row);
  return {
    size: padded.length,
    cost: Float64Array.from(padded, (row) => row.cost),
    penalty: Float64Array.from(padded, (row) => row.penalty),
    count: Float64Array.from(padded, (row) => row.count),
  };
};

export const pureWeights = (): Weights => table(PURE);

/** Costs of one unit of penalty to look at when nothing is known yet, in minor units. */
const FIRST_SLOPES = [4, 10, 25, 60, 150, 400];

export const firstWeights = (): Weights =>
  table([...PURE, ...FIRST_SLOPES.map((penalty) => ({ cost: 1, penalty, count: 0 }))]);

/** A few of the weights, for a first coarse look: a middle slope, and the last. */
export const coarse = (weights: Weights): Weights => {
  const row = (t: number): Row => ({
    cost: weights.cost[t] as number,
    penalty: weights.penalty[t] as number,
    count: weights.count[t] as number,
  });
  return table([...PURE, row((PURES + weights.size) >> 1), row(weights.size - 1)]);
};

/** Most slopes at once: more of them prune little more and cost time. Measured with test/bench/solve.ts. */
const MOST_SLOPES = 5;

/**
 * One row for each slope, thinned out, and one for penalty alone, each with the weight of count that makes
 * its bound large. The slopes of a curve's hull give the bounds that touch it.
 * @param given rising; empty: not known yet
 */
export const weightsFor = (
  given: readonly number[],
  ladder: Ladder,
  scenario: Scenario,
  arcs: Arcs,
): Weights => {
  const slopes = given.length > 0 ? given : FIRST_SLOPES;
  const step = Math.max(1, (slopes.length - 1) / (MOST_SLOPES - 1));
  const rows: Row[] = [];
  for (let i = 0; Math.round(i) < slopes.length; i += step) {
    rows.push({ cost: 1, penalty: slopes[Math.round(i)] as number, count: 0 });
  }
  // For bags that no money betters: without it, the club limit would not count there.
  rows.push({ cost: 0, penalty: 1, count: 0 });
  return table([...PURE, ...rows.map((row) => tune(ladder, scenario, arcs, row))]);
};

/** Cost per unit of penalty along the lower hull, rising. */
export const hullSlopes = (found: readonly Reached[]): number[] => {
  const hull: Reached[] = [];
  const slope = (a: Reached, b: Reached): number => (b.cost - a.cost) / (a.penalty - b.penalty);
  for (const point of found) {
    while (hull.length > 1) {
      const [a, b] = hull.slice(-2) as [Reached, Reached];
      if (slope(a, b) < slope(b, point)) break;
      hull.pop();
    }
    hull.push(point);
  }
  return hull.slice(1).map((point, i) => slope(hull[i] as Reached, point));
};

/** Rounds of the search for a weight of count: its bound is within a percent or so of its best after them. */
const ROUNDS = 3;

/** A bound is concave in the weight of count: of a few weights, the best lies next to the best of them. */
const tune = (ladder: Ladder, scenario: Scenario, arcs: Arcs, row: Row): Row => {
  const sums = new Float64Array(BLOCK);
  const best = (counts: readonly number[]): number => {
    const weights = table(counts.map((count) => ({ ...row, count })));
    leastSums(ladder, scenario, arcs, weights, boundToGo(ladder, scenario, arcs, weights), sums);
    let top = 0;
    const value = (t: number): number => (sums[t] as number) - (counts[t] as number) * ladder.limit;
    counts.forEach((_, t) => {
      if (value(t) > value(top)) top = t;
    });
    return top;
  };
  const unit = row.cost > 0 ? Math.max(1, ladder.largest.money / ladder.clubs.length / 8) : 4 * row.penalty;
  let counts = [0, unit, 4 * unit, 16 * unit];
  let top = best(counts);
  for (let round = 0; round < ROUNDS; round++) {
    const low = counts[top - 1] ?? (counts[top] as number);
    const high = counts[top + 1] ?? (counts[top] as number) * 4;
    const middle = counts[top] as number;
    counts = [(2 * low + middle) / 3, middle, (2 * middle + high) / 3, (middle + 2 * high) / 3];
    top = best(counts);
  }
  return { ...row, count: counts[top] as number };
};
