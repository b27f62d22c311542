import type { Archetype } from '../../contract/formats/catalogue.ts';
import { notesSaying, type Written } from '../../../db/repositories/search.ts';
import type { Db } from '../../../db/sqlite.ts';
import { longName, shortNamesOf } from './club-names.ts';
import { likeness, plain, threesOf, type Term } from './words.ts';

/** A note by its row id; rank 0: the very words, 1: beginnings, 2: within words, 3: words that look alike. */
export type NoteHit = { id: number; rank: number };

/** Notes read for one search: the newest that hold the threes. Own choice, for an answer at once. */
const MOST_READ = 400;
/** Notes read for each three of a word that no note has, to learn what words look like it. Own choice. */
const READ_FOR_LIKENESS = 60;
const LEAST_LIKENESS = 0.4;
const ALIKE_WORDS = 3;
/** Letters in a piece of the index. */
const THREE = 3;
/** What may follow a word of one letter. */
const NEXT_SIGNS = [...'abcdefghijklmnopqrstuvwxyz0123456789 -'];
const LIKENESS_FROM = 4;

/**
 * What stands for a term in a note, any of these: a blank before or after says where the word must begin or end.
 * Words shorter than a three are taken as beginnings.
 */
type Needles = readonly string[];

/** Price notes, or entries of diaries, that have every term, the better matches first, of equal ones the newest. */
export function searchNotes(
  db: Db,
  written: Written,
  terms: readonly Term[],
  limit: number,
  catalogue: readonly Archetype[],
): NoteHit[] {
  if (terms.length === 0) return [];
  const needles = terms.map((term) => needlesOf(term, catalogue));
  const exact = hitsOf(db, written, needles, limit);
  if (exact.length > 0) return exact;
  // A slip of the pen: words that no note has are replaced by words that look alike.
  const mended = needles.map((some, i) => {
    const term = terms[i];
    if (!term || 'club' in term || term.word.length < LIKENESS_FROM) return some;
    return hitsOf(db, written, [some], 1).length > 0
      ? some
      : wordsLike(db, written, term.word).map((word) => ` ${word} `);
  });
  if (mended.some((some) => some.length === 0)) return [];
  return hitsOf(db, written, mended, limit).map(({ id }) => ({ id, rank: 3 }));
}

function needlesOf(term: Term, catalogue: readonly Archetype[]): Needles {
  if ('word' in term) return [term.word.length < THREE ? ` ${term.word}` : term.word];
  // A note names its archetype by id, so a club's name stands for the lofts that bear it.
  const lofts = catalogue
    .filter((archetype) => shortNamesOf(archetype).has(term.club))
    .map(({ kind, loftDeg }) => ` ${kind} ${String(loftDeg)} `);
  return [...new Set([` ${longName(term.club)} `, ` ${term.club} `, ...lofts])];
}

function hitsOf(db: Db, written: Written, needles: readonly Needles[], limit: number): NoteHit[] {
  const hits: NoteHit[] = [];
  let read = 0;
  let best = 0;
  for (const { id, said } of notesSaying(db, written, matchOf(needles))) {
    const text = ` ${plain(said)} `;
    const rank = Math.max(...needles.map((some) => Math.min(...some.map((needle) => rankOf(text, needle)))));
    if (Number.isFinite(rank)) hits.push({ id, rank });
    if (rank === 0) best++;
    // The newest come first: once there are enough of the best kind, none that follows is better.
    if (++read >= MOST_READ || best >= limit) break;
  }
  return hits.sort((a, b) => a.rank - b.rank || b.id - a.id).slice(0, limit);
}

function rankOf(text: string, needle: string): number {
  const bare = needle.trim();
  if (text.includes(` ${bare} `)) return 0;
  if (text.includes(` ${bare}`)) return needle.endsWith(' ') ? Infinity : 1;
  return needle.startsWith(' ') || !text.includes(bare) ? Infinity : 2;
}

/** What the index is asked for: for each term some threes of one of its needles; what it gives is looked at anyway. */
function matchOf(needles: readonly Needles[]): string {
  const asked = needles.map((some) => some.map(threesAsked));
  // A single letter is in every other note: it is asked for only when there is nothing else.
  const telling = asked.filter((some) => some.every((words) => words.length > 0));
  if (telling.length > 0) return telling.map((some) => anyOf(some.map(allOf))).join(' AND ');
  const letters = needles.flat().map((needle) => needle.trim());
  return anyOf(letters.flatMap((letter) => NEXT_SIGNS.map((sign) => quoted(` ${letter}${sign}`))));
}

const quoted = (three: string) => `"${three.replaceAll('"', '""')}"`;
const allOf = (parts: readonly string[]) => `(${parts.join(' AND ')})`;
const anyOf = (parts: readonly string[]) => `(${parts.join(' OR ')})`;

/** Word by word, since notes may have a comma or a hyphen between two: the first and the last three of each. */
function threesAsked(needle: string): string[] {
  return needle
    .trim()
    .split(' ')
    .flatMap((word) => {
      const signs = [...word];
      if (signs.length === 1)
        return needle.trim() === word ? [] : [anyOf([quoted(` ${word} `), quoted(` ${word}-`)])];
      if (signs.length < THREE) return [quoted(` ${word}`)];
      const threes = [signs.slice(0, THREE), signs.slice(-THREE)].map((three) => quoted(three.join('')));
      return [...new Set(threes)];
    });
}

/** Words of notes that share most threes with one that no note has, the most alike first, ties by the alphabet. */
function wordsLike(db: Db, written: Written, word: string): string[] {
  const threes = threesOf(word);
  const found = new Map<string, number>();
  for (const three of threes) {
    if (three.startsWith('  ')) continue; // notes hold one blank between words
    let read = 0;
    for (const { said } of notesSaying(db, written, quoted(three))) {
      for (const other of plain(said).split(' ')) {
        if (found.has(other) || Math.abs(other.length - word.length) > 2) continue;
        found.set(other, likeness(threes, threesOf(other)));
      }
      if (++read >= READ_FOR_LIKENESS) break;
    }
  }
  return [...found]
    .filter(([, like]) => like >= LEAST_LIKENESS)
    .sort(([a, x], [b, y]) => y - x || (a < b ? -1 : 1))
    .slice(0, ALIKE_WORDS)
    .map(([other]) => other);
}
