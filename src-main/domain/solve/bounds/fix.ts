import { type Arcs, filterArcs } from '../program/arcs.ts';
import type { Bounds } from './bounds.ts';
import type { Ladder } from '../model/ladder.ts';
import type { Prune } from './prune.ts';
import type { Scenario } from '../search/scenario.ts';

/** The arcs that some bag of the scenario in the region may use: all others are dropped before a run. */
export const fixArcs = (
  ladder: Ladder,
  scenario: Scenario,
  arcs: Arcs,
  bounds: Bounds,
  prune: Prune,
): Arcs => {
  const { own, leads } = ladder;
  const { leastSkipCost, leastPrice } = scenario;
  const { upTo, toGo } = bounds;
  const { size, cost, penalty: weight, count } = bounds.weights;
  const n = ladder.clubs.length;
  const { least } = prune;
  const used = new Uint8Array(2 * n);
  // The parts of an arc's sums that depend on one end alone.
  const before = new Float64Array(2 * n * size);
  const after = new Float64Array(n * size);
  for (const i of arcs.positions) {
    const passed = leastSkipCost[i + 1] as number;
    const paid = (leastSkipCost[i] as number) + (leastPrice[i] as number);
    const nodes = leads[i] === 1 ? 2 * n : n;
    for (let v = i; v < nodes; v += n) {
      for (let t = 0; t < size; t++) {
        const at = v * size + t;
        least[t] = (upTo[at] as number) + (toGo[at] as number);
        before[at] = (upTo[at] as number) - (cost[t] as number) * passed;
      }
      used[v] = prune.empty() ? 0 : 1;
    }
    for (let t = 0; t < size; t++) {
      const kept =
        (cost[t] as number) * paid + (weight[t] as number) * (own[i] as number) + (count[t] as number);
      after[i * size + t] = kept + (toGo[i * size + t] as number);
    }
  }
  const wanted = (v: number, i: number, penalty: number): boolean => {
    if (used[v] === 0 || used[i] === 0) return false;
    const row = v * size;
    const next = i * size;
    for (let t = 0; t < size; t++) {
      least[t] = (before[row + t] as number) + (weight[t] as number) * penalty + (after[next + t] as number);
    }
    return !prune.empty();
  };
  const start = arcs.start.map((s, i) => (s === 1 && used[leads[i] === 1 ? n + i : i] === 1 ? 1 : 0));
  return filterArcs(arcs, start, wanted);
};
