import type { Page } from '../window/places.ts';
import type { Place } from './found.ts';

/** What of the window it takes to lead to a place. */
export type Leader = {
  /** The bag that is open. */
  bagId: number | null;
  turn: (page: Page, bagId?: number | null) => Promise<void>;
  /** Notes that a player was looked at. */
  look: (playerId: number) => void;
  /** Shows a player's line of the roster, for one who has no bag to open. */
  showOnRoster: (name: string, archived: boolean) => void;
  /** Shows an archetype's line of the price book, with its notes. */
  showInBook: (archetype: string) => void;
  /** Unfolds a player's whole diary on the Bag page. */
  showDiary: (playerId: number) => void;
  /** What the focus goes to as soon as it stands on the page. */
  aim: (at: string) => void;
};

/** Turns to where something stands, and to it there. */
export async function leadTo(place: Place, leader: Leader): Promise<void> {
  switch (place.is) {
    case 'player': {
      if (place.bagId === null) {
        leader.showOnRoster(place.name, place.archived);
        return leader.turn('players');
      }
      leader.look(place.playerId);
      return leader.turn('bag', place.bagId);
    }
    case 'club': {
      leader.look(place.playerId);
      await leader.turn('bag', place.bagId);
      if (place.inBag) leader.aim(clubAim(place.clubId));
      return;
    }
    case 'entry': {
      if (place.bagId === null) {
        leader.showOnRoster(place.name, false);
        return leader.turn('players');
      }
      leader.look(place.playerId);
      leader.showDiary(place.playerId);
      await leader.turn('bag', place.bagId);
      leader.aim(entryAim(place.entryId));
      return;
    }
    case 'archetype':
    case 'note': {
      const bagId = place.is === 'note' ? (place.bagId ?? leader.bagId) : leader.bagId;
      leader.showInBook(place.archetype);
      await leader.turn('prices', bagId);
      if (bagId === null) return;
      leader.aim(place.is === 'note' ? noteAim(place.noteId) : archetypeAim(place.archetype));
    }
  }
}

export const clubAim = (clubId: string) => `club ${clubId}`;
export const archetypeAim = (archetype: string) => `archetype ${archetype}`;
export const entryAim = (entryId: number) => `entry ${String(entryId)}`;
export const noteAim = (noteId: number) => `note ${String(noteId)}`;
export const settingsAim = (group: string) => `settings ${group}`;
/** The field that chooses another bag. */
export const BESIDE_AIM = 'another bag';
export const NEW_PLAYER_AIM = 'new player';
export const NEW_NOTE_AIM = 'new note';
