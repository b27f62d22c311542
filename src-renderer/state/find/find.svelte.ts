import type { CallError } from '../../../src-main/contract/gate.ts';
import type { Formats } from '../format/formats.ts';
import { Live } from '../service/live.svelte.ts';
import type { Records } from '../service/records.svelte.ts';
import type { Route } from '../window/route.svelte.ts';
import { foundIn, type Found } from './found.ts';

/** Of each kind: what can be taken in at a glance. */
const MOST_OF_A_KIND = 6;
const MOST_TYPED = 200;

/** The panel "Find or do": what is typed, and what of the records is found by it. */
export class FindState {
  typed = $state('');
  #isOpen = $state(false);
  #before: Element | null = null;
  #live: Live<'search.all'>;
  #route: Route;
  #formats: () => Formats;

  constructor(records: Records, route: Route, formats: () => Formats) {
    this.#route = route;
    this.#formats = formats;
    this.#live = new Live({
      client: records.client,
      ticks: records.ticks,
      name: 'search.all',
      args: () => {
        const text = this.typed.trim().slice(0, MOST_TYPED);
        if (!this.#isOpen || text === '') return null;
        return { text, limit: MOST_OF_A_KIND, locale: formats().locale };
      },
    });
  }

  get isOpen(): boolean {
    return this.#isOpen;
  }

  /** What was found last; that of the letters before stands until the next is here. Undefined while nothing is. */
  get found(): Found[] | undefined {
    const answer = this.#live.value;
    return answer && foundIn(answer, this.#formats(), this.#route.bagId !== null);
  }

  get error(): CallError | undefined {
    return this.#live.error;
  }

  open(): void {
    if (this.#isOpen) return;
    this.#before = document.activeElement;
    this.typed = '';
    this.#isOpen = true;
  }

  /** The focus stays where it went. */
  close(): void {
    this.#isOpen = false;
    this.#before = null;
  }

  /** Closes it and puts the focus back where it was. */
  leave(): void {
    const before = this.#before;
    this.close();
    const isThere = before instanceof HTMLElement && before !== document.body && before.isConnected;
    const to = isThere ? before : document.getElementById('page-heading');
    to?.focus({ preventScroll: true });
  }

  toggle(): void {
    if (this.#isOpen) this.leave();
    else this.open();
  }
}
