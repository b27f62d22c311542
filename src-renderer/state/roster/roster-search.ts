import type { RosterLine } from '../../../src-main/contract/calls/records/players.ts';

/** Without accents and case, so that "jose" finds "José". */
function plain(text: string): string {
  return text.normalize('NFKD').replace(/\p{M}/gu, '').toLocaleLowerCase();
}

/** As a reader sorts: 2 before 10, and accents beside their letter, in the window's own language. */
const byName = new Intl.Collator(undefined, { numeric: true });

export function inOrder<T extends Pick<RosterLine, 'name'>>(roster: readonly T[]): T[] {
  return [...roster].sort((a, b) => byName.compare(a.name, b.name));
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
