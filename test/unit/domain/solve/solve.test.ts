import { describe, expect, test } from 'vitest';
import {
  bestWithinBudget,
  cheapestClean,
  frontier,
  headline,
  type Instance,
  solve,
  SolveStopped,
} from '../../../../src-main/domain/solve/index.ts';
import { realistic } from '../../../bench/support/solve-instances.ts';
import { candidate, instance, item, lot } from './instances.ts';
import { isWhole, runs } from '../../../support/runs.ts';

const bands: Instance['bands'] = [{ fromDy: 0, wideDy: 150, crowdedDy: 50, wideWeight: 2, crowdWeight: 1 }];
const none = {
  today: null,
  cheapestClean: null,
  bestWithinBudget: null,
  headline: null,
  frontier: [],
  walkAway: {},
};

describe('no legal bag', () => {
  test.each<[string, Instance]>([
    ['no items', instance([])],
    ['no ladder club', instance([item('p', { kind: 'putter' })])],
    ['a limit of 0', instance([item('a')], { limit: 0 })],
    ['no room beside the putter', instance([item('a'), item('p', { kind: 'putter' })], { limit: 1 })],
    [
      'locked clubs leave no room for the putter that is owned',
      instance([item('a', { locked: true }), item('p', { kind: 'putter' })], { limit: 1 }),
    ],
  ])('%s', (_, of) => {
    expect(solve(of)).toEqual(none);
  });
});

test('a hole between two clubs: the walk-away price is what the next best way costs', () => {
  const of = instance(
    [
      item('a', { carryDy: 1300 }),
      item('c', { carryDy: 1000 }),
      candidate('b', 40, { carryDy: 1150 }),
      candidate('d', 70, { carryDy: 1150 }),
    ],
    { bands, budget: 100 },
  );
  expect(solve(of)).toEqual({
    today: { cost: 0, penalty: 300, changes: 0, items: ['a', 'c'] },
    cheapestClean: { cost: 0, penalty: 0, changes: 1, items: ['a'] },
    bestWithinBudget: { cost: 0, penalty: 0, changes: 1, items: ['a'] },
    headline: { cost: 0, penalty: 0, changes: 1, items: ['a'] },
    frontier: [{ cost: 0, penalty: 0, changes: 1, items: ['a'] }],
    walkAway: {},
  });
  const anchored = { ...of, top: { atLeastDy: 1300, weight: 2 }, bottom: { atMostDy: 1000, weight: 2 } };
  expect(solve(anchored).headline).toEqual({ cost: 40, penalty: 0, changes: 1, items: ['a', 'b', 'c'] });
  expect(solve(anchored).walkAway).toEqual({ b: 70 });
  const only = { ...anchored, items: anchored.items.filter((x) => x.id !== 'd') };
  expect(solve(only).walkAway).toEqual({ b: null });
});

test('a set has one walk-away price, under its own id', () => {
  const member = (id: string, carryDy: number) => candidate(id, 0, { carryDy, lot: '__proto__' });
  const of = instance(
    [
      item('a', { carryDy: 1300 }),
      item('c', { carryDy: 1000 }),
      member('m', 1150),
      member('n', 900),
      candidate('d', 70, { carryDy: 1150 }),
    ],
    {
      bands,
      top: { atLeastDy: 1300, weight: 2 },
      bottom: { atMostDy: 1000, weight: 2 },
      lots: [lot('__proto__', { price: 40 })],
    },
  );
  const { walkAway, headline: plan } = solve(of);
  expect(plan?.items).toEqual(['a', 'c', 'm']);
  expect(Object.entries(walkAway)).toEqual([['__proto__', 70]]);
  expect(JSON.stringify(walkAway)).toBe('{"__proto__":70}');
});

test('ids that objects inherit are plain ids', () => {
  const ids = ['__proto__', 'constructor', 'toString', 'hasOwnProperty'];
  const of = instance(
    ids.map((id, i) => (i === 0 ? item(id) : candidate(id, i, { carryDy: 1000 + 100 * i }))),
    { top: { atLeastDy: 1300, weight: 1 }, budget: 5 },
  );
  const { walkAway, headline: plan } = solve(of);
  expect(plan?.items).toEqual(['__proto__', 'hasOwnProperty']);
  expect(Object.entries(walkAway)).toEqual([['hasOwnProperty', null]]);
});

const SETS = isWhole ? 45 : 34;

test(`more lots than bits in a whole number: ${SETS} sets that overlap`, () => {
  const sets = Array.from({ length: SETS }, (_, l) => `set${String(l).padStart(2, '0')}`);
  const items = [
    item('long', { carryDy: 3000 }),
    ...sets.flatMap((id, l) => [
      candidate(`${id}:a`, 0, { carryDy: 2900 - 10 * l, lot: id }),
      candidate(`${id}:b`, 0, { carryDy: 1900 - 10 * l, lot: id }),
    ]),
    item('short', { carryDy: 1000 }),
  ];
  const of = instance(items, {
    lots: sets.map((id, l) => lot(id, { price: 100 + ((l * 7) % 45) })),
    bands: [{ fromDy: 0, wideDy: 700, crowdedDy: 0, wideWeight: 1, crowdWeight: 0 }],
    bottom: { atMostDy: 1000, weight: 1 },
    top: { atLeastDy: 3000, weight: 1 },
  });
  // From 3000 to 1000 in gaps of at most 700: a first club, a second within 700 of it, a third of at most 1700.
  // No set has first and second, so that two sets i and j are needed, with 2900 − 10i − (1900 − 10j) ≤ 700.
  const price = (l: number): number => 100 + ((l * 7) % 45);
  const sums = sets.flatMap((_, i) =>
    sets.map((__, j) => (i >= 20 && j <= i - 30 ? price(i) + price(j) : Infinity)),
  );
  expect(cheapestClean(of)?.cost).toBe(Math.min(...sums));
  expect(solve(of).cheapestClean).toEqual(cheapestClean(of));
});

test('more owned than the limit', () => {
  const items = Array.from({ length: 20 }, (_, i) =>
    item(`c${String(i).padStart(2, '0')}`, { carryDy: 2500 - 100 * i }),
  );
  const { today, frontier: curve } = solve(
    instance(items, { bands, bottom: { atMostDy: 600, weight: 2 }, top: { atLeastDy: 2500, weight: 2 } }),
  );
  expect(today).toBeNull();
  // 1900 tenths in 13 gaps of at most 200: some gaps are doubled, each 50 too wide.
  expect(curve).toEqual([expect.objectContaining({ cost: 0, penalty: 600, changes: 6 })]);
});

test('nothing of the instance is changed', () => {
  const freeze = <T>(value: T): T => {
    if (typeof value === 'object' && value !== null) Object.values(value).forEach(freeze);
    return Object.freeze(value);
  };
  const of = realistic(3, 60);
  const before = structuredClone(of);
  solve(freeze(of));
  expect(of).toEqual(before);
});

test('each answer alone is the one of all', () => {
  for (let seed = 0; seed < runs(12); seed++) {
    const of = realistic(seed, 60);
    const all = solve(of);
    expect(frontier(of)).toEqual(all.frontier);
    expect(cheapestClean(of)).toEqual(all.cheapestClean);
    expect(bestWithinBudget(of)).toEqual(all.bestWithinBudget);
    expect(headline(of)).toEqual(all.headline);
  }
});

describe('hooks', () => {
  const of = realistic(1, 120);

  test('progress counts labels upwards', () => {
    const told: number[] = [];
    solve(of, { onProgress: (labels) => told.push(labels) });
    expect(told.length).toBeGreaterThan(10);
    expect(told).toEqual(told.toSorted((a, b) => a - b));
  });

  test('a stop ends the solve by name', () => {
    const stop = (): void => {
      let asked = 0;
      solve(of, { shouldStop: () => ++asked === 5 });
    };
    expect(stop).toThrow(SolveStopped);
    expect(stop).toThrow(/stopped/);
  });

  test('so does the label limit, with its number', () => {
    expect(() => solve(of, { maxLabels: 100 })).toThrow(SolveStopped);
    expect(() => solve(of, { maxLabels: 100 })).toThrow(/labels/);
    expect(solve(of, { maxLabels: 10_000_000 })).toEqual(solve(of));
  });
});
