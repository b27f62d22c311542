import type { CallResult, ProgressEvent } from '../../../src-main/contract/calls/index.ts';
import { CallFailed } from '../service/client.ts';
import type { Progress } from '../service/live.svelte.ts';
import type { Records } from '../service/records.svelte.ts';
import { lineMessage } from '../service/refusals.ts';

export type RosterOutcome = CallResult<'roster.plan'>;

/** Plans many bags of the roster anew, one run at a time; it can be stopped, and what was planned until then is kept. */
export class RosterBatch {
  #records: Records;
  #run = $state.raw<{ job: string; progress: Progress | null } | null>(null);
  #outcome = $state.raw<RosterOutcome | null>(null);
  #message = $state<string | null>(null);

  constructor(records: Records) {
    this.#records = records;
    $effect(() =>
      records.client.onEvent(({ event, data }) => {
        if (event !== 'progress' || this.#run === null) return;
        const { job, done, of } = data as ProgressEvent['data'];
        if (job === this.#run.job) this.#run = { job, progress: { done, of } };
      }),
    );
  }

  /** Null while nothing runs. */
  get running(): { progress: Progress | null } | null {
    return this.#run;
  }

  /** Of the last run; null before the first, and while one runs. */
  get outcome(): RosterOutcome | null {
    return this.#outcome;
  }

  /** Why the last run did not take place; null when it did. */
  get message(): string | null {
    return this.#message;
  }

  async plan(bagIds: number[]): Promise<void> {
    if (this.#run !== null || bagIds.length === 0) return;
    const job = `roster-${crypto.randomUUID()}`;
    this.#run = { job, progress: null };
    this.#outcome = null;
    this.#message = null;
    try {
      const done = await this.#records.edit('roster.plan', { bagIds, job });
      if (done.ok) this.#outcome = done.value;
      else this.#message = lineMessage(done.error);
    } finally {
      this.#run = null;
    }
  }

  async stop(): Promise<void> {
    if (this.#run === null) return;
    try {
      await this.#records.client.call('jobs.cancel', { job: this.#run.job });
    } catch (error) {
      if (!(error instanceof CallFailed)) throw error;
      this.#message = lineMessage(error.error);
    }
  }

  dismiss(): void {
    this.#outcome = null;
    this.#message = null;
  }
}
