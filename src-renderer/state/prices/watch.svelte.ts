import type { WatchItem } from '../../../src-main/contract/calls/money/prices.ts';
import { CallFailed } from '../service/client.ts';
import type { Formats } from '../format/formats.ts';
import type { Records } from '../service/records.svelte.ts';
import type { Route } from '../window/route.svelte.ts';
import { lineMessage } from '../service/refusals.ts';

type Found = { bagId: number; items: readonly WatchItem[]; isCancelled: boolean; at: number };

/** The watch list takes long, so it is asked for by hand, and can be stopped. */
export class WatchState {
  #records: Records;
  #route: Route;
  #formats: () => Formats;
  #found = $state.raw<Found | null>(null);
  #job = $state<string | null>(null);
  #message = $state<string | null>(null);
  #runs = 0;

  constructor(records: Records, route: Route, formats: () => Formats) {
    this.#records = records;
    this.#formats = formats;
    this.#route = route;
  }

  /** Of the open bag; null until it was looked for. */
  get found(): Found | null {
    return this.#found?.bagId === this.#route.bagId ? this.#found : null;
  }

  /** The records were changed after what was found was looked for. */
  get isOld(): boolean {
    return this.found !== null && this.found.at !== this.#records.ticks.count;
  }

  get isLooking(): boolean {
    return this.#job !== null;
  }

  /** Why nothing was found out; null while there is nothing to say. */
  get message(): string | null {
    return this.#message;
  }

  async look(): Promise<void> {
    const { bagId } = this.#route;
    if (bagId === null || this.isLooking) return;
    this.#runs += 1;
    // Two windows may look at the same bag at the same time.
    const job = `watch-${String(bagId)}-${String(this.#runs)}-${crypto.randomUUID()}`.slice(0, 60);
    this.#job = job;
    this.#message = null;
    const at = this.#records.ticks.count;
    const { locale } = this.#formats();
    try {
      const { items, cancelled } = await this.#records.client.call('prices.watchList', {
        bagId,
        job,
        locale,
      });
      this.#found = { bagId, items, isCancelled: cancelled, at };
    } catch (error) {
      if (!(error instanceof CallFailed)) throw error;
      this.#message = lineMessage(error.error);
    } finally {
      this.#job = null;
    }
  }

  async cancel(): Promise<void> {
    const job = this.#job;
    if (job !== null) await this.#records.client.call('jobs.cancel', { job });
  }
}
