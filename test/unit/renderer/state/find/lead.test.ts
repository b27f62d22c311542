import { describe, expect, test } from 'vitest';
import type { Place } from '../../../../../src-renderer/state/find/found.ts';
import { leadTo } from '../../../../../src-renderer/state/find/lead.ts';

/** What was done, in its order. */
async function led(place: Place, bagId: number | null = 5): Promise<string[]> {
  const done: string[] = [];
  await leadTo(place, {
    bagId,
    turn: (page, bag) => {
      done.push(`turn ${page}${bag === undefined ? '' : ` ${String(bag)}`}`);
      return Promise.resolve();
    },
    look: (playerId) => void done.push(`look ${String(playerId)}`),
    showOnRoster: (name, archived) => void done.push(`roster ${name}${archived ? ' archived' : ''}`),
    showInBook: (archetype) => void done.push(`book ${archetype}`),
    showDiary: (playerId) => void done.push(`diary ${String(playerId)}`),
    aim: (at) => void done.push(`aim ${at}`),
  });
  return done;
}

describe('leading to a place', () => {
  test('a player: to the bag; without one, to the line of the roster', async () => {
    const player = { is: 'player', playerId: 1, name: 'Ada', archived: true } as const;
    expect(await led({ ...player, bagId: 9 })).toEqual(['look 1', 'turn bag 9']);
    expect(await led({ ...player, bagId: null })).toEqual(['roster Ada archived', 'turn players']);
  });

  test('a club: to its row once the page is turned; one that is not in the bag has no row', async () => {
    const club = { is: 'club', playerId: 1, bagId: 9, clubId: 'my 7i' } as const;
    expect(await led({ ...club, inBag: true })).toEqual(['look 1', 'turn bag 9', 'aim club my 7i']);
    expect(await led({ ...club, inBag: false })).toEqual(['look 1', 'turn bag 9']);
  });

  test('a diary: unfolded, to its entry', async () => {
    const entry = { is: 'entry', playerId: 1, name: 'Ada', entryId: 4 } as const;
    expect(await led({ ...entry, bagId: 9 })).toEqual(['look 1', 'diary 1', 'turn bag 9', 'aim entry 4']);
    expect(await led({ ...entry, bagId: null })).toEqual(['roster Ada', 'turn players']);
  });

  test('an archetype: to its line for the bag that is open; without one, to the page alone', async () => {
    const place = { is: 'archetype', archetype: 'a' } as const;
    expect(await led(place)).toEqual(['book a', 'turn prices 5', 'aim archetype a']);
    expect(await led(place, null)).toEqual(['book a', 'turn prices null']);
  });

  test('a note: for its own bag where it has one', async () => {
    const place = { is: 'note', archetype: 'a', noteId: 3 } as const;
    expect(await led({ ...place, bagId: null })).toEqual(['book a', 'turn prices 5', 'aim note 3']);
    expect(await led({ ...place, bagId: 8 }, null)).toEqual(['book a', 'turn prices 8', 'aim note 3']);
  });
});
