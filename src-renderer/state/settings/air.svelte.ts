import type { CallArgs, CallResult } from '../../../src-main/contract/calls/index.ts';
import type { CallError } from '../../../src-main/contract/gate.ts';
import type { Saved } from '../service/edits.ts';
import { Live } from '../service/live.svelte.ts';
import type { Records } from '../service/records.svelte.ts';
import { fieldMessage } from '../service/refusals.ts';

type Air = NonNullable<CallArgs<'air.set'>['air']>;

/** The air of every player, and of the one whose bag is open. */
export class AirState {
  #records: Records;
  #playerId: () => number | undefined;
  #program: Live<'air.read'>;
  #own: Live<'air.read'>;

  constructor(records: Records, playerId: () => number | undefined) {
    this.#records = records;
    this.#playerId = playerId;
    const { client, ticks } = records;
    this.#program = new Live({ client, ticks, name: 'air.read', args: () => ({ playerId: null }) });
    this.#own = new Live({
      client,
      ticks,
      name: 'air.read',
      args: () => {
        const id = playerId();
        return id === undefined ? null : { playerId: id };
      },
      subject: ({ playerId: id }) => String(id),
    });
  }

  get program(): CallResult<'air.read'> | undefined {
    return this.#program.value;
  }

  /** Of the open bag's player. */
  get own(): CallResult<'air.read'> | undefined {
    return this.#own.value;
  }

  get error(): CallError | undefined {
    return this.#program.error ?? this.#own.error;
  }

  setProgram(air: Air | null): Saved {
    return this.#set(null, air);
  }

  setOwn(air: Air | null): Saved {
    const id = this.#playerId();
    return id === undefined ? Promise.resolve(null) : this.#set(id, air);
  }

  async #set(playerId: number | null, air: Air | null): Saved {
    const done = await this.#records.edit('air.set', { playerId, air });
    return done.ok ? null : fieldMessage(done.error);
  }
}
