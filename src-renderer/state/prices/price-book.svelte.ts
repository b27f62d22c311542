import type { CallArgs, CallResult } from '../../../src-main/contract/calls/index.ts';
import type { BandAnswer, NewNote, SeenOne } from '../../../src-main/contract/calls/money/prices.ts';
import type { CallError } from '../../../src-main/contract/gate.ts';
import type { Saved } from '../service/edits.ts';
import type { Formats } from '../format/formats.ts';
import { Live } from '../service/live.svelte.ts';
import type { Edited, Records } from '../service/records.svelte.ts';
import { fieldMessage } from '../service/refusals.ts';
import type { Route } from '../window/route.svelte.ts';

export type Condition = CallResult<'prices.bands'>['condition'];
/** The best first, as the contract has them. */
export const CONDITIONS: readonly Condition[] = ['unmarked', 'light wear', 'played', 'worn', 'damaged'];
export type NotePatch = CallArgs<'prices.update'>['patch'];
export type SeenQuestion = { archetype: string; price: number; condition: Condition };

/** Price notes, the bands that come of them, and what one that was seen is worth to the open bag's player. */
export class PriceBookState {
  #records: Records;
  #route: Route;
  #formats: () => Formats;
  #bands: Live<'prices.bands'>;
  #notes: Live<'prices.notes'>;
  #open = $state<string | null>(null);
  /** What of the catalogue is looked for. */
  search = $state('');

  constructor(records: Records, route: Route, formats: () => Formats) {
    this.#records = records;
    this.#formats = formats;
    this.#route = route;
    const { client, ticks } = records;
    const here = () => (route.screen === 'prices' ? route.bagId : null);
    this.#bands = new Live({
      client,
      ticks,
      name: 'prices.bands',
      args: () => {
        const bagId = here();
        return bagId === null ? null : { bagId };
      },
      subject: ({ bagId }) => String(bagId),
    });
    this.#notes = new Live({
      client,
      ticks,
      name: 'prices.notes',
      args: () => {
        const [bagId, archetype] = [here(), this.#open];
        return bagId === null || archetype === null ? null : { bagId, archetype };
      },
      subject: ({ bagId, archetype }) => `${String(bagId)} ${archetype}`,
    });
  }

  /** Undefined until they are read. */
  get bands(): readonly BandAnswer[] | undefined {
    return this.#bands.value?.bands;
  }

  get otherCurrencies(): CallResult<'prices.bands'>['otherCurrencies'] {
    return this.#bands.value?.otherCurrencies ?? [];
  }

  /** The condition that bands and walk-away prices speak of. */
  get condition(): Condition {
    return this.#bands.value?.condition ?? 'played';
  }

  get error(): CallError | undefined {
    return this.#bands.error;
  }

  /** The archetype whose notes are open. */
  get open(): string | null {
    return this.#open;
  }

  toggle(archetype: string): void {
    this.#open = this.#open === archetype ? null : archetype;
  }

  /** The archetype's line, with its notes open. */
  show(archetype: string, name: string): void {
    this.search = name;
    this.#open = archetype;
  }

  get notes(): CallResult<'prices.notes'> | undefined {
    return this.#notes.value;
  }

  get notesError(): CallError | undefined {
    return this.#notes.error;
  }

  async add(note: NewNote): Saved {
    const done = await this.#records.edit('prices.add', { note });
    return done.ok ? null : fieldMessage(done.error);
  }

  async update(noteId: number, patch: NotePatch): Saved {
    const done = await this.#records.edit('prices.update', { noteId, patch });
    return done.ok ? null : fieldMessage(done.error);
  }

  remove(noteId: number): Promise<Edited<'prices.remove'>> {
    return this.#records.edit('prices.remove', { noteId });
  }

  /** @throws CallFailed */
  async seenOne(question: SeenQuestion): Promise<SeenOne> {
    const { bagId } = this.#route;
    if (bagId === null) throw new Error('A price is asked about without an open bag: a fault in Loftledger.');
    return this.#records.client.call('prices.seenOne', {
      bagId,
      ...question,
      locale: this.#formats().locale,
    });
  }
}
