import type { CallResult } from '../../../src-main/contract/calls/index.ts';
import type { CostLineFile } from '../../../src-main/contract/calls/money/costs.ts';
import type { CallError } from '../../../src-main/contract/gate.ts';
import type { Saved } from '../service/edits.ts';
import { COST_KINDS, ONCE, type CostKind } from './cost-kinds.ts';
import { Live } from '../service/live.svelte.ts';
import type { Records } from '../service/records.svelte.ts';
import { fieldMessage, lineMessage } from '../service/refusals.ts';

export type CostLine = CallResult<'costs.list'>[number];

/** The cost lines of one bag, or with null those that new bags begin with. */
export class CostLinesState {
  #records: Records;
  #bagId: () => number | null | undefined;
  #live: Live<'costs.list'>;

  /** @param bagId undefined: there is nothing to list. */
  constructor(records: Records, bagId: () => number | null | undefined) {
    this.#records = records;
    this.#bagId = bagId;
    this.#live = new Live({
      client: records.client,
      ticks: records.ticks,
      name: 'costs.list',
      args: () => {
        const id = bagId();
        return id === undefined ? null : { bagId: id };
      },
      subject: ({ bagId: id }) => String(id),
    });
  }

  get lines(): readonly CostLine[] | undefined {
    return this.#live.value;
  }

  get error(): CallError | undefined {
    return this.#live.error;
  }

  /** Kinds that can be added. */
  get free(): CostKind[] {
    return COST_KINDS.filter(
      (kind) => !ONCE.includes(kind) || !this.lines?.some((line) => line.kind === kind),
    );
  }

  async save(line: CostLineFile, id?: number): Saved {
    const bagId = this.#bagId();
    if (bagId === undefined) return null;
    const done = await this.#records.edit('costs.save', { bagId, line, ...(id === undefined ? {} : { id }) });
    return done.ok ? null : fieldMessage(done.error);
  }

  change({ id, ...line }: CostLine, changes: Partial<CostLineFile>): Saved {
    return this.save({ ...line, ...changes }, id);
  }

  async remove(id: number): Saved {
    const bagId = this.#bagId();
    if (bagId === undefined) return null;
    const done = await this.#records.edit('costs.remove', { bagId, id });
    return done.ok ? null : lineMessage(done.error);
  }
}
