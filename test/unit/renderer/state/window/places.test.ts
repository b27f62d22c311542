import { expect, test } from 'vitest';
import { hashOf, placeOf, SCREENS } from '../../../../../src-renderer/state/window/places.ts';

test('every place is found again by its address', () => {
  for (const screen of SCREENS) {
    for (const bagId of [null, 1, 4711])
      expect(placeOf(hashOf({ screen, bagId }))).toEqual({ screen, bagId });
  }
});

test.each([
  '',
  '#',
  '#/',
  '#/nowhere/3',
  '#/bag/3/4',
  '#/bag/0',
  '#/bag/-1',
  '#/bag/9999999999999999',
  'players',
])('"%s" is the roster', (hash) => {
  expect(placeOf(hash).screen).toBe('players');
});
