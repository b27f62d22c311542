import type { Answer } from '../../src-main/contract/calls/answers/answers.ts';
import type { CallError } from '../../src-main/contract/gate.ts';
import type { Formats } from './format/formats.ts';
import { Live, type Progress } from './service/live.svelte.ts';
import type { Records } from './service/records.svelte.ts';
import type { Route } from './window/route.svelte.ts';

type Try = { bagId: number; budget: number | null };

/** The whole answer for the open bag, on the Spend screen also with a budget that is only tried. */
export class AnswerState {
  #route: Route;
  #live: Live<'answers.plan'>;
  #try = $state.raw<Try | null>(null);

  constructor(records: Records, route: Route, formats: () => Formats) {
    this.#route = route;
    this.#live = new Live({
      client: records.client,
      ticks: records.ticks,
      name: 'answers.plan',
      args: () => {
        const { bagId, screen } = route;
        // The hand-over reckons for itself, in the document's language.
        if (bagId === null || screen === 'players' || screen === 'handover') return null;
        const tried = this.tried;
        const { locale } = formats();
        return tried === undefined ? { bagId, locale } : { bagId, budget: tried, locale };
      },
      subject: ({ bagId }) => String(bagId),
      asJob: (args, job) => ({ ...args, job }),
    });
  }

  get value(): Answer | undefined {
    return this.#live.value;
  }

  get error(): CallError | undefined {
    return this.#live.error;
  }

  /** How far an answer is that takes long; null while none does. */
  get slow(): { progress: Progress | null } | null {
    return this.#live.slow;
  }

  again(): void {
    this.#live.again();
  }

  stop(): void {
    void this.#live.stop();
  }

  /** The budget that is tried (null: none); undefined while the kept one counts. */
  get tried(): number | null | undefined {
    const { bagId, screen } = this.#route;
    return screen === 'spend' && this.#try?.bagId === bagId ? this.#try?.budget : undefined;
  }

  tryBudget(budget: number | null): void {
    const { bagId } = this.#route;
    if (bagId !== null) this.#try = { bagId, budget };
  }

  stopTrying(): void {
    this.#try = null;
  }
}
