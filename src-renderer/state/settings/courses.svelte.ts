import type { CallResult } from '../../../src-main/contract/calls/index.ts';
import type { CourseLine, HoleFile } from '../../../src-main/contract/calls/records/courses.ts';
import type { CallError } from '../../../src-main/contract/gate.ts';
import { CallFailed } from '../service/client.ts';
import type { Saved } from '../service/edits.ts';
import { Live } from '../service/live.svelte.ts';
import type { Records } from '../service/records.svelte.ts';
import { fieldMessage, lineMessage } from '../service/refusals.ts';

/** The named courses, and which of them the open bag's player plays. Lengths are in the bag's unit. */
export class CoursesState {
  #records: Records;
  #bagId: () => number | null;
  #live: Live<'courses.list'>;

  constructor(records: Records, bagId: () => number | null) {
    this.#records = records;
    this.#bagId = bagId;
    this.#live = new Live({
      client: records.client,
      ticks: records.ticks,
      name: 'courses.list',
      args: () => {
        const id = bagId();
        return id === null ? null : { bagId: id };
      },
      subject: ({ bagId: id }) => String(id),
    });
  }

  get value(): CallResult<'courses.list'> | undefined {
    return this.#live.value;
  }

  get error(): CallError | undefined {
    return this.#live.error;
  }

  async pick(id: number | null): Saved {
    const bagId = this.#bagId();
    if (bagId === null) return null;
    const done = await this.#records.edit('courses.pick', { bagId, id });
    return done.ok ? null : lineMessage(done.error);
  }

  /** @returns the new course's id, or what to say. */
  async add(name: string, totalLength: number): Promise<{ id: number } | { message: string }> {
    const bagId = this.#bagId();
    if (bagId === null) return { message: '' };
    try {
      const { holes } = await this.#records.client.call('courses.layOut', { bagId, totalLength });
      const done = await this.#records.edit('courses.save', { bagId, name, holes });
      return done.ok ? done.value : { message: fieldMessage(done.error) };
    } catch (error) {
      if (!(error instanceof CallFailed)) throw error;
      return { message: lineMessage(error.error) };
    }
  }

  async change({ id, name, holes }: CourseLine, changes: { name?: string; holes?: HoleFile[] }): Saved {
    const bagId = this.#bagId();
    if (bagId === null) return null;
    const done = await this.#records.edit('courses.save', { bagId, id, name, holes, ...changes });
    return done.ok ? null : fieldMessage(done.error);
  }

  async remove(id: number): Saved {
    const done = await this.#records.edit('courses.remove', { id });
    return done.ok ? null : lineMessage(done.error);
  }
}
