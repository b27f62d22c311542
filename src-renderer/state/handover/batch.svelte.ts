import { SvelteSet } from 'svelte/reactivity';
import type { HandOverBatch } from '../../../src-main/contract/calls/answers/handover.ts';
import type { ProgressEvent } from '../../../src-main/contract/calls/index.ts';
import type { RosterLine } from '../../../src-main/contract/calls/records/players.ts';
import type { CallError } from '../../../src-main/contract/gate.ts';
import type { Formats } from '../format/formats.ts';
import { Live, type Progress } from '../service/live.svelte.ts';
import type { Records } from '../service/records.svelte.ts';
import { inOrder, searchRoster } from '../roster/roster-search.ts';
import type { Route } from '../window/route.svelte.ts';

/** More lines than this are no list to look through, but one to search. */
const MOST_LINES = 100;

/** Documents of many players at once. It goes on while other pages are looked at. */
export class BatchState {
  #records: Records;
  #formats: () => Formats;
  #roster: Live<'players.roster'>;
  #lines = $derived.by(() => (this.#roster.value === undefined ? undefined : inOrder(this.#roster.value)));
  #ticked = new SvelteSet<number>();
  #job = $state.raw<{ name: string; progress: Progress | null } | null>(null);
  #result = $state.raw<HandOverBatch | null>(null);
  #error = $state.raw<CallError | null>(null);
  search = $state('');

  constructor(records: Records, route: Route, formats: () => Formats) {
    this.#records = records;
    this.#formats = formats;
    this.#roster = new Live({
      client: records.client,
      ticks: records.ticks,
      name: 'players.roster',
      args: () => (route.screen === 'handover' ? {} : null),
    });
    $effect(() =>
      records.client.onEvent(({ event, data }) => {
        if (event !== 'progress' || this.#job === null) return;
        const { job, done, of } = data as ProgressEvent['data'];
        if (job === this.#job.name) this.#job = { name: job, progress: { done, of } };
      }),
    );
  }

  /** Undefined until it is read. */
  get roster(): RosterLine[] | undefined {
    return this.#lines;
  }

  get rosterError(): CallError | undefined {
    return this.#roster.error;
  }

  get found(): RosterLine[] {
    return searchRoster(this.roster ?? [], this.search);
  }

  get shown(): RosterLine[] {
    return this.found.slice(0, MOST_LINES);
  }

  isTicked(bagId: number): boolean {
    return this.#ticked.has(bagId);
  }

  tick(bagId: number, isTicked: boolean): void {
    if (isTicked) this.#ticked.add(bagId);
    else this.#ticked.delete(bagId);
  }

  /** Those who are ticked and still on the roster, in its order. */
  get ticked(): number[] {
    return (this.roster ?? []).map(({ bagId }) => bagId).filter((bagId) => this.#ticked.has(bagId));
  }

  get isAllTicked(): boolean {
    return this.shown.length > 0 && this.shown.every(({ bagId }) => this.#ticked.has(bagId));
  }

  tickShown(isTicked: boolean): void {
    for (const { bagId } of this.shown) this.tick(bagId, isTicked);
  }

  /** Null while nothing is made. */
  get running(): { progress: Progress | null } | null {
    return this.#job;
  }

  get result(): HandOverBatch | null {
    return this.#result;
  }

  get error(): CallError | null {
    return this.#error;
  }

  nameOf(bagId: number): string | undefined {
    return this.roster?.find((line) => line.bagId === bagId)?.name;
  }

  async start(): Promise<void> {
    const bagIds = this.ticked;
    if (bagIds.length === 0 || this.#job !== null) return;
    const name = `handover-${crypto.randomUUID()}`;
    this.#job = { name, progress: null };
    this.#result = null;
    this.#error = null;
    const { locale } = this.#formats();
    // Nothing in sight shows the exports, so nothing is read again.
    const done = await this.#records
      .edit('handover.batch', { bagIds, job: name, locale }, true)
      .finally(() => (this.#job = null));
    if (done.ok) this.#result = done.value;
    else this.#error = done.error;
  }

  async cancel(): Promise<void> {
    if (this.#job !== null) await this.#records.client.call('jobs.cancel', { job: this.#job.name });
  }
}
