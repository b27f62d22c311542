import type { BesideChoice } from '../../../src-main/contract/calls/answers/beside.ts';
import type { CallResult } from '../../../src-main/contract/calls/index.ts';
import type { CallError } from '../../../src-main/contract/gate.ts';
import type { Formats } from '../format/formats.ts';
import { Live } from '../service/live.svelte.ts';
import type { Records } from '../service/records.svelte.ts';
import type { Route } from '../window/route.svelte.ts';
import type { BesidePair } from './beside-view.ts';

/** As many as can be looked through in a list that opens below a field. */
const MOST_CHOICES = 20;

/** Another bag beside the open one, on the page "Side by side". */
export class BesideState {
  #route: Route;
  /** The bag whose page shows another bag, in place of two ways to spend. */
  #onFor = $state<number | null>(null);
  #other = $state.raw<{ bagId: number; choice: BesideChoice } | null>(null);
  #choices: Live<'beside.choices'>;
  #answer: Live<'beside.bags'>;
  /** What of the players is looked for. */
  typed = $state('');

  constructor(records: Records, route: Route, formats: () => Formats) {
    this.#route = route;
    const { client, ticks } = records;
    this.#choices = new Live({
      client,
      ticks,
      name: 'beside.choices',
      args: () => {
        const bagId = this.#here;
        return bagId === null ? null : { bagId, text: this.typed.trim().slice(0, 200), limit: MOST_CHOICES };
      },
      subject: ({ bagId }) => String(bagId),
    });
    this.#answer = new Live({
      client,
      ticks,
      name: 'beside.bags',
      args: () => {
        const [bagId, otherId] = [this.#here, this.otherId];
        return bagId === null || otherId === null ? null : { bagId, otherId, locale: formats().locale };
      },
      subject: ({ bagId, otherId }) => `${String(bagId)} ${String(otherId)}`,
    });
  }

  get #here(): number | null {
    return this.#route.screen === 'side' && this.isOn ? this.#route.bagId : null;
  }

  get isOn(): boolean {
    return this.#route.bagId !== null && this.#onFor === this.#route.bagId;
  }

  turnOn(bagId = this.#route.bagId): void {
    this.#onFor = bagId;
  }

  turnOff(): void {
    this.#onFor = null;
  }

  /** The bag that stands beside the open one, by its newest name; null before one is chosen. */
  get chosen(): Omit<BesideChoice, 'clubs'> | null {
    if (this.#other === null || this.#other.bagId !== this.#route.bagId) return null;
    const { choice } = this.#other;
    return this.bags?.right.bagId === choice.bagId ? this.bags.right : choice;
  }

  get otherId(): number | null {
    return this.#other?.bagId === this.#route.bagId ? (this.#other?.choice.bagId ?? null) : null;
  }

  choose(choice: BesideChoice): void {
    const { bagId } = this.#route;
    this.#other = bagId === null ? null : { bagId, choice };
  }

  /** Undefined until they are read. */
  get choices(): readonly BesideChoice[] | undefined {
    return this.#choices.value;
  }

  get choicesError(): CallError | undefined {
    return this.#choices.error;
  }

  get units(): CallResult<'beside.bags'>['units'] | undefined {
    return this.#answer.value?.units;
  }

  /** Both bags; undefined until they are reckoned. */
  get bags(): BesidePair | undefined {
    const bags = this.#answer.value?.bags;
    return bags && { left: bags[0], right: bags[1] };
  }

  get error(): CallError | undefined {
    return this.#answer.error;
  }
}
