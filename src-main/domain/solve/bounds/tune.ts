import type { Arcs } from '../program/arcs.ts';
import { boundToGo, leastSums } from './bounds.ts';
import type { Ladder } from '../model/ladder.ts';
import type { Scenario } from '../search/scenario.ts';
import { BLOCK, FIRST_SLOPES, PURE, type Weight, type Weights, weightsOf } from './weights.ts';

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
  const rows: Weight[] = [];
  for (let i = 0; Math.round(i) < slopes.length; i += step) {
    rows.push({ cost: 1, penalty: slopes[Math.round(i)] as number, count: 0 });
  }
  // For bags that no money betters: without it, the club limit would not count there.
  rows.push({ cost: 0, penalty: 1, count: 0 });
  return weightsOf([...PURE, ...rows.map((row) => tune(ladder, scenario, arcs, row))]);
};

/** Rounds of the search for a weight of count: its bound is within a percent or so of its best after them. */
const ROUNDS = 3;

/** A bound is concave in the weight of count: of a few weights, the best lies next to the best of them. */
const tune = (ladder: Ladder, scenario: Scenario, arcs: Arcs, row: Weight): Weight => {
  const sums = new Float64Array(BLOCK);
  const best = (counts: readonly number[]): number => {
    const weights = weightsOf(counts.map((count) => ({ ...row, count })));
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
