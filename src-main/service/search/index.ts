import type { SearchAnswer } from '../../contract/calls/program/search.ts';
import type { Archetype } from '../../contract/formats/catalogue.ts';
import { german } from '../../domain/advice/words/de.ts';
import { english } from '../../domain/advice/words/en.ts';
import { adviceWords } from '../../domain/advice/words/index.ts';
import { listBags } from '../../../db/repositories/bags/bags.ts';
import { readDiaryEntry } from '../../../db/repositories/bags/diary.ts';
import { readPlayer } from '../../../db/repositories/bags/players.ts';
import { readPriceNote } from '../../../db/repositories/prices/price-notes.ts';
import {
  clubNames,
  clubsNamed,
  namesVersion,
  playerNames,
  type PlayerName,
  type Written,
} from '../../../db/repositories/search.ts';
import type { Db } from '../../../db/sqlite.ts';
import { noteOf } from '../prices/note-rows.ts';
import { readAssumptions } from '../prices/price-bands.ts';
import { knownShortName, longName, memberNames, shortNamesOf } from './club-names.ts';
import { excerpt } from './excerpt.ts';
import { searchNotes } from './note-search.ts';
import { textIndex, type Found, type TextIndex } from './text-index.ts';
import { literalTerms, tradeTerms, type Term } from './words.ts';

/** Searches the records; what it knows of names by heart is made anew when a name has changed. */
export type Search = {
  all(db: Db, text: string, limit: number, options: SearchOptions): SearchAnswer;
};

export type SearchOptions = {
  catalogue: readonly Archetype[];
  today: string;
  /** Of the archetypes' names that come back; what is found is the same in all. */
  locale?: string | undefined;
};

/** Clubs of one name that are shown, the newest first. */
const MOST_OF_ONE_NAME = 5;

export function createSearch(): Search {
  let names: { of: Db; version: string; players: TextIndex<PlayerName>; clubs: TextIndex<string> } | null =
    null;
  let archetypes: { of: string; index: TextIndex<Archetype> } | null = null;

  const namesOf = (db: Db) => {
    const version = namesVersion(db);
    if (names?.of === db && names.version === version) return names;
    names = { of: db, version, players: indexPlayers(db), clubs: indexClubs(db) };
    return names;
  };
  const archetypesOf = (catalogue: readonly Archetype[]) => {
    const of = catalogue.map(({ id }) => id).join('\n');
    if (archetypes?.of === of) return archetypes.index;
    archetypes = { of, index: indexArchetypes(catalogue) };
    return archetypes.index;
  };

  return {
    all(db, text, limit, { catalogue, today, locale }) {
      const { archetypeName } = adviceWords(locale);
      const ways = waysToRead(text);
      const { players, clubs } = namesOf(db);
      const byId = new Map(catalogue.map((archetype) => [archetype.id, archetype]));
      const assumptions = readAssumptions(db);
      return {
        archetypes: best(archetypesOf(catalogue), ways, limit).map((archetype) => ({
          id: archetype.id,
          name: archetypeName(archetype),
        })),
        players: best(players, ways, limit).map((player) => ({
          ...player,
          bagId: listBags(db, player.playerId)[0]?.id ?? null,
        })),
        clubs: best(clubs, ways, limit)
          .flatMap((name) => clubsNamed(db, name, MOST_OF_ONE_NAME))
          .slice(0, limit),
        diary: notesOf(db, 'diary_entry', ways, limit, catalogue).map((id) => {
          const { playerId, onDate, text: whole } = readDiaryEntry(db, id);
          return {
            entryId: id,
            playerId,
            bagId: listBags(db, playerId)[0]?.id ?? null,
            player: readPlayer(db, playerId).name,
            on: onDate,
            text: excerpt(whole, ways),
          };
        }),
        notes: notesOf(db, 'price_note', ways, limit, catalogue).map((id) => {
          const note = readPriceNote(db, id);
          const archetype = byId.get(note.archetypeId);
          return {
            ...noteOf(note, today, assumptions),
            name: archetype === undefined ? note.archetypeId : archetypeName(archetype),
          };
        }),
      };
    },
  };
}

/** With the trade's shorthand understood, and the very words where that is not the same. */
function waysToRead(text: string): Term[][] {
  const trade = tradeTerms(text);
  const literal = literalTerms(text);
  return JSON.stringify(trade) === JSON.stringify(literal) ? [literal] : [trade, literal];
}

/** The best of all ways to read the text, each item once; equal scores in the order of the ways, then of the index. */
function best<T>(index: TextIndex<T>, ways: readonly Term[][], limit: number): T[] {
  const found = new Map<T, Found<T>>();
  for (const terms of ways) {
    for (const hit of index.find(terms, limit)) {
      const known = found.get(hit.item);
      if (known === undefined || hit.score < known.score) found.set(hit.item, hit);
    }
  }
  return [...found.values()]
    .sort((a, b) => a.score - b.score)
    .slice(0, limit)
    .map(({ item }) => item);
}

function notesOf(
  db: Db,
  written: Written,
  ways: readonly Term[][],
  limit: number,
  catalogue: readonly Archetype[],
): number[] {
  const ranks = new Map<number, number>();
  for (const terms of ways) {
    for (const { id, rank } of searchNotes(db, written, terms, limit, catalogue)) {
      ranks.set(id, Math.min(rank, ranks.get(id) ?? Infinity));
    }
  }
  return [...ranks]
    .sort(([a, x], [b, y]) => x - y || b - a)
    .slice(0, limit)
    .map(([id]) => id);
}

/** Per degree off the typical loft, and for a set that holds the club: they stand behind the club itself. */
const OFF_SCORE = 0.05;
const HOLDS_SCORE = 0.5;

function indexArchetypes(catalogue: readonly Archetype[]): TextIndex<Archetype> {
  return textIndex(
    catalogue.map((archetype) => {
      const names = shortNamesOf(archetype);
      const held = memberNames(archetype).map((name) => [name, HOLDS_SCORE] as const);
      const own = [...names].map(([name, off]) => [name, OFF_SCORE * off] as const);
      const words = [
        english.archetypeName(archetype),
        german.archetypeName(archetype),
        archetype.id.replaceAll('-', ' '),
        ...names.keys(),
      ];
      const text = [...words, ...[...names.keys()].map(longName)].join(' ');
      return { item: archetype, text, clubs: new Map([...held, ...own]) };
    }),
  );
}

function indexPlayers(db: Db): TextIndex<PlayerName> {
  return textIndex(playerNames(db).map((player) => ({ item: player, text: player.name })));
}

function indexClubs(db: Db): TextIndex<string> {
  return textIndex(
    clubNames(db).map((name) => {
      const short = knownShortName(name);
      return { item: name, text: name, ...(short === null ? {} : { clubs: new Map([[short, 0]]) }) };
    }),
  );
}
