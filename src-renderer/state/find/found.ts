import type { SearchAnswer } from '../../../src-main/contract/calls/program/search.ts';
import type { Formats } from '../format/formats.ts';
import { words } from '../../words/index.ts';

export type FoundGroup = keyof SearchAnswer;
/** People before what they own, then prices, and what somebody wrote last. */
export const FOUND_GROUPS: readonly FoundGroup[] = ['players', 'clubs', 'archetypes', 'notes', 'diary'];

/** Where something that was found stands. */
export type Place =
  | { is: 'player'; playerId: number; bagId: number | null; name: string; archived: boolean }
  | { is: 'club'; playerId: number; bagId: number; clubId: string; inBag: boolean }
  | { is: 'archetype'; archetype: string }
  /** `bagId` where the note speaks for one bag alone. */
  | { is: 'note'; archetype: string; noteId: number; bagId: number | null }
  | { is: 'entry'; playerId: number; bagId: number | null; name: string; entryId: number };

export type Found = { id: string; group: FoundGroup; text: string; note: string; place: Place };

/** @param hasBag a bag is open; without one the price book is not seen yet. */
export function foundIn(answer: SearchAnswer, formats: Formats, hasBag: boolean): Found[] {
  const text = words.find;
  const players = answer.players.map(({ playerId, bagId, name, archived }): Found => ({
    id: `player-${String(playerId)}`,
    group: 'players',
    text: name,
    note: archived ? text.archived : '',
    place: { is: 'player', playerId, bagId, name, archived },
  }));
  const clubs = answer.clubs.map(({ playerId, bagId, player, clubId, name, place }): Found => ({
    id: `club-${String(bagId)}-${clubId}`,
    group: 'clubs',
    text: name,
    note: said(player, place === 'bag' ? '' : text.places[place]),
    place: { is: 'club', playerId, bagId, clubId, inBag: place === 'bag' },
  }));
  const archetypes = answer.archetypes.map(({ id, name }): Found => ({
    id: `archetype-${id}`,
    group: 'archetypes',
    text: name,
    note: hasBag ? '' : text.needsBag,
    place: { is: 'archetype', archetype: id },
  }));
  const notes = answer.notes.map((note): Found => ({
    id: `note-${String(note.id)}`,
    group: 'notes',
    text: note.name,
    note: said(
      formats.money(note.likely, note),
      formats.day(note.seen ?? note.written),
      note.place ?? '',
      note.remark ?? '',
      hasBag || note.bagId !== undefined ? '' : text.needsBag,
    ),
    place: { is: 'note', archetype: note.archetype, noteId: note.id, bagId: note.bagId ?? null },
  }));
  const diary = answer.diary.map(({ entryId, playerId, bagId, player, on, text: entry }): Found => ({
    id: `entry-${String(entryId)}`,
    group: 'diary',
    text: entry,
    note: said(player, formats.day(on)),
    place: { is: 'entry', playerId, bagId, name: player, entryId },
  }));
  return [...players, ...clubs, ...archetypes, ...notes, ...diary];
}

function said(...parts: string[]): string {
  return parts.filter((part) => part !== '').join(' · ');
}
