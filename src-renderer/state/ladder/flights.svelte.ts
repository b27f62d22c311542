import type { CallResult } from '../../../src-main/contract/calls/index.ts';
import type { CallError } from '../../../src-main/contract/gate.ts';
import { shownAtFirst } from './flight-view.ts';
import type { Formats } from '../format/formats.ts';
import { Live } from '../service/live.svelte.ts';
import type { Records } from '../service/records.svelte.ts';
import type { Route } from '../window/route.svelte.ts';

/** How the open bag's clubs fly, and which of them are drawn. */
export class FlightsState {
  #route: Route;
  #live: Live<'answers.flight'>;
  #chosen = $state.raw<{ bagId: number; ids: readonly string[] } | null>(null);

  constructor(records: Records, route: Route, formats: () => Formats) {
    this.#route = route;
    this.#live = new Live({
      client: records.client,
      ticks: records.ticks,
      name: 'answers.flight',
      args: () => {
        const { bagId, screen } = route;
        return bagId === null || screen !== 'ladder' ? null : { bagId, locale: formats().locale };
      },
      subject: ({ bagId }) => String(bagId),
    });
  }

  get value(): CallResult<'answers.flight'> | undefined {
    return this.#live.value;
  }

  get error(): CallError | undefined {
    return this.#live.error;
  }

  /** Ids of the clubs that are drawn: the reader's choice, else a few from the longest to the shortest. */
  get shown(): readonly string[] {
    const ids = this.value?.flights.map((flight) => flight.clubId) ?? [];
    return this.#chosen?.bagId === this.#route.bagId ? (this.#chosen?.ids ?? []) : shownAtFirst(ids);
  }

  toggle(clubId: string): void {
    const { bagId } = this.#route;
    if (bagId === null) return;
    const { shown } = this;
    const ids = shown.includes(clubId) ? shown.filter((id) => id !== clubId) : [...shown, clubId];
    this.#chosen = { bagId, ids };
  }
}
