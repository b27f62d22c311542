import type { CallArgs, CallResult } from '../../../src-main/contract/calls/index.ts';
import type { CallError } from '../../../src-main/contract/gate.ts';
import type { Drawer } from '../window/drawer.svelte.ts';
import type { Saved } from '../service/edits.ts';
import { Live } from '../service/live.svelte.ts';
import type { Records } from '../service/records.svelte.ts';
import { fieldMessage } from '../service/refusals.ts';
import { Ticks } from '../service/ticks.svelte.ts';

/** What the drawer shows beside the theme: how prices are reckoned, and the program itself. Read while it is open. */
export class AssumptionsState {
  #records: Records;
  #prices: Live<'prices.assumptions'>;
  #about: Live<'program.about'>;

  constructor(records: Records, drawer: Drawer) {
    this.#records = records;
    const { client } = records;
    const whileOpen = () => (drawer.isOpen ? {} : null);
    this.#prices = new Live({ client, ticks: records.ticks, name: 'prices.assumptions', args: whileOpen });
    this.#about = new Live({ client, ticks: new Ticks(), name: 'program.about', args: whileOpen });
  }

  get prices(): CallResult<'prices.assumptions'> | undefined {
    return this.#prices.value;
  }

  get about(): CallResult<'program.about'> | undefined {
    return this.#about.value;
  }

  get error(): CallError | undefined {
    return this.#prices.error ?? this.#about.error;
  }

  async setPrices(patch: CallArgs<'prices.setAssumptions'>): Saved {
    const done = await this.#records.edit('prices.setAssumptions', patch);
    return done.ok ? null : fieldMessage(done.error);
  }
}
