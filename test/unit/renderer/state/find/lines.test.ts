import { describe, expect, test } from 'vitest';
import type { SearchAnswer } from '../../../../../src-main/contract/calls/program/search.ts';
import type { Command } from '../../../../../src-renderer/state/find/commands.ts';
import { foundIn } from '../../../../../src-renderer/state/find/found.ts';
import { lineGroups } from '../../../../../src-renderer/state/find/lines.ts';
import { createFormats } from '../../../../../src-renderer/state/format/formats.ts';

const formats = createFormats('en-GB', 'en');
const NOTHING: SearchAnswer = { players: [], clubs: [], archetypes: [], notes: [], diary: [] };
const ANSWER: SearchAnswer = {
  diary: [
    { entryId: 3, playerId: 1, bagId: 10, player: 'Ada Baker', on: '2026-10-02', text: '… thins the wedge' },
  ],
  players: [
    { playerId: 1, bagId: 10, name: 'Ada Baker', archived: false },
    { playerId: 2, bagId: null, name: 'Bea Cole', archived: true },
  ],
  clubs: [
    { bagId: 10, playerId: 1, player: 'Ada Baker', clubId: 'gw', name: 'Gap wedge', place: 'bag' },
    { bagId: 10, playerId: 1, player: 'Ada Baker', clubId: 'old', name: 'Old wedge', place: 'sold' },
  ],
  archetypes: [{ id: 'wedge-50-t2', name: '50° wedge' }],
  notes: [
    {
      id: 7,
      archetype: 'wedge-50-t2',
      name: '50° wedge',
      low: 30,
      likely: 45.5,
      high: 60,
      currency: 'GBP',
      written: '2026-11-01',
      place: 'charity shop',
      stale: false,
    },
    {
      id: 8,
      archetype: 'wedge-50-t2',
      name: '50° wedge',
      bagId: 11,
      low: 3000,
      likely: 4500,
      high: 6000,
      currency: 'JPY',
      seen: '2026-10-01',
      written: '2026-11-01',
      stale: true,
    },
  ],
};

describe('what was found', () => {
  const found = (hasBag: boolean) =>
    Object.fromEntries(foundIn(ANSWER, formats, hasBag).map((one) => [one.id, one]));

  test('leads to where it stands', () => {
    const by = found(true);
    expect(by['player-1']?.place).toEqual({
      is: 'player',
      playerId: 1,
      bagId: 10,
      name: 'Ada Baker',
      archived: false,
    });
    expect(by['club-10-gw']?.place).toMatchObject({ is: 'club', bagId: 10, clubId: 'gw', inBag: true });
    expect(by['club-10-old']?.place).toMatchObject({ inBag: false });
    expect(by['archetype-wedge-50-t2']?.place).toEqual({ is: 'archetype', archetype: 'wedge-50-t2' });
    expect(by['entry-3']?.place).toMatchObject({ is: 'entry', playerId: 1, bagId: 10, entryId: 3 });
    expect(by['entry-3']?.note).toBe('Ada Baker · 2 Oct 2026');
    expect(by['note-7']?.place).toMatchObject({ noteId: 7, bagId: null });
    expect(by['note-8']?.place).toMatchObject({ noteId: 8, bagId: 11 });
  });

  test('says whose it is, what it cost in its own currency and when it was seen', () => {
    const by = found(true);
    expect(by['player-2']?.note).toBe('archived');
    expect(by['club-10-gw']?.note).toBe('Ada Baker');
    expect(by['club-10-old']?.note).toBe('Ada Baker · sold');
    expect(by['note-7']?.note).toBe('£45.50 · 1 Nov 2026 · charity shop');
    expect(by['note-8']?.note).toMatch(/^JP¥4,500 · 1 Oct 2026$/);
  });

  test('without an open bag, prices say that they wait for one; a note of one bag does not', () => {
    const by = found(false);
    expect(by['archetype-wedge-50-t2']?.note).toBe('shown once a player is open');
    expect(by['note-7']?.note).toMatch(/shown once a player is open$/);
    expect(by['note-8']?.note).not.toMatch(/once a player/);
    expect(foundIn(NOTHING, formats, false)).toEqual([]);
  });
});

describe('lines in their groups', () => {
  const command = (id: string, group: Command['group'], text: string, also = 'x'): Command => ({
    id,
    group,
    text,
    also,
    keys: null,
    off: id === 'undo' ? 'nothing' : null,
    run: () => undefined,
  });
  const commands = [
    command('hand', 'pages', 'Hand-over', 'print'),
    command('print', 'doing', 'Print'),
    command('undo', 'doing', 'Undo'),
  ];
  const shape = (typed: string, answer = NOTHING) =>
    lineGroups(commands, foundIn(answer, formats, true), typed).map(
      ({ name, lines }) => `${name}: ${lines.map(({ id }) => id).join(' ')}`,
    );

  test('nothing typed: all commands in their own order', () => {
    expect(shape('')).toEqual(['pages: hand', 'doing: print undo']);
  });

  test('the group of the best fit first; groups without a line are left out', () => {
    expect(shape('print')).toEqual(['doing: print', 'pages: hand']);
    expect(shape('zzz')).toEqual([]);
  });

  test('commands before what was found, people before things', () => {
    expect(shape('undo', ANSWER)).toEqual([
      'doing: undo',
      'players: player-1 player-2',
      'clubs: club-10-gw club-10-old',
      'archetypes: archetype-wedge-50-t2',
      'notes: note-7 note-8',
      'diary: entry-3',
    ]);
  });

  test('what cannot be done is shown, with its reason', () => {
    const [group] = lineGroups(commands, [], 'undo');
    expect(group?.lines[0]).toMatchObject({ isOff: true, note: 'nothing' });
  });
});
