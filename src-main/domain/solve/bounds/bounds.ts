import type { Arcs } from '../program/arcs.ts';
import type { Ladder } from '../model/ladder.ts';
import type { Scenario } from '../search/scenario.ts';
import type { Weights } from './weights.ts';

/**
 * The least weighted sums that any bag of a scenario can add after each node (`toGo`) and up to it, itself
 * included (`upTo`), when the club limit is forgotten and open lots are shared out over their members.
 * Rows by node, columns by weights. Infinity: no bag.
 */
export type Bounds = { weights: Weights; toGo: Float64Array; upTo: Float64Array };

/** Backward over the ladder. */
export const boundToGo = (ladder: Ladder, scenario: Scenario, arcs: Arcs, weights: Weights): Float64Array => {
  const { own, bottom, lockedFrom, leads } = ladder;
  const { leastSkipCost, leastPrice, allowed } = scenario;
  const { size, cost, penalty: weight, count } = weights;
  const n = ladder.clubs.length;
  const toGo = new Float64Array(2 * n * size).fill(Infinity);
  // Least sums from the first club on with position i kept, but for what comes before it.
  const through = new Float64Array(n * size).fill(Infinity);
  const all = leastSkipCost[n] as number;
  for (let p = arcs.positions.length - 1; p >= 0; p--) {
    const i = arcs.positions[p] as number;
    if (allowed[i] === 0) continue;
    const skipped = leastSkipCost[i + 1] as number;
    const nodes = leads[i] === 1 ? 2 * n : n;
    for (let v = i; v < nodes; v += n) {
      if (lockedFrom[i + 1] === 0) {
        for (let t = 0; t < size; t++) {
          toGo[v * size + t] = (cost[t] as number) * all + (weight[t] as number) * (bottom[i] as number);
        }
      }
      gather(arcs, v, weights, through, toGo);
      for (let t = 0; t < size; t++) {
        toGo[v * size + t] = (toGo[v * size + t] as number) - (cost[t] as number) * skipped;
      }
    }
    const kept = (leastSkipCost[i] as number) + (leastPrice[i] as number);
    for (let t = 0; t < size; t++) {
      through[i * size + t] =
        (cost[t] as number) * kept +
        (weight[t] as number) * (own[i] as number) +
        (count[t] as number) +
        (toGo[i * size + t] as number);
    }
  }
  return toGo;
};

/** The least over a node's arcs, four weights at a time: two to four times as quick as one by one. */
const gather = (arcs: Arcs, v: number, weights: Weights, through: Float64Array, toGo: Float64Array): void => {
  const { head, to, penalty } = arcs;
  const { size, penalty: weight } = weights;
  const first = head[v] as number;
  const end = head[v + 1] as number;
  for (let t = 0; t < size; t += 4) {
    const at = v * size + t;
    const [w0, w1, w2, w3] = [weight[t], weight[t + 1], weight[t + 2], weight[t + 3]] as Four;
    let least0 = toGo[at] as number;
    let least1 = toGo[at + 1] as number;
    let least2 = toGo[at + 2] as number;
    let least3 = toGo[at + 3] as number;
    for (let a = first; a < end; a++) {
      const next = (to[a] as number) * size + t;
      const between = penalty[a] as number;
      const sum0 = (through[next] as number) + w0 * between;
      const sum1 = (through[next + 1] as number) + w1 * between;
      const sum2 = (through[next + 2] as number) + w2 * between;
      const sum3 = (through[next + 3] as number) + w3 * between;
      if (sum0 < least0) least0 = sum0;
      if (sum1 < least1) least1 = sum1;
      if (sum2 < least2) least2 = sum2;
      if (sum3 < least3) least3 = sum3;
    }
    toGo[at] = least0;
    toGo[at + 1] = least1;
    toGo[at + 2] = least2;
    toGo[at + 3] = least3;
  }
};

type Four = [number, number, number, number];

/** Forward over the ladder. */
export const boundUpTo = (ladder: Ladder, scenario: Scenario, arcs: Arcs, weights: Weights): Float64Array => {
  const { own, top, leads } = ladder;
  const { leastSkipCost, leastPrice, allowed } = scenario;
  const { size, cost, penalty: weight, count } = weights;
  const n = ladder.clubs.length;
  const upTo = new Float64Array(2 * n * size).fill(Infinity);
  const starts = leastStarts(scenario, weights);
  // Least sums of the ways to position i, before its own.
  const reached = new Float64Array(n * size).fill(Infinity);
  const base = new Float64Array(size);
  for (const i of arcs.positions) {
    if (allowed[i] === 0) continue;
    const paid = (leastSkipCost[i] as number) + (leastPrice[i] as number);
    const passed = leastSkipCost[i + 1] as number;
    const lead = leads[i] === 1;
    for (let t = 0; t < size; t++) {
      const kept =
        (cost[t] as number) * paid + (weight[t] as number) * (own[i] as number) + (count[t] as number);
      const first =
        arcs.start[i] === 1 ? (starts[t] as number) + (weight[t] as number) * (top[i] as number) : Infinity;
      const later = reached[i * size + t] as number;
      upTo[(n + i) * size + t] = first + kept;
      upTo[i * size + t] = (lead ? later : Math.min(first, later)) + kept;
    }
    for (let v = i; v < (lead ? 2 * n : n); v += n) {
      for (let t = 0; t < size; t++) base[t] = (upTo[v * size + t] as number) - (cost[t] as number) * passed;
      spread(arcs, v, weights, base, reached);
    }
  }
  return upTo;
};

/** Lowers the sums at the far ends of a node's arcs, four weights at a time. */
const spread = (arcs: Arcs, v: number, weights: Weights, base: Float64Array, reached: Float64Array): void => {
  const { head, to, penalty } = arcs;
  const { size, penalty: weight } = weights;
  const first = head[v] as number;
  const end = head[v + 1] as number;
  for (let t = 0; t < size; t += 4) {
    const [w0, w1, w2, w3] = [weight[t], weight[t + 1], weight[t + 2], weight[t + 3]] as Four;
    const [base0, base1, base2, base3] = [base[t], base[t + 1], base[t + 2], base[t + 3]] as Four;
    for (let a = first; a < end; a++) {
      const next = (to[a] as number) * size + t;
      const between = penalty[a] as number;
      const sum0 = base0 + w0 * between;
      const sum1 = base1 + w1 * between;
      const sum2 = base2 + w2 * between;
      const sum3 = base3 + w3 * between;
      if (sum0 < (reached[next] as number)) reached[next] = sum0;
      if (sum1 < (reached[next + 1] as number)) reached[next + 1] = sum1;
      if (sum2 < (reached[next + 2] as number)) reached[next + 2] = sum2;
      if (sum3 < (reached[next + 3] as number)) reached[next + 3] = sum3;
    }
  }
};

const leastStarts = ({ starts }: Scenario, { size, cost, count }: Weights): Float64Array =>
  new Float64Array(size).map((_, t) =>
    starts.reduce(
      (least, s) => Math.min(least, (cost[t] as number) * s.leastCost + (count[t] as number) * s.count),
      Infinity,
    ),
  );

/** Least weighted sums of any whole bag, from the backward bounds, into `sums`. */
export const leastSums = (
  ladder: Ladder,
  scenario: Scenario,
  arcs: Arcs,
  weights: Weights,
  toGo: Float64Array,
  sums: Float64Array,
): void => {
  const { own, top, leads } = ladder;
  const { size, cost, penalty, count } = weights;
  const n = ladder.clubs.length;
  const starts = leastStarts(scenario, weights);
  sums.fill(Infinity);
  for (const i of arcs.positions) {
    if (arcs.start[i] === 0 || scenario.allowed[i] === 0) continue;
    const paid = (scenario.leastSkipCost[i] as number) + (scenario.leastPrice[i] as number);
    const bare = (own[i] as number) + (top[i] as number);
    const row = (leads[i] === 1 ? n + i : i) * size;
    for (let t = 0; t < size; t++) {
      const sum =
        (cost[t] as number) * paid +
        (penalty[t] as number) * bare +
        (count[t] as number) +
        (toGo[row + t] as number) +
        (starts[t] as number);
      sums[t] = Math.min(sums[t] as number, sum);
    }
  }
};

export const boundsOf = (ladder: Ladder, scenario: Scenario, arcs: Arcs, weights: Weights): Bounds => ({
  weights,
  toGo: boundToGo(ladder, scenario, arcs, weights),
  upTo: boundUpTo(ladder, scenario, arcs, weights),
});
