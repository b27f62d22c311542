import { knownShortName } from './club-names.ts';

/** Small letters without accents, one blank between words, nothing but letters, digits and inner points. */
export function plain(text: string): string {
  return text
    .normalize('NFD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}.]+/gu, ' ')
    .replace(/(?<!\p{N})\.|\.(?!\p{N})/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim();
}

/** One thing that is looked for: a word, or the trade's short name of a club, which must be just that. */
export type Term = { word: string } | { club: string };

// Longer words, and other languages', that stand for the shorter ones of the catalogue. Common practice, no source.
const KINDS: Readonly<Record<string, string>> = {
  drivers: 'driver',
  dr: 'driver',
  woods: 'fairway',
  wood: 'fairway',
  fairways: 'fairway',
  fw: 'fairway',
  hybrids: 'hybrid',
  utility: 'hybrid',
  irons: 'irons',
  sets: 'irons',
  set: 'irons',
  wedges: 'wedge',
  putters: 'putter',
  holz: 'fairway',
  holzer: 'fairway',
  fairwayholz: 'fairway',
  fairwayholzer: 'fairway',
  eisensatz: 'irons',
  satz: 'irons',
};

/** The most words that a search looks at: nobody types more, and each costs a look-up. */
const MOST_TERMS = 8;
const MOST_LETTERS = 40;

/** The words as they stand. */
export function literalTerms(text: string): Term[] {
  return wordsOf(text).map((word) => ({ word }));
}

/**
 * The words with the trade's shorthand understood: "7i", "3 wood", "PW" and "gap wedge" name a club, and plurals and
 * other words a kind. Two words before one, since "gap" alone is no club.
 */
export function tradeTerms(text: string): Term[] {
  const words = wordsOf(text);
  const terms: Term[] = [];
  for (let i = 0; i < words.length; i++) {
    const word = words[i] ?? '';
    const next = words[i + 1];
    const pair = next === undefined ? null : knownShortName(`${word} ${singular(next)}`);
    if (pair !== null) {
      terms.push({ club: pair });
      i++;
      continue;
    }
    const club = word.length < 2 ? null : knownShortName(singular(word));
    if (club !== null) terms.push({ club });
    else terms.push({ word: Object.hasOwn(KINDS, word) ? (KINDS[word] ?? word) : word });
  }
  return terms;
}

function wordsOf(text: string): string[] {
  const words = plain(text).split(' ');
  return words
    .filter((word) => word !== '')
    .slice(0, MOST_TERMS)
    .map((word) => word.slice(0, MOST_LETTERS));
}

function singular(word: string): string {
  return word.length > 2 && word.endsWith('s') ? word.slice(0, -1) : word;
}

/** The three-letter pieces of a word between blanks: two before it, so that its beginning weighs more, and one after. */
export function threesOf(word: string): string[] {
  const padded = `  ${word} `;
  const threes = new Set<string>();
  for (let i = 0; i + 3 <= padded.length; i++) threes.add(padded.slice(i, i + 3));
  return [...threes];
}

/** How alike two words are by their shared threes: 1 the same, 0 nothing in common (Dice's coefficient). */
export function likeness(a: readonly string[], b: readonly string[]): number {
  const other = new Set(b);
  const shared = a.reduce((sum, three) => sum + (other.has(three) ? 1 : 0), 0);
  return (2 * shared) / (a.length + b.length);
}
