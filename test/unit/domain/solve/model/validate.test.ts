import { describe, expect, test } from 'vitest';
import type { Instance } from '../../../../../src-main/domain/solve/instance.ts';
import { solve } from '../../../../../src-main/domain/solve/index.ts';
import { InstanceError } from '../../../../../src-main/domain/solve/model/refusal.ts';
import {
  checkInstance,
  LARGEST_TOTAL,
  largestTotals,
} from '../../../../../src-main/domain/solve/model/validate.ts';
import { candidate, instance, item, lot } from '../instances.ts';

const bands = (...from: number[]): Instance['bands'] =>
  from.map((fromDy) => ({ fromDy, wideDy: 150, crowdedDy: 50, wideWeight: 2, crowdWeight: 1 }));

const pair = [item('a', { carryDy: 900 }), item('b', { carryDy: 900 }), item('c', { carryDy: 800 })];

const REFUSED: [string, Instance, string[]][] = [
  ['a negative limit', instance([], { limit: -1 }), ['$.limit']],
  ['a limit that is not whole', instance([], { limit: 1.5 }), ['$.limit']],
  ['a carry that is not a number', instance([item('a', { carryDy: Number.NaN })]), ['$.items[0].carryDy']],
  ['a carry without end', instance([item('a', { carryDy: Infinity })]), ['$.items[0].carryDy']],
  ['a negative misfit', instance([item('a', { misfit: -1 })]), ['$.items[0].misfit']],
  ['a price beyond exact numbers', instance([candidate('a', 2 ** 53)]), ['$.items[0].price']],
  ['half a penny of resale', instance([item('a', { resale: 0.5 })]), ['$.items[0].resale']],
  ['a negative tier', instance([item('a', { tier: -1 })]), ['$.items[0].tier']],
  ['an empty id', instance([item('')]), ['$.items[0].id']],
  ['an id twice', instance([item('a'), item('a')]), ['$.items[1].id']],
  ["an item's id as a lot's", instance([item('a')], { lots: [lot('a')] }), ['$.lots[0].id']],
  ['an unknown origin', instance([item('a', { origin: 'found' as 'owned' })]), ['$.items[0].origin']],
  ['a locked candidate', instance([candidate('a', 1, { locked: true })]), ['$.items[0].locked']],
  ['an unknown lot', instance([item('a', { lot: 'x' })]), ['$.items[0].lot']],
  [
    'an owned club of a lot for sale',
    instance([item('a', { lot: 'x' })], { lots: [lot('x')] }),
    ['$.items[0].lot'],
  ],
  [
    'a priced candidate of a lot',
    instance([candidate('a', 5, { lot: 'x' })], { lots: [lot('x')] }),
    ['$.items[0].price'],
  ],
  ['a negative price of a lot', instance([], { lots: [lot('x', { price: -1 })] }), ['$.lots[0].price']],
  ['bands not from 0', instance([], { bands: bands(10) }), ['$.bands[0].fromDy']],
  ['bands that do not ascend', instance([], { bands: bands(0, 900, 900) }), ['$.bands[2].fromDy']],
  [
    'a band with a weight that is not whole',
    instance([], { bands: [{ ...bands(0)[0]!, wideWeight: 0.1 }] }),
    ['$.bands[0].wideWeight'],
  ],
  [
    'a negative first pair',
    instance([], { firstPair: { wideDy: -1, secondAtLeastDy: 0 } }),
    ['$.firstPair.wideDy'],
  ],
  ['a negative anchor', instance([], { top: { atLeastDy: -1, weight: 0 } }), ['$.top.atLeastDy']],
  ['a least tier that is not whole', instance([], { leastTier: { iron: 1.5 } }), ['$.leastTier.iron']],
  ['a negative tier weight', instance([], { tierWeight: -40 }), ['$.tierWeight']],
  ['a negative budget', instance([], { budget: -1 }), ['$.budget']],
  ['an unknown basis', instance([], { basis: 'gross' as 'net' }), ['$.basis']],
  ['an excused club that is unknown', instance(pair, { excused: [['a', 'x']] }), ['$.excused[0][1]']],
  ['an excused pair the wrong way round', instance(pair, { excused: [['c', 'a']] }), ['$.excused[0]']],
  ['equal carries the wrong way round', instance(pair, { excused: [['b', 'a']] }), ['$.excused[0]']],
  ['a club excused with itself', instance(pair, { excused: [['a', 'a']] }), ['$.excused[0]']],
  [
    'an excused putter',
    instance([...pair, item('p', { kind: 'putter' })], { excused: [['a', 'p']] }),
    ['$.excused[0][1]'],
  ],
  [
    'more locked than the limit',
    instance([item('a', { locked: true }), item('b', { locked: true })], { limit: 1 }),
    ['$.limit'],
  ],
  [
    'two locked putters',
    instance([item('p', { kind: 'putter', locked: true }), item('q', { kind: 'putter', locked: true })]),
    ['$.items'],
  ],
];

describe('refused by name', () => {
  test.each(REFUSED)('%s', (_, refused, paths) => {
    const refusals = checkInstance(refused);
    expect(refusals.map((r) => r.path)).toEqual(paths);
    for (const { message, remedy } of refusals) expect([message, remedy]).not.toContain('');
    expect(() => solve(refused)).toThrow(InstanceError);
  });
});

test('equal carries in the right order, and ids that objects inherit, pass', () => {
  const fine = instance([item('__proto__'), item('constructor'), item('toString')], {
    excused: [['__proto__', 'constructor']],
    leastTier: { toString: 2 },
  });
  expect(checkInstance(fine)).toEqual([]);
});

test('sums that a double cannot hold exactly are refused; large ones that it can are solved', () => {
  const large = LARGEST_TOTAL / 2;
  const items = [candidate('a', large), candidate('b', large)];
  expect(checkInstance(instance(items))).toEqual([]);
  expect(solve(instance(items)).frontier.map((p) => p.cost)).toEqual([large]);
  expect(checkInstance(instance([...items, candidate('c', 1)])).map((r) => r.path)).toEqual(['$']);
  const weight = { ...bands(0)[0]!, wideWeight: 2 ** 45 };
  expect(checkInstance(instance([item('a')], { bands: [weight] })).map((r) => r.path)).toEqual(['$']);
});

test('a number that is too large is told apart from one that is not whole', () => {
  const messages = (price: unknown) =>
    checkInstance(instance([candidate('a', price as number)])).map(({ message }) => message);
  for (const large of [2 ** 53, Infinity]) expect(messages(large)[0]).toContain('too large');
  for (const odd of [-1, 0.5, Number.NaN, '9007199254740993', null]) {
    expect(messages(odd)[0]).toContain('not a whole number');
  }
  expect(messages(0)).toEqual([]);
});

describe('the most that an instance can add up to', () => {
  test('money: every price and every resale', () => {
    const of = instance([candidate('a', 5), item('b', { resale: 7, lot: 'l' })], {
      lots: [lot('l', { origin: 'owned', price: 2, resale: 30 }), lot('m', { price: 400 })],
    });
    expect(largestTotals(of).money).toBe(5 + 7 + 2 + 30 + 400);
  });
  test('penalty: for each item its misfit, the widest pair and all tiers; both anchors', () => {
    const of = instance([item('a', { carryDy: 900, misfit: 60 }), item('b', { carryDy: 100, misfit: 5 })], {
      bands: [
        { fromDy: 0, wideDy: 100, crowdedDy: 50, wideWeight: 2, crowdWeight: 1 },
        { fromDy: 500, wideDy: 100, crowdedDy: 40, wideWeight: 1, crowdWeight: 30 },
      ],
      top: { atLeastDy: 1000, weight: 3 },
      bottom: { atMostDy: 100, weight: 4 },
      leastTier: { iron: 3, wedge: 2 },
      tierWeight: 40,
    });
    // A pair: at most the weight of wide by the longest carry, and of crowded by its limit: 1 · 900 + 30 · 40.
    expect(largestTotals(of).penalty).toBe(2 * (2100 + 40 * 3) + 65 + 3 * 1000 + 4 * 900);
    expect(largestTotals(instance([]))).toEqual({ money: 0, penalty: 0 });
  });
});

describe('putters and locks', () => {
  const locked = (id: string, kind: string) => item(id, { kind, locked: true });
  test('as many locked as the limit, one of them a putter, pass', () => {
    expect(checkInstance(instance([locked('p', 'putter'), locked('a', 'iron')], { limit: 2 }))).toEqual([]);
    expect(checkInstance(instance([locked('p', 'putter'), item('q', { kind: 'putter' })]))).toEqual([]);
  });
  test('a limit that is refused is not refused for its locks as well', () => {
    expect(checkInstance(instance([locked('a', 'iron')], { limit: -1 })).map(({ path }) => path)).toEqual([
      '$.limit',
    ]);
  });
  test('two excused putters are two refusals, and one twice is one of each place', () => {
    const putters = [item('p', { kind: 'putter' }), item('q', { kind: 'putter' })];
    const paths = (names: [string, string]) =>
      checkInstance(instance([...putters, ...pair], { excused: [names] })).map(({ path }) => path);
    expect(paths(['p', 'q'])).toEqual(['$.excused[0][0]', '$.excused[0][1]']);
    expect(paths(['q', 'a'])).toEqual(['$.excused[0][0]']);
    expect(paths(['x', 'a'])).toEqual(['$.excused[0][0]']);
    expect(paths(['x', 'y'])).toEqual(['$.excused[0][0]', '$.excused[0][1]']);
  });
});

test('each refusal names the value', () => {
  const putters = ['p', 'q'].map((id) => item(id, { kind: 'putter', locked: true }));
  expect(checkInstance(instance(putters)).map(({ value }) => value)).toEqual([['p', 'q']]);
  const of = instance([item('a', { misfit: -3 })], { tierWeight: 1.5, budget: -7 });
  expect(checkInstance(of).map(({ value }) => value)).toEqual([-3, 1.5, -7]);
});

test('the largest penalty that can be added exactly is let in, a unit more is not', () => {
  const heavy = (...misfits: number[]) =>
    instance(misfits.map((misfit, i) => item(`c${String(i)}`, { misfit, carryDy: 0 })));
  expect(checkInstance(heavy(LARGEST_TOTAL))).toEqual([]);
  expect(checkInstance(heavy(LARGEST_TOTAL, 1)).map(({ path }) => path)).toEqual(['$']);
});

test('totals are not reckoned from what is refused', () => {
  expect(checkInstance(instance([candidate('a', 2 ** 60)])).map(({ path }) => path)).toEqual([
    '$.items[0].price',
  ]);
});
