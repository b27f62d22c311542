import type { BesideChoice } from '../../../src-main/contract/calls/answers/beside.ts';
import { words } from '../../words/index.ts';

/** Whose bag it is, and which: of a player's several, the bag of now needs no more. */
export function bagName({ player, archived, bag, state }: Omit<BesideChoice, 'clubs'>): string {
  const { choice, states, archivedPlayer } = words.beside;
  const more = [
    ...(archived ? [archivedPlayer] : []),
    ...(bag === null ? [] : [bag]),
    ...(state === 'now' ? [] : [states[state]]),
  ];
  return choice(player, more.join(', '));
}
