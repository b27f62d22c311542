import { count } from '../plural.ts';

/** What a coach notes about a player: on the Bag screen, and found from the roster. */
export const diary = {
  diary: {
    heading: 'Diary',
    none: 'nothing noted yet',
    summary: (notes: number, newest: string) => `${count(notes, 'note', 'notes')}, the newest of ${newest}`,
    stays:
      'Notes stay in these records: no bag file, copy, print or hand-over has them. What a player should read goes into the cover note.',
    day: 'Day',
    text: 'New note',
    textHint: 'Kept when you leave it.',
    keep: 'Keep the note',
    kept: (day: string) => `Noted for ${day}.`,
    notDay: 'Give a day, today or before.',
    noText: 'A note has a text. To be rid of it, strike it out.',
    list: 'Notes, the newest first',
    dayOf: (n: number) => `Day of note ${String(n)}`,
    textOf: (n: number, day: string) => `Note ${String(n)}, of ${day}`,
    strike: (n: number, day: string) => `Strike out note ${String(n)}, of ${day}`,
    strikeShort: 'Strike out',
    struck: (day: string) => `Struck out: the note of ${day}.`,
    older: (notes: number) => `Show ${count(notes, 'older note', 'older notes')}`,
    inRoster: (day: string) => `note of ${day}`,
    found: (typed: string) => `Notes that hold “${typed}”`,
  },
};
