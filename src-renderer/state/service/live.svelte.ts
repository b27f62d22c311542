import { untrack } from 'svelte';
import type {
  CallArgs,
  CallName,
  CallResult,
  ProgressEvent,
} from '../../../src-main/contract/calls/index.ts';
import type { CallError, HostEvent } from '../../../src-main/contract/gate.ts';
import { CallFailed, type Client } from './client.ts';
import { createLatest } from './latest.ts';
import type { Ticks } from './ticks.svelte.ts';

export type Progress = { done: number; of: number };

type Source<K extends CallName> = {
  client: Client;
  ticks: Ticks;
  name: K;
  /** What to ask now; null for nothing. Read reactively. */
  args: () => CallArgs<K> | null;
  /** What the answer is about: while it stays the same, an older answer stands until the new one is here. */
  subject?: (args: CallArgs<K>) => string;
  /** For a call that takes a job's name: it can then be stopped, and is when a newer one overtakes it. */
  asJob?: (args: CallArgs<K>, job: string) => CallArgs<K>;
};

/** A run that takes longer is worth ending for a newer one, and worth telling of. */
const LONG_MS = 500;

/** A read of the contract that is kept up to date: asked anew when its arguments or the records change. */
export class Live<K extends CallName> {
  #value = $state.raw<CallResult<K>>();
  #error = $state.raw<CallError>();
  #subject: string | null = null;
  #wanted: CallArgs<K> | null = null;
  #slow = $state.raw<{ job: string; progress: Progress | null } | null>(null);
  #client: Client;
  #subjectOf: (args: CallArgs<K>) => string;
  #ask: (args: CallArgs<K>) => void;

  constructor({ client, ticks, name, args, subject, asJob }: Source<K>) {
    this.#client = client;
    this.#subjectOf = subject ?? (() => '');
    this.#ask = createLatest(
      (wanted) =>
        asJob === undefined
          ? client.call(name, wanted)
          : this.#asJob((job) => client.call(name, asJob(wanted, job))),
      (wanted, outcome) => this.#take(wanted, outcome),
      asJob === undefined ? {} : { overtaken: { afterMs: LONG_MS, end: () => void this.#end() } },
    );
    if (asJob !== undefined) $effect(() => client.onEvent((event) => this.#hear(event)));
    $effect(() => {
      const wanted = args();
      void ticks.count;
      untrack(() => this.#turnTo(wanted));
    });
  }

  /** Undefined until the first answer, and after an error. */
  get value(): CallResult<K> | undefined {
    return this.#value;
  }

  get error(): CallError | undefined {
    return this.#error;
  }

  /** How far a run is that takes long; null while none does. */
  get slow(): { progress: Progress | null } | null {
    return this.#slow;
  }

  /** Ends the run that takes long: its error then stands in the place of an answer. */
  async stop(): Promise<void> {
    if (this.#slow !== null) await this.#end();
  }

  #job: string | null = null;

  async #asJob<R>(run: (job: string) => Promise<R>): Promise<R> {
    const job = `answer-${crypto.randomUUID()}`;
    this.#job = job;
    const timer = setTimeout(() => (this.#slow = { job, progress: null }), LONG_MS);
    try {
      return await run(job);
    } finally {
      clearTimeout(timer);
      this.#slow = null;
      this.#job = null;
    }
  }

  async #end(): Promise<void> {
    const job = this.#job;
    if (job !== null) await this.#client.call('jobs.cancel', { job });
  }

  #hear({ event, data }: HostEvent): void {
    if (event !== 'progress' || this.#slow === null) return;
    const { job, done, of } = data as ProgressEvent['data'];
    if (job === this.#slow.job) this.#slow = { job, progress: { done, of } };
  }

  #turnTo(wanted: CallArgs<K> | null): void {
    const subject = wanted === null ? null : this.#subjectOf(wanted);
    if (subject !== this.#subject) {
      this.#subject = subject;
      this.#value = undefined;
      this.#error = undefined;
    }
    this.#wanted = wanted;
    this.again();
  }

  /** Asks once more, as after a stop. */
  again(): void {
    if (this.#wanted !== null) this.#ask(this.#wanted);
  }

  #take(wanted: CallArgs<K>, outcome: { value: CallResult<K> } | { error: unknown }): void {
    if (this.#subjectOf(wanted) !== this.#subject) return;
    if ('value' in outcome) {
      this.#value = outcome.value;
      this.#error = undefined;
      return;
    }
    if (!(outcome.error instanceof CallFailed)) throw outcome.error;
    // What was read stays in sight; the page says elsewhere that nobody answers.
    if (outcome.error.isUnreachable) return;
    this.#value = undefined;
    this.#error = outcome.error.error;
  }
}
