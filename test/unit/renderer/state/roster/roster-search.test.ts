import { expect, test } from 'vitest';
import { inOrder, searchRoster } from '../../../../../src-renderer/state/roster/roster-search.ts';

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

test('in the order of a reader: 2 before 10, accents beside their letter, the roster itself untouched', () => {
  const mixed = ['Player 10', 'Zoë', 'Player 2', 'Änne', 'Bo'].map((name, id) => line(name, id));
  expect(inOrder(mixed).map(({ name }) => name)).toEqual(['Änne', 'Bo', 'Player 2', 'Player 10', 'Zoë']);
  expect(mixed.map(({ id }) => id)).toEqual([0, 1, 2, 3, 4]);
});
