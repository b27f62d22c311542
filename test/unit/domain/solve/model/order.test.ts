import { expect, test } from 'vitest';
import { compareIds, compareLadder, compareLists } from '../../../../../src-main/domain/solve/model/order.ts';

test('ids by code unit, not by locale, case or code point', () => {
  const ids = ['é', 'a', 'Z', 'z', 'a0', 'a:', '\u{1F3CC}', '\uFFFD', ''];
  // U+1F3CC is stored as D83C DFCC, so that it comes before U+FFFD.
  expect(ids.toSorted(compareIds)).toEqual(['', 'Z', 'a', 'a0', 'a:', 'z', 'é', '\u{1F3CC}', '\uFFFD']);
});

test('the ladder by carry down, then by id', () => {
  const clubs = [
    { id: 'b', carryDy: 900 },
    { id: 'c', carryDy: 1000 },
    { id: 'a', carryDy: 900 },
  ];
  expect(clubs.toSorted(compareLadder).map((c) => c.id)).toEqual(['c', 'a', 'b']);
});

test.each([
  [['a', 'b'], ['a', 'c'], -1],
  [['a'], ['a', 'b'], -1],
  [['b'], ['a', 'c'], 1],
  [[], ['a'], -1],
  [['a'], ['a'], 0],
])('lists %j and %j', (a, b, sign) => {
  expect(Math.sign(compareLists<string>(a, b, compareIds))).toBe(sign);
});
