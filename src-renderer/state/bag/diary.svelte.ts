import { SvelteMap } from 'svelte/reactivity';
import { DIARY_LETTERS } from '../../../src-main/contract/calls/records/diary.ts';
import type { CallResult } from '../../../src-main/contract/calls/index.ts';
import type { CallError } from '../../../src-main/contract/gate.ts';
import { isoToday } from '../format/formats.ts';
import type { Saved } from '../service/edits.ts';
import { Live } from '../service/live.svelte.ts';
import type { Edited, Records } from '../service/records.svelte.ts';
import { fieldMessage } from '../service/refusals.ts';
import type { Route } from '../window/route.svelte.ts';
import type { BagState } from './bag.svelte.ts';

export type NewNote = { day: string; text: string };

/** Notes that are shown before the older ones are asked for, and all that are read then. */
const FIRST_SHOWN = 20;
const MOST_SHOWN = 5000;

/** The open player's diary. What was typed and is not kept yet outlives a turn of the page. */
export class DiaryState {
  static readonly mostLetters = DIARY_LETTERS;
  #records: Records;
  #bag: BagState;
  #live: Live<'diary.list'>;
  #drafts = new SvelteMap<number, NewNote>();
  /** Whose diary is shown whole. */
  #whole = $state<number>();
  /** Whose diary is unfolded: of another player it is not, as they may sit beside the coach. */
  #unfolded = $state<number>();

  constructor(records: Records, route: Route, bag: BagState) {
    this.#records = records;
    this.#bag = bag;
    this.#live = new Live({
      client: records.client,
      ticks: records.ticks,
      name: 'diary.list',
      args: () => {
        const { playerId } = bag;
        if (route.screen !== 'bag' || playerId === undefined) return null;
        return { playerId, most: this.#whole === playerId ? MOST_SHOWN : FIRST_SHOWN };
      },
      subject: ({ playerId }) => String(playerId),
    });
  }

  /** Undefined until it is read. */
  get value(): CallResult<'diary.list'> | undefined {
    return this.#live.value;
  }

  get error(): CallError | undefined {
    return this.#live.error;
  }

  /** What stands in the blank for the next note. */
  get draft(): NewNote {
    const { playerId } = this.#bag;
    return (playerId === undefined ? undefined : this.#drafts.get(playerId)) ?? { day: isoToday(), text: '' };
  }

  write(part: Partial<NewNote>): void {
    const { playerId } = this.#bag;
    if (playerId !== undefined) this.#drafts.set(playerId, { ...this.draft, ...part });
  }

  /** The blank is as at first, with the day of today: another would be taken for the next note unseen. */
  clear(): void {
    const { playerId } = this.#bag;
    if (playerId !== undefined) this.#drafts.delete(playerId);
  }

  /** @param playerId left out: of the player who is open. */
  showAll(playerId = this.#bag.playerId): void {
    this.#whole = playerId;
  }

  /** It is unfolded on the page of the player who is open. */
  get isOpen(): boolean {
    return this.#unfolded !== undefined && this.#unfolded === this.#bag.playerId;
  }

  /** @param playerId left out: of the player who is open. */
  unfold(playerId = this.#bag.playerId): void {
    this.#unfolded = playerId;
  }

  fold(): void {
    this.#unfolded = undefined;
  }

  /** Keeps what stands in the blank, which is then empty again. @returns its day, or what to say. */
  async keep(): Promise<{ day: string } | { message: string }> {
    const { playerId } = this.#bag;
    const { day, text } = this.draft;
    if (playerId === undefined) return { message: '' };
    // Taken out at once, so that a second key does not keep it twice.
    this.#drafts.delete(playerId);
    const done = await this.#records.edit('diary.add', { playerId, on: day, text });
    if (done.ok) return { day };
    this.#drafts.set(playerId, { day, text });
    return { message: fieldMessage(done.error) };
  }

  async change(entryId: number, patch: { on: string } | { text: string }): Saved {
    const { playerId } = this.#bag;
    if (playerId === undefined) return null;
    const done = await this.#records.edit('diary.change', { playerId, entryId, patch });
    return done.ok ? null : fieldMessage(done.error);
  }

  async strike(entryId: number): Promise<Edited<'diary.strike'> | null> {
    const { playerId } = this.#bag;
    return playerId === undefined ? null : this.#records.edit('diary.strike', { playerId, entryId });
  }
}
