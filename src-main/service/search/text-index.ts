import Fuse from 'fuse.js';
import { likeness, plain, threesOf, type Term } from './words.ts';

/** Something that can be found by words, and by the trade's short names of clubs, each with a score (0: just that). */
export type Entry<T> = { item: T; text: string; clubs?: ReadonlyMap<string, number> };

export type Found<T> = { item: T; score: number };

export type TextIndex<T> = {
  /** Every entry that has all the terms, the best first: score 0 is the very words. Ties in the order of the entries. */
  find(terms: readonly Term[], limit: number): Found<T>[];
};

/** Entries that are looked at for one word: those that share most threes with it. */
const MOST_CANDIDATES = 300;
/** A word this short is only taken as a beginning; longer ones may hold a slip. */
const SHORT = 3;
/** Share of a word's threes that an entry must have. Own choice: "hybird" and "hybrid" share 3 of 7. */
const LEAST_SHARE = 0.4;

/**
 * Finds by shared threes, then lets fuse.js rank the few that are left, so that ten thousand entries are searched in
 * a few milliseconds.
 */
export function textIndex<T>(entries: readonly Entry<T>[]): TextIndex<T> {
  const texts = entries.map(({ text }) => plain(text));
  const byThree = new Map<string, number[]>();
  const byClub = new Map<string, Map<number, number>>();
  entries.forEach(({ clubs }, at) => {
    for (const three of new Set((texts[at] ?? '').split(' ').flatMap(threesOf))) {
      const list = byThree.get(three);
      if (list) list.push(at);
      else byThree.set(three, [at]);
    }
    for (const [club, score] of clubs ?? []) {
      const scores = byClub.get(club);
      if (scores) scores.set(at, score);
      else byClub.set(club, new Map([[at, score]]));
    }
  });

  /** Scores of the entries that have one term; only of those in `among`, where given. */
  const scoresOf = (term: Term, among: ReadonlyMap<number, number> | null): ReadonlyMap<number, number> => {
    if ('club' in term) return byClub.get(term.club) ?? new Map<number, number>();
    return wordScores(term.word, candidatesFor(term.word, among));
  };

  const candidatesFor = (word: string, among: ReadonlyMap<number, number> | null): number[] => {
    const threes = beginnings(word);
    const counts = new Map<number, number>();
    for (const three of threes) {
      for (const at of byThree.get(three) ?? []) {
        if (among === null || among.has(at)) counts.set(at, (counts.get(at) ?? 0) + 1);
      }
    }
    const least = word.length < SHORT ? threes.length : threes.length * LEAST_SHARE;
    return [...counts]
      .filter(([, count]) => count >= least)
      .sort(([a, x], [b, y]) => y - x || a - b)
      .slice(0, MOST_CANDIDATES)
      .map(([at]) => at);
  };

  const wordScores = (word: string, candidates: readonly number[]): Map<number, number> => {
    const scores = new Map<number, number>();
    const rest: number[] = [];
    for (const at of candidates) {
      const words = (texts[at] ?? '').split(' ');
      if (words.includes(word)) scores.set(at, 0);
      else if (words.some((one) => one.startsWith(word))) scores.set(at, 0.1);
      else if (word.length >= SHORT) rest.push(at);
    }
    for (const [at, score] of fuzzyScores(word, rest, texts)) scores.set(at, score);
    return scores;
  };

  return {
    find(terms, limit) {
      if (terms.length === 0) return [];
      let sums: ReadonlyMap<number, number> | null = null;
      for (const term of terms) {
        const before: ReadonlyMap<number, number> | null = sums;
        const scores = scoresOf(term, before);
        const next = new Map<number, number>();
        for (const [at, score] of scores) {
          const sum = before === null ? 0 : before.get(at);
          if (sum !== undefined) next.set(at, sum + score);
        }
        sums = next;
      }
      return [...(sums ?? [])]
        .sort(([a, x], [b, y]) => x - y || a - b)
        .slice(0, limit)
        .flatMap(([at, score]) => {
          const entry = entries[at];
          return entry === undefined ? [] : [{ item: entry.item, score: score / terms.length }];
        });
    },
  };
}

/** The threes that a text must share with a word that may go on. */
function beginnings(word: string): string[] {
  const threes = threesOf(word);
  return threes.length > 1 ? threes.slice(0, -1) : threes;
}

/** fuse.js on the words of a few texts; what it does not know, but shares most threes, comes after. */
function fuzzyScores(
  word: string,
  candidates: readonly number[],
  texts: readonly string[],
): Map<number, number> {
  const docs = candidates.map((at) => ({ at, words: (texts[at] ?? '').split(' ') }));
  const fuse = new Fuse(docs, { keys: ['words'], includeScore: true, threshold: 0.4, ignoreLocation: true });
  const scores = new Map<number, number>();
  for (const { item, score } of fuse.search(word)) scores.set(item.at, 0.2 + 0.4 * (score ?? 1));
  const threes = threesOf(word);
  for (const { at, words } of docs) {
    if (scores.has(at)) continue;
    const best = Math.max(...words.map((one) => likeness(threes, threesOf(one))));
    if (best >= LEAST_SHARE) scores.set(at, 1 - best / 2);
  }
  return scores;
}
