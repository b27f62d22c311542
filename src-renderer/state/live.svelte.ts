import { untrack } from 'svelte';
import type { CallArgs, CallName, CallResult } from '../../src-main/contract/calls/index.ts';
import type { CallError } from '../../src-main/contract/gate.ts';
import { CallFailed, type Client } from './client.ts';
import { createLatest } from './latest.ts';
import type { Ticks } from './ticks.svelte.ts';

type Source<K extends CallName> = {
  client: Client;
  ticks: Ticks;
  name: K;
  /** What to ask now; null for nothing. Read reactively. */
  args: () => CallArgs<K> | null;
  /** What the answer is about: while it stays the same, an older answer stands until the new one is here. */
  subject?: (args: CallArgs<K>) => string;
};

/** A read of the contract that is kept up to date: asked anew when its arguments or the records change. */
export class Live<K extends CallName> {
  #value = $state.raw<CallResult<K>>();
  #error = $state.raw<CallError>();
  #subject: string | null = null;
  #subjectOf: (args: CallArgs<K>) => string;
  #ask: (args: CallArgs<K>) => void;

  constructor({ client, ticks, name, args, subject }: Source<K>) {
    this.#subjectOf = subject ?? (() => '');
    this.#ask = createLatest(
      (wanted) => client.call(name, wanted),
      (wanted, outcome) => this.#take(wanted, outcome),
    );
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

  #turnTo(wanted: CallArgs<K> | null): void {
    const subject = wanted === null ? null : this.#subjectOf(wanted);
    if (subject !== this.#subject) {
      this.#subject = subject;
      this.#value = undefined;
      this.#error = undefined;
    }
    if (wanted !== null) this.#ask(wanted);
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
