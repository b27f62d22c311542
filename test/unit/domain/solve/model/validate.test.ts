import { describe, expect, test } from 'vitest';
import type { Instance } from '../../../../../src-main/domain/solve/instance.ts';
import { solve } from '../../../../../src-main/domain/solve/index.ts';
import { InstanceError } from '../../../../../src-main/domain/solve/model/refusal.ts';
import { checkInstance, LARGEST_TOTAL } from '../../../../../src-main/domain/solve/model/validate.ts';
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
