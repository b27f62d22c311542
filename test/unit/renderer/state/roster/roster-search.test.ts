import { expect, test } from 'vitest';
import { searchRoster } from '../../../../../src-renderer/state/roster/roster-search.ts';

const line = (name: string, id = 1) => ({ id, bagId: id, name, handicap: 10, clubs: 14 });
const roster = [line('José Núñez', 1), line('Ann Other', 2), line('Anneliese Groß', 3)];
const found = (typed: string) => searchRoster(roster, typed).map(({ id }) => id);

test('every word that was typed, in any order, without accents and case', () => {
  expect(found('jose')).toEqual([1]);
  expect(found('NUNEZ jo')).toEqual([1]);
  expect(found('ann')).toEqual([2, 3]);
  expect(found('ann gro')).toEqual([3]);
  expect(found('nobody')).toEqual([]);
});

test('nothing typed finds everybody', () => {
  expect(found('')).toEqual([1, 2, 3]);
  expect(found('  ')).toEqual([1, 2, 3]);
});
