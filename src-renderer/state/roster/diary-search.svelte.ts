import type { SearchAnswer } from '../../../src-main/contract/calls/program/search.ts';
import { Live } from '../service/live.svelte.ts';
import type { Records } from '../service/records.svelte.ts';
import type { Route } from '../window/route.svelte.ts';
import type { RosterState } from './roster.svelte.ts';

/** Letters from which on diaries are searched: fewer are in nearly every note. */
const FROM_LETTERS = 3;
const MOST_FOUND = 10;

/** Notes in anybody's diary that hold what is typed into the search of the roster. */
export class DiarySearch {
  #live: Live<'search.all'>;

  constructor(records: Records, route: Route, roster: RosterState) {
    this.#live = new Live({
      client: records.client,
      ticks: records.ticks,
      name: 'search.all',
      args: () => {
        const text = roster.search.trim().slice(0, 200);
        if (route.screen !== 'players' || text.length < FROM_LETTERS) return null;
        return { text, limit: MOST_FOUND };
      },
    });
  }

  /** Empty where nothing is found, and until it is read. */
  get notes(): SearchAnswer['diary'] {
    return this.#live.value?.diary ?? [];
  }
}
