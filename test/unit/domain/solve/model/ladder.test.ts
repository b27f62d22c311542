import { expect, test } from 'vitest';
import { layOut } from '../../../../../src-main/domain/solve/model/ladder.ts';
import { candidate, instance, item, lot } from '../instances.ts';

const items = [
  item('p', { kind: 'putter', carryDy: 0, resale: 9 }),
  item('w', { carryDy: 900, resale: 4 }),
  item('d', { kind: 'driver', carryDy: 2300, locked: true }),
  candidate('i', 7, { kind: 'iron', carryDy: 1500 }),
  candidate('f', 0, { kind: 'fairway', carryDy: 2000, lot: 'set' }),
  candidate('g', 0, { kind: 'iron', carryDy: 1800, lot: 'set' }),
];
const rest = { lots: [lot('set', { price: 50 })], limit: 99 };
const firstPair = { wideDy: 400, secondAtLeastDy: 2000 };

test('ladder clubs by carry, the putter apart; ids by code unit', () => {
  const { clubs, carryDy, idByRank, rank } = layOut(instance(items, rest));
  expect(clubs.map(({ id }) => id)).toEqual(['d', 'f', 'g', 'i', 'w']);
  expect([...carryDy]).toEqual([2300, 2000, 1800, 1500, 900]);
  expect(idByRank).toEqual(['d', 'f', 'g', 'i', 'p', 'w']);
  expect([...rank].map((place) => idByRank[place])).toEqual(['d', 'f', 'g', 'i', 'w']);
});
test('a limit beyond what there is is what there is', () => {
  expect(layOut(instance(items, rest)).limit).toBe(6);
  expect(layOut(instance(items, { ...rest, limit: 3 })).limit).toBe(3);
});
test('only a driver leads, and only where the first pair has a limit of its own', () => {
  expect([...layOut(instance(items, { ...rest, firstPair })).leads]).toEqual([1, 0, 0, 0, 0]);
  expect([...layOut(instance(items, rest)).leads]).toEqual([0, 0, 0, 0, 0]);
});
test('single purchases, and what is passed over and locked, by position', () => {
  const { single, price, skipCost, skipChanges, nextLocked, lockedFrom } = layOut(instance(items, rest));
  expect([...single]).toEqual([0, 0, 0, 1, 0]);
  expect([...price]).toEqual([0, 0, 0, 7, 0]);
  expect([...skipCost].map((cost) => cost + 0)).toEqual([0, 0, 0, 0, 0, -4]);
  expect([...skipChanges]).toEqual([0, 1, 1, 1, 1, 2]);
  expect([...nextLocked]).toEqual([0, 5, 5, 5, 5, 5]);
  expect([...lockedFrom]).toEqual([1, 0, 0, 0, 0, 0]);
});
