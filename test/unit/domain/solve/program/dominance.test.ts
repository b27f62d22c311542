import { expect, test } from 'vitest';
import { Prune } from '../../../../../src-main/domain/solve/bounds/prune.ts';
import { atMost, everywhere } from '../../../../../src-main/domain/solve/bounds/region.ts';
import { pureWeights } from '../../../../../src-main/domain/solve/bounds/weights.ts';
import { layOut } from '../../../../../src-main/domain/solve/model/ladder.ts';
import { type Found, foundIn, merge } from '../../../../../src-main/domain/solve/program/found.ts';
import { Labels } from '../../../../../src-main/domain/solve/program/labels.ts';
import { LotStates } from '../../../../../src-main/domain/solve/program/lot-states.ts';
import { Sweep } from '../../../../../src-main/domain/solve/program/sweep.ts';
import { type Dice, dice } from '../../../../reference/solve/small-instances.ts';
import { instance, item } from '../instances.ts';

// Source of every expected value: README, "Dominance", asked of each pair of labels.

/** Three sets for sale and two owned ones, all with members still to come. */
const LOTS = [
  { candidate: true, price: 3, gain: 0 },
  { candidate: true, price: 2, gain: 0 },
  { candidate: true, price: 5, gain: 0 },
  { candidate: false, price: 0, gain: 2 },
  { candidate: false, price: 0, gain: -1 },
].map((lot, l) => ({ ...lot, at: [l, 9], last: 9 }));
const lotStates = () =>
  new LotStates(
    LOTS,
    Int32Array.from({ length: 10 }, (_, i) => (i < 5 ? i : -1)),
  );

type Label = {
  cost: number;
  penalty: number;
  changes: number;
  purchases: number;
  ranks: number[];
  opened: number[];
};

const MOST_CLUBS = 5;
const randomLabel = (d: Dice): Label => ({
  cost: d.whole(0, 6),
  penalty: d.whole(0, 4),
  changes: d.whole(0, 3),
  purchases: d.whole(0, 2),
  ranks: d.shuffle([0, 1, 2, 3, 4, 5, 6, 7]).slice(0, d.whole(1, MOST_CLUBS)),
  opened: [0, 1, 2, 3, 4].filter(() => d.chance(0.3)),
});

/** Stores labels as a run would: a chain of clubs each, the labels of the list linked. */
const store = (
  labels: Labels,
  states: LotStates,
  all: readonly Label[],
): { first: number; ids: number[] } => {
  let first = -1;
  const ids = all.map(({ ranks, opened, ...figures }) => {
    const state = states.first(opened);
    let parent = -1;
    ranks.forEach((rank) => {
      const l = labels.add();
      labels.rank[l] = rank;
      labels.parent[l] = parent;
      parent = l;
    });
    const l = parent;
    labels.cost[l] = figures.cost;
    labels.penalty[l] = figures.penalty;
    labels.changes[l] = figures.changes;
    labels.purchases[l] = figures.purchases;
    labels.count[l] = ranks.length;
    labels.state[l] = state;
    labels.next[l] = first;
    first = l;
    return l;
  });
  return { first, ids };
};

const compareRanks = (a: Label, b: Label): number => {
  const [one, other] = [a.ranks.toSorted((x, y) => x - y), b.ranks.toSorted((x, y) => x - y)];
  const at = one.findIndex((rank, i) => rank !== other[i]);
  return at < 0 ? 0 : (one[at] ?? 0) - (other[at] ?? 0);
};

/** Whether `a` makes `b` needless. */
const betters = (a: Label, b: Label): boolean => {
  let owed = 0;
  let opened = 0;
  LOTS.forEach((lot, l) => {
    const [inA, inB] = [a.opened.includes(l), b.opened.includes(l)];
    if (inA === inB) return;
    if (lot.candidate && inB) {
      owed += lot.price;
      opened++;
    }
    if (!lot.candidate) owed += Math.max(0, inA ? lot.gain : -lot.gain);
  });
  if (a.ranks.length > b.ranks.length) return false;
  if (a.cost + owed > b.cost || a.penalty > b.penalty) return false;
  if (a.cost + owed < b.cost || a.penalty < b.penalty) return true;
  const changes = a.changes + opened - b.changes;
  if (changes !== 0) return changes < 0;
  const purchases = a.purchases + opened - b.purchases;
  if (purchases !== 0) return purchases < 0;
  return a.opened.join() === b.opened.join() && a.ranks.length === b.ranks.length && compareRanks(a, b) < 0;
};

test('what is kept at a node is what no other label betters', () => {
  const d = dice(8);
  const states = lotStates();
  const met = { kept: 0, gone: 0 };
  for (let round = 0; round < 150; round++) {
    const labels = new Labels();
    // One object serves many nodes: what it noted at one must not be left at the next.
    const sweep = new Sweep(labels, states, MOST_CLUBS);
    for (let node = 0; node < 3; node++) {
      const all = Array.from({ length: d.pick([0, 1, 2, 5, 12, 40]) }, () => randomLabel(d));
      const { first, ids } = store(labels, states, all);
      const got = [...sweep.keep(first)];
      // Labels alike in all: one of them stays.
      const alike = (b: Label, a: Label) =>
        a.cost === b.cost &&
        a.penalty === b.penalty &&
        a.changes === b.changes &&
        a.purchases === b.purchases &&
        a.opened.join() === b.opened.join() &&
        compareRanks(a, b) === 0 &&
        a.ranks.length === b.ranks.length;
      const want = all.filter(
        (b, at) => !all.some((a, other) => betters(a, b) || (other < at && alike(a, b))),
      );
      const figures = (one: Label) => JSON.stringify({ ...one, ranks: one.ranks.toSorted((x, y) => x - y) });
      const kept = got.map((l) => all[ids.indexOf(l)]).filter((one) => one !== undefined);
      expect(kept.map(figures).toSorted()).toEqual(want.map(figures).toSorted());
      // In the order that a run extends them in.
      const order = kept.map(({ cost, penalty, changes, purchases, ranks }) => [
        cost,
        penalty,
        changes,
        purchases,
        ranks.length,
      ]);
      expect(order).toEqual(
        order.toSorted((a, b) => a.map((one, i) => one - (b[i] ?? 0)).find((sign) => sign !== 0) ?? 0),
      );
      met.kept += want.length;
      met.gone += all.length - want.length;
    }
  }
  expect(Math.min(met.kept, met.gone)).toBeGreaterThan(400);
});

/** Of whole bags those that are first by cost, penalty, changes, purchases and ids, and less of penalty than all before. */
const firstOfEach = (all: readonly Found[]): Found[] => {
  const sign = (a: Found, b: Found): number => {
    const ids = ({ ranks }: Found) => [...ranks].map((rank) => String.fromCharCode(97 + rank)).join('');
    return (
      a.cost - b.cost ||
      a.penalty - b.penalty ||
      a.changes - b.changes ||
      a.purchases - b.purchases ||
      (ids(a) < ids(b) ? -1 : ids(a) > ids(b) ? 1 : 0)
    );
  };
  return all
    .toSorted(sign)
    .filter((one, at, sorted) => sorted.slice(0, at).every((before) => before.penalty > one.penalty));
};

const bags = (d: Dice, size: number): Found[] =>
  Array.from({ length: size }, () => ({
    cost: d.whole(0, 5),
    penalty: d.whole(0, 4),
    changes: d.whole(0, 2),
    purchases: d.whole(0, 1),
    ranks: Int32Array.from(d.shuffle([0, 1, 2, 3, 4]).slice(0, d.whole(1, 4))).sort(),
  }));

test('two curves in one: each pair once, the first of its ties', () => {
  const d = dice(21);
  for (let round = 0; round < 100; round++) {
    const [a, b] = [bags(d, d.whole(0, 12)), bags(d, d.whole(0, 12))];
    expect(merge(a, b)).toEqual(firstOfEach([...a, ...b]));
  }
});

test('the bags found by a run: each pair of the region once, the first of its ties', () => {
  const d = dice(22);
  const ladder = layOut(instance([item('a')]));
  let outside = 0;
  for (let round = 0; round < 100; round++) {
    const all = bags(d, d.whole(0, 25));
    const labels = new Labels();
    const states = lotStates();
    const { first } = store(
      labels,
      states,
      all.map((one) => ({ ...one, ranks: [...one.ranks], opened: [] })),
    );
    const region = d.pick([everywhere(), atMost(d.whole(0, 5), d.whole(0, 4))]);
    const inside = (one: Found) => one.cost <= (region.x[0] ?? 0) && one.penalty <= (region.y[0] ?? 0);
    const want = firstOfEach(all).filter(inside);
    outside += firstOfEach(all).length - want.length;
    const sorted = new Sweep(labels, states, MOST_CLUBS).sorted(first);
    expect(foundIn(labels, sorted, new Prune(ladder, region, pureWeights()))).toEqual(want);
  }
  expect(outside).toBeGreaterThan(15);
});

test('a cost of nothing is no minus nothing', () => {
  const labels = new Labels();
  const { first } = store(labels, lotStates(), [
    { cost: -0, penalty: 0, changes: 0, purchases: 0, ranks: [0], opened: [] },
  ]);
  const prune = new Prune(layOut(instance([item('a')])), everywhere(), pureWeights());
  expect(foundIn(labels, Int32Array.of(first), prune)[0]?.cost).toBe(0);
});
