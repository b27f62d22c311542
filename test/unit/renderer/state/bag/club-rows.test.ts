import { describe, expect, test } from 'vitest';
import {
  firstNeeds,
  newClubId,
  rowAfter,
  setsInBag,
} from '../../../../../src-renderer/state/bag/club-rows.ts';
import { bagFile } from '../../../../support/bags.ts';

const { clubs } = bagFile();

describe('a new club', () => {
  test('has an id that no other club of the bag has', () => {
    expect(newClubId('wedge', clubs)).toBe('wedge');
    expect(newClubId('putter', clubs)).toBe('putter-2');
    expect(newClubId('putter', [...clubs, { id: 'putter-2', kind: 'putter' }])).toBe('putter-3');
  });

  test('stands after the last of its kind', () => {
    expect(rowAfter('driver', clubs)).toBe('5w');
    expect(rowAfter('iron', clubs)).toBe('pw');
    expect(rowAfter('putter', clubs)).toBeUndefined();
    expect(rowAfter('hybrid', [])).toBeUndefined();
  });
});

test('sets are listed once, in the order of the bag', () => {
  expect(
    setsInBag([
      { id: 'a', kind: 'iron', set: 'x' },
      { id: 'b', kind: 'iron' },
      { id: 'c', kind: 'iron', set: 'x' },
    ]),
  ).toEqual(['x']);
});

describe('what a first answer needs', () => {
  const met = (changes: Parameters<typeof bagFile>[0], player?: Parameters<typeof bagFile>[1]) =>
    firstNeeds(bagFile(changes, player))
      .filter((need) => need.met)
      .map(({ need }) => need);

  test('a driver speed or a drive, one iron’s carry, a budget, prices', () => {
    expect(met({})).toEqual(['speed', 'iron']);
    expect(met({ budget: { amount: 0 }, prices: [{ archetype: 'x', low: 1, likely: 1, high: 1 }] })).toEqual([
      'speed',
      'iron',
      'budget',
      'prices',
    ]);
  });

  test('a drive of which only the total is known counts; a blank bag has nothing', () => {
    const file = bagFile({
      clubs: [
        { id: 'd', kind: 'driver', total: 220 },
        { id: 'i', kind: 'iron', loftDeg: 33 },
      ],
    });
    delete file.player.driverSpeed;
    expect(firstNeeds(file).map((need) => need.met)).toEqual([true, false, false, false]);
  });
});
