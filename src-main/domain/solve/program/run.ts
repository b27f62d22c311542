import type { Arcs } from './arcs.ts';
import type { Bounds } from '../bounds/bounds.ts';
import { type Found, foundIn } from './found.ts';
import type { Watch } from '../hooks.ts';
import type { Labels } from './labels.ts';
import type { Ladder } from '../model/ladder.ts';
import { LotStates } from './lot-states.ts';
import type { Prune } from '../bounds/prune.ts';
import type { Scenario } from '../search/scenario.ts';
import { Sweep } from './sweep.ts';

/**
 * One label-setting run over the given arcs, from the longest club to the shortest (README, "Program").
 * @param labels emptied first, so that runs can share one store
 * @returns every nondominated (cost, penalty) of the region by rising cost, each the first of its ties
 */
export const run = (
  ladder: Ladder,
  scenario: Scenario,
  arcs: Arcs,
  bounds: Bounds,
  prune: Prune,
  labels: Labels,
  watch: Watch,
): Found[] => {
  const { limit, price, single, own, top, bottom, rank, skipCost, skipChanges, lockedFrom, leads } = ladder;
  const { head, to, penalty: between, start } = arcs;
  const { toGo } = bounds;
  const n = ladder.clubs.length;
  const lots = new LotStates(scenario.lots, scenario.lotAt);
  const { endings } = lots;
  const sweep = new Sweep(labels, lots, limit);
  // Latest label waiting at each node; the last node is for whole bags.
  const waiting = new Int32Array(2 * n + 1).fill(-1);
  labels.size = 0;

  /** Keeps position i at `node` after a label at position `from` (-1: none), over an arc's penalty. */
  const keep = (node: number, i: number, from: number, label: number, arcPenalty: number): void => {
    const count = (labels.count[label] as number) + 1;
    if (count + (lockedFrom[i + 1] as number) > limit) return;
    const state = labels.state[label] as number;
    const steps = lots.steps(state);
    if ((steps.after[i] as number) < 0) lots.fill(state, i);
    const skipped = (skipCost[i] as number) - (skipCost[from + 1] as number);
    let cost = (labels.cost[label] as number) + skipped + (price[i] as number) + (steps.price[i] as number);
    if (endings[i] !== endings[from + 1]) cost += lots.leftOut(state, from, i);
    const penalty = (labels.penalty[label] as number) + arcPenalty + (own[i] as number);
    if (prune.hopeless(toGo, node, cost - (steps.credit[i] as number), penalty, count)) return;
    const bought = (single[i] as number) + (steps.opens[i] as number);
    const dropped = (skipChanges[i] as number) - (skipChanges[from + 1] as number);
    const l = labels.add();
    labels.cost[l] = cost;
    labels.penalty[l] = penalty;
    labels.count[l] = count;
    labels.changes[l] = (labels.changes[label] as number) + dropped + bought;
    labels.purchases[l] = (labels.purchases[label] as number) + bought;
    labels.state[l] = steps.after[i] as number;
    labels.rank[l] = rank[i] as number;
    labels.parent[l] = label;
    labels.next[l] = waiting[node] as number;
    waiting[node] = l;
  };

  /** Ends a bag after position i. */
  const finish = (label: number, i: number): void => {
    const state = labels.state[label] as number;
    let cost = (labels.cost[label] as number) + (skipCost[n] as number) - (skipCost[i + 1] as number);
    if (endings[n] !== endings[i + 1]) cost += lots.leftOut(state, i, n);
    const dropped = (skipChanges[n] as number) - (skipChanges[i + 1] as number);
    const l = labels.add();
    labels.cost[l] = cost;
    labels.penalty[l] = (labels.penalty[label] as number) + (bottom[i] as number);
    labels.count[l] = labels.count[label] as number;
    labels.changes[l] = (labels.changes[label] as number) + dropped;
    labels.purchases[l] = labels.purchases[label] as number;
    labels.state[l] = 0;
    labels.rank[l] = -1;
    labels.parent[l] = label;
    labels.next[l] = waiting[2 * n] as number;
    waiting[2 * n] = l;
  };

  const begin = (): Int32Array => {
    let last = -1;
    for (const way of scenario.starts) {
      if (way.count + (lockedFrom[0] as number) > limit) continue;
      const l = labels.add();
      labels.cost[l] = way.cost;
      labels.penalty[l] = 0;
      labels.count[l] = way.count;
      labels.changes[l] = way.changes;
      labels.purchases[l] = way.purchases;
      labels.state[l] = lots.first(way.kept);
      labels.rank[l] = way.rank;
      labels.parent[l] = -1;
      labels.next[l] = last;
      last = l;
    }
    return sweep.keep(last).slice();
  };

  const extend = (node: number, i: number): void => {
    if ((waiting[node] as number) < 0) return;
    const end = head[node + 1] as number;
    for (const label of sweep.keep(waiting[node] as number)) {
      for (let a = head[node] as number; a < end; a++) {
        keep(to[a] as number, to[a] as number, i, label, between[a] as number);
      }
      if (lockedFrom[i + 1] === 0) finish(label, i);
    }
  };

  const starts = begin();
  let counted = 0;
  for (const i of arcs.positions) {
    const first = leads[i] === 1 ? n + i : i;
    if (start[i] === 1) for (const label of starts) keep(first, i, -1, label, top[i] as number);
    extend(n + i, i);
    extend(i, i);
    watch.made(labels.size - counted);
    counted = labels.size;
  }
  return foundIn(labels, sweep.sorted(waiting[2 * n] as number), prune);
};
