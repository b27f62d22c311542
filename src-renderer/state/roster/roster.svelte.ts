import type { CallResult } from '../../../src-main/contract/calls/index.ts';
import type { RosterLine } from '../../../src-main/contract/calls/records/players.ts';
import type { CallError } from '../../../src-main/contract/gate.ts';
import type { Formats } from '../format/formats.ts';
import { Live } from '../service/live.svelte.ts';
import type { Edited, Records } from '../service/records.svelte.ts';
import { inOrder, searchRoster } from './roster-search.ts';
import type { Route } from '../window/route.svelte.ts';

type Opened = CallResult<'players.create'>;
type NewPlayer = {
  name: string;
  handicap: number;
  units: { distance: 'yd' | 'm'; speed: 'mph' | 'km/h' | 'm/s'; currency: string };
};

/** Everybody in the book, and what can be done with a player as a whole. */
export class RosterState {
  #records: Records;
  #formats: () => Formats;
  #live: Live<'players.roster'>;
  #lines = $derived.by(() => (this.#live.value === undefined ? undefined : inOrder(this.#live.value)));
  search = $state('');
  archived = $state(false);
  /** Only those whose newest plan left findings open. */
  openOnly = $state(false);
  /** The form for a new player is open. */
  isNew = $state(false);

  constructor(records: Records, route: Route, formats: () => Formats) {
    this.#records = records;
    this.#formats = formats;
    this.#live = new Live({
      client: records.client,
      ticks: records.ticks,
      name: 'players.roster',
      args: () => (route.screen === 'players' ? { archived: this.archived } : null),
      subject: ({ archived }) => String(archived),
    });
  }

  /** Undefined until it is read. */
  get lines(): RosterLine[] | undefined {
    return this.#lines;
  }

  get found(): RosterLine[] {
    const found = searchRoster(this.lines ?? [], this.search);
    return this.openOnly ? found.filter(({ openFindings = 0 }) => openFindings > 0) : found;
  }

  get error(): CallError | undefined {
    return this.#live.error;
  }

  create(player: NewPlayer): Promise<Edited<'players.create'>> {
    return this.#records.edit('players.create', { ...player, locale: this.#formats().locale });
  }

  duplicate(playerId: number): Promise<Edited<'players.duplicate'>> {
    return this.#records.edit('players.duplicate', { playerId, locale: this.#formats().locale });
  }

  archive(playerId: number): Promise<Edited<'players.archive'>> {
    return this.#records.edit('players.archive', { playerId });
  }

  unarchive(playerId: number): Promise<Edited<'players.unarchive'>> {
    return this.#records.edit('players.unarchive', { playerId });
  }

  openDemo(demo: 'invented-bag' | 'range-bag'): Promise<Edited<'players.openDemo'>> {
    return this.#records.edit('players.openDemo', { demo });
  }

  async look({ playerId }: Pick<Opened, 'playerId'>): Promise<void> {
    // Only the roster shows it, and that is read when it is turned to.
    await this.#records.edit('players.look', { playerId }, true);
  }

  exportBag(bagId: number): Promise<CallResult<'bags.export'>> {
    return this.#records.client.call('bags.export', { bagId });
  }
}
