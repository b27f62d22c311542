import type { CallArgs, CallResult } from '../../../src-main/contract/calls/index.ts';
import type { CallError } from '../../../src-main/contract/gate.ts';
import type { Saved } from '../service/edits.ts';
import { Live } from '../service/live.svelte.ts';
import type { Edited, Records } from '../service/records.svelte.ts';
import { fieldMessage } from '../service/refusals.ts';

type Club = { bagId: number; clubId: string };
export type DatedCarry = Omit<CallArgs<'clubs.recordCarry'>, keyof Club>;

/** A club's dated carries and their trend, read while its details are open. */
export class CarryHistory {
  #records: Records;
  #club: () => Club | null;
  #live: Live<'clubs.history'>;

  constructor(records: Records, club: () => Club | null) {
    this.#records = records;
    this.#club = club;
    this.#live = new Live({
      client: records.client,
      ticks: records.ticks,
      name: 'clubs.history',
      args: club,
      subject: ({ bagId, clubId }) => `${String(bagId)} ${clubId}`,
    });
  }

  /** Undefined until it is read. */
  get value(): CallResult<'clubs.history'> | undefined {
    return this.#live.value;
  }

  get error(): CallError | undefined {
    return this.#live.error;
  }

  async record(carry: DatedCarry): Saved {
    const club = this.#club();
    if (club === null) return null;
    const done = await this.#records.edit('clubs.recordCarry', { ...club, ...carry });
    return done.ok ? null : fieldMessage(done.error);
  }

  async strike(carryId: number): Promise<Edited<'clubs.removeCarry'> | null> {
    const club = this.#club();
    return club === null ? null : this.#records.edit('clubs.removeCarry', { ...club, carryId });
  }
}
