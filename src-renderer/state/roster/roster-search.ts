import type { RosterLine } from '../../../src-main/contract/calls/records/players.ts';

/** Without accents and case, so that "jose" finds "José". */
function plain(text: string): string {
  return text.normalize('NFKD').replace(/\p{M}/gu, '').toLocaleLowerCase();
}

/** Players whose name holds every word that was typed. */
export function searchRoster<T extends Pick<RosterLine, 'name'>>(roster: readonly T[], typed: string): T[] {
  const words = plain(typed).split(/\s+/).filter(Boolean);
  if (words.length === 0) return [...roster];
  return roster.filter(({ name }) => {
    const text = plain(name);
    return words.every((word) => text.includes(word));
  });
}
