import { describe, expect, test } from 'vitest';
import { readInstance } from '../../../../../src-main/domain/solve/model/read.ts';
import { InstanceError, type Refusal } from '../../../../../src-main/domain/solve/model/refusal.ts';

const refusalsOf = (json: unknown): Refusal[] => {
  try {
    readInstance(json);
  } catch (error) {
    if (error instanceof InstanceError) return error.refusals;
    throw error;
  }
  return [];
};

const club = { id: 'a', origin: 'owned', kind: 'iron', carryDy: 1500 };

describe('what is absent is none', () => {
  test('an empty object is an instance without items', () => {
    expect(readInstance({})).toEqual({
      limit: 14,
      items: [],
      lots: [],
      bands: [],
      firstPair: null,
      top: { atLeastDy: 0, weight: 0 },
      bottom: { atMostDy: 0, weight: 0 },
      excused: [],
      leastTier: {},
      tierWeight: 0,
      budget: null,
      basis: 'net',
    });
  });

  test('an item, a lot, a band', () => {
    const read = readInstance({
      items: [club, { id: 'p', origin: 'owned', kind: 'putter' }],
      lots: [{ id: 'l', origin: 'candidate' }],
      bands: [{ fromDy: 0, wideDy: 150, crowdedDy: 50 }],
    });
    expect(read.items).toEqual([
      { ...club, tier: null, misfit: 0, locked: false, lot: null, price: 0, resale: 0 },
      {
        ...{ id: 'p', origin: 'owned', kind: 'putter', carryDy: 0, tier: null, misfit: 0 },
        ...{ locked: false, lot: null, price: 0, resale: 0 },
      },
    ]);
    expect(read.lots).toEqual([{ id: 'l', origin: 'candidate', price: 0, resale: 0 }]);
    expect(read.bands).toEqual([{ fromDy: 0, wideDy: 150, crowdedDy: 50, wideWeight: 0, crowdWeight: 0 }]);
  });

  test('null stands for none where there can be none', () => {
    const read = readInstance({ items: [{ ...club, tier: null, lot: null }], firstPair: null, budget: null });
    expect([read.items[0]?.tier, read.items[0]?.lot, read.firstPair, read.budget]).toEqual([
      null,
      null,
      null,
      null,
    ]);
  });

  test('an anchor without weight needs no carry, one with weight does', () => {
    expect(readInstance({ top: {} }).top).toEqual({ atLeastDy: 0, weight: 0 });
    expect(refusalsOf({ top: { weight: 2 } }).map((r) => r.path)).toEqual(['$.top.atLeastDy']);
  });
});

test.each([
  ['no object', 7, '$'],
  ['a list', [], '$'],
  ['null', null, '$'],
  ['an unknown key', { colour: 1 }, '$.colour'],
  ['an unknown key of an item', { items: [{ ...club, colour: 'red' }] }, '$.items[0].colour'],
  ['an unknown key of a lot', { lots: [{ id: 'l', origin: 'owned', x: 1 }] }, '$.lots[0].x'],
  ['an unknown key of a band', { bands: [{ fromDy: 0, wideDy: 1, crowdedDy: 0, x: 1 }] }, '$.bands[0].x'],
  ['an unknown key of an anchor', { top: { weight: 0, from: 1 } }, '$.top.from'],
  ['a key that is no plain name', { 'a b': 1 }, '$["a b"]'],
  ['a key named __proto__', JSON.parse('{"__proto__":{"limit":3}}'), '$.__proto__'],
  ['items that are no list', { items: {} }, '$.items'],
  ['an item that is no object', { items: [3] }, '$.items[0]'],
  ['a missing id', { items: [{ origin: 'owned', kind: 'iron', carryDy: 1 }] }, '$.items[0].id'],
  ['a missing carry', { items: [{ id: 'a', origin: 'owned', kind: 'iron' }] }, '$.items[0].carryDy'],
  ['a number as text', { items: [{ ...club, price: '3' }] }, '$.items[0].price'],
  ['a flag as number', { items: [{ ...club, locked: 1 }] }, '$.items[0].locked'],
  ['a lot as number', { items: [{ ...club, lot: 1 }] }, '$.items[0].lot'],
  ['a price of null', { items: [{ ...club, price: null }] }, '$.items[0].price'],
  ['a limit of null', { limit: null }, '$.limit'],
  ['an excused triple', { items: [club], excused: [['a', 'b', 'c']] }, '$.excused[0]'],
  ['an excused pair of numbers', { excused: [[1, 2]] }, '$.excused[0]'],
  ['a tier as text', { leastTier: { iron: '2' } }, '$.leastTier.iron'],
  ['tiers as list', { leastTier: [] }, '$.leastTier'],
  ['a basis that is unknown', { basis: 'gross' }, '$.basis'],
  ['what checkInstance refuses', { items: [club, club] }, '$.items[1].id'],
])('refused with its place: %s', (_, json, path) => {
  const refusals = refusalsOf(json);
  expect(refusals.map((r) => r.path)).toEqual([path]);
  for (const { message, remedy } of refusals) expect([message, remedy]).not.toContain('');
});

test('what may be left out is told to be; what has to be given is not', () => {
  const remedies = refusalsOf({ limit: 'x', items: [{ ...club, id: 3, tier: 'x' }] }).map(
    ({ remedy }) => remedy,
  );
  expect(remedies.map((remedy) => remedy.includes('leave it out'))).toEqual([true, false, true]);
});

test('all refusals at once, and all of them in the message', () => {
  const json = { limit: 'many', items: [{ ...club, price: true }], colour: 1 };
  expect(refusalsOf(json).map((r) => r.path)).toEqual(['$.limit', '$.items[0].price', '$.colour']);
  expect(() => readInstance(json)).toThrow(/\$\.limit.*"many".*\n.*\$\.items\[0\]\.price.*\n.*\$\.colour/s);
});

test('keys that objects inherit are neither given nor known', () => {
  const read = readInstance({ leastTier: JSON.parse('{"__proto__":3,"constructor":2}') as unknown });
  expect(Object.entries(read.leastTier)).toEqual([
    ['__proto__', 3],
    ['constructor', 2],
  ]);
  expect(Object.hasOwn(read.leastTier, 'toString')).toBe(false);
  expect(refusalsOf({ toString: 1 }).map((r) => r.path)).toEqual(['$.toString']);
});
