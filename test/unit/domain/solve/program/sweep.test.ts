import { expect, test } from 'vitest';
import { Labels } from '../../../../../src-main/domain/solve/program/labels.ts';
import { LotStates } from '../../../../../src-main/domain/solve/program/lot-states.ts';
import { sortLabels } from '../../../../../src-main/domain/solve/program/sort-labels.ts';
import { Sweep } from '../../../../../src-main/domain/solve/program/sweep.ts';
import { dice } from '../../../../reference/solve/small-instances.ts';

type Figures = {
  cost: number;
  penalty: number;
  changes?: number;
  purchases?: number;
  count?: number;
  state?: number;
  rank?: number;
};

/** Labels in a linked list, the last first; returned in the order given. */
const list = (labels: Labels, all: Figures[]): number[] => {
  let last = -1;
  return all.map(({ cost, penalty, changes = 0, purchases = 0, count = 1, state = 0, rank = 0 }) => {
    const l = labels.add();
    labels.cost[l] = cost;
    labels.penalty[l] = penalty;
    labels.changes[l] = changes;
    labels.purchases[l] = purchases;
    labels.count[l] = count;
    labels.state[l] = state;
    labels.rank[l] = rank;
    labels.parent[l] = -1;
    labels.next[l] = last;
    last = l;
    return l;
  });
};

const kept = (all: Figures[], lots = new LotStates([], new Int32Array(4))): number[] => {
  const labels = new Labels();
  const last = list(labels, all).at(-1) ?? -1;
  return [...new Sweep(labels, lots, 14).keep(last)].sort((a, b) => a - b);
};

test.each<[string, Figures[], number[]]>([
  [
    'less of both',
    [
      { cost: 1, penalty: 1 },
      { cost: 2, penalty: 2 },
    ],
    [0],
  ],
  [
    'less of one each',
    [
      { cost: 1, penalty: 2 },
      { cost: 2, penalty: 1 },
    ],
    [0, 1],
  ],
  [
    'as good with fewer clubs',
    [
      { cost: 1, penalty: 1, count: 1 },
      { cost: 1, penalty: 2, count: 2 },
    ],
    [0],
  ],
  [
    'better with more clubs',
    [
      { cost: 1, penalty: 1, count: 2 },
      { cost: 2, penalty: 2, count: 1 },
    ],
    [0, 1],
  ],
  [
    'fewer changes',
    [
      { cost: 1, penalty: 1, changes: 1 },
      { cost: 1, penalty: 1, changes: 2 },
    ],
    [0],
  ],
  [
    'fewer changes with more clubs',
    [
      { cost: 1, penalty: 1, changes: 1, count: 2 },
      { cost: 1, penalty: 1, changes: 2, count: 1 },
    ],
    [0, 1],
  ],
  [
    'fewer purchases',
    [
      { cost: 1, penalty: 1, purchases: 1 },
      { cost: 1, penalty: 1 },
    ],
    [1],
  ],
  [
    'the first ids',
    [
      { cost: 1, penalty: 1, rank: 5 },
      { cost: 1, penalty: 1, rank: 3 },
    ],
    [1],
  ],
  [
    'ids of unequal number: both, as what follows decides',
    [
      { cost: 1, penalty: 1, rank: 3, count: 1 },
      { cost: 1, penalty: 1, rank: 5, count: 2 },
    ],
    [0, 1],
  ],
])('%s', (_, all, want) => {
  expect(kept(all)).toEqual(want);
});

test('an open lot counts as what the other may still have to pay', () => {
  const lots = new LotStates(
    [{ candidate: true, price: 10, gain: 0, at: [0, 3], last: 3 }],
    Int32Array.of(0, -1, -1, 0),
  );
  lots.fill(0, 0);
  const open = lots.steps(0).after[0] as number;
  expect(
    kept(
      [
        { cost: 0, penalty: 1 },
        { cost: 9, penalty: 1, state: open },
      ],
      lots,
    ),
  ).toEqual([0, 1]);
  expect(
    kept(
      [
        { cost: 0, penalty: 1 },
        { cost: 11, penalty: 1, state: open },
      ],
      lots,
    ),
  ).toEqual([0]);
  // At 10 the money is equal, but paying for it is one more change.
  expect(
    kept(
      [
        { cost: 0, penalty: 1 },
        { cost: 10, penalty: 1, state: open },
      ],
      lots,
    ),
  ).toEqual([0, 1]);
  expect(
    kept(
      [
        { cost: 0, penalty: 1 },
        { cost: 10, penalty: 1, changes: 2, state: open },
      ],
      lots,
    ),
  ).toEqual([0]);
  expect(
    kept(
      [
        { cost: 5, penalty: 1, state: open },
        { cost: 5, penalty: 2 },
      ],
      lots,
    ),
  ).toEqual([0]);
});

test('labels are sorted as an array would be, in lists of any length', () => {
  const d = dice(4);
  for (const size of [0, 1, 2, 12, 13, 14, 50, 400]) {
    const labels = new Labels();
    const all = Array.from({ length: size }, () => ({
      cost: d.whole(-3, 3),
      penalty: d.whole(0, 2),
      changes: d.whole(0, 2),
      purchases: d.whole(0, 1),
      count: d.whole(0, 2),
    }));
    const order = Int32Array.from(list(labels, all));
    sortLabels(labels, order, 0, size - 1);
    const sign = (a: (typeof all)[number], b: (typeof all)[number]): number =>
      a.cost - b.cost ||
      a.penalty - b.penalty ||
      a.changes - b.changes ||
      a.purchases - b.purchases ||
      a.count - b.count;
    expect(Array.from(order, (l) => all[l])).toEqual(all.toSorted(sign));
  }
});

test('labels keep their figures when their store grows', () => {
  const labels = new Labels();
  const many = Array.from({ length: 9000 }, (_, i) => ({ cost: i, penalty: -i, rank: i }));
  list(labels, many);
  expect([labels.cost[0], labels.cost[8999], labels.penalty[8999], labels.rank[5000]]).toEqual([
    0, 8999, -8999, 5000,
  ]);
});
