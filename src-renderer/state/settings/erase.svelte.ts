import type { CallResult } from '../../../src-main/contract/calls/index.ts';
import { Live } from '../service/live.svelte.ts';
import type { Edited, Records } from '../service/records.svelte.ts';

export type Erasable = { id: number; name: string; isArchived: boolean };

/** Everybody who can be erased: those in use, then the archived. */
export class EraseState {
  #records: Records;
  #current: Live<'players.roster'>;
  #archived: Live<'players.roster'>;

  constructor(records: Records) {
    this.#records = records;
    const { client, ticks } = records;
    const of = (archived: boolean) => () => ({ archived });
    this.#current = new Live({ client, ticks, name: 'players.roster', args: of(false) });
    this.#archived = new Live({ client, ticks, name: 'players.roster', args: of(true) });
  }

  get players(): Erasable[] | undefined {
    const [current, archived] = [this.#current.value, this.#archived.value];
    if (current === undefined || archived === undefined) return undefined;
    const lines = (all: CallResult<'players.roster'>, isArchived: boolean) =>
      all.map(({ id, name }) => ({ id, name, isArchived }));
    return [...lines(current, false), ...lines(archived, true)];
  }

  erase(playerId: number): Promise<Edited<'players.erase'>> {
    return this.#records.edit('players.erase', { playerId });
  }
}
