import type { ConventionsFile } from '../../../src-main/contract/calls/answers/reckoning.ts';
import type { CallError } from '../../../src-main/contract/gate.ts';
import type { Saved } from '../service/edits.ts';
import { Live } from '../service/live.svelte.ts';
import type { Records } from '../service/records.svelte.ts';
import { fieldMessage, lineMessage } from '../service/refusals.ts';
import { ownValues } from './own-values.ts';

export type GapKey = Exclude<keyof ConventionsFile['limits'][number], 'fromMph'>;
export type WeightKey = keyof ConventionsFile['weights'];

/** Limits and weights as they are, beside the usual ones. Gaps are in yards. */
export class LimitsState {
  #records: Records;
  #live: Live<'limits.read'>;

  constructor(records: Records) {
    this.#records = records;
    this.#live = new Live({
      client: records.client,
      ticks: records.ticks,
      name: 'limits.read',
      args: () => ({}),
    });
  }

  get value(): { now: ConventionsFile; usual: ConventionsFile } | undefined {
    return this.#live.value;
  }

  get error(): CallError | undefined {
    return this.#live.error;
  }

  /** How many values are the user's own. */
  get own(): number {
    return this.value === undefined ? 0 : ownValues(this.value.now, this.value.usual);
  }

  setGap(row: number, key: GapKey, yards: number): Saved {
    const limits = this.value?.now.limits.map((one, i) => (i === row ? { ...one, [key]: yards } : one));
    return this.#set(limits === undefined ? {} : { limits });
  }

  setLongShare(longShare: number): Saved {
    return this.#set({ longShare });
  }

  setTierUpTo(tier: number, handicap: number): Saved {
    const now = this.value?.now.tierUpTo;
    if (now === undefined) return Promise.resolve(null);
    const [one, two, three] = now.map((before, i) => (i === tier ? handicap : before));
    return this.#set({ tierUpTo: [one ?? 0, two ?? 0, three ?? 0] });
  }

  setWeight(key: WeightKey, weight: number): Saved {
    const weights = this.value?.now.weights;
    return this.#set(weights === undefined ? {} : { weights: { ...weights, [key]: weight } });
  }

  async reset(): Saved {
    const done = await this.#records.edit('limits.reset', {});
    return done.ok ? null : lineMessage(done.error);
  }

  async #set(changes: Partial<ConventionsFile>): Saved {
    const done = await this.#records.edit('limits.set', changes);
    return done.ok ? null : fieldMessage(done.error);
  }
}
