import type { CallResult } from '../../../src-main/contract/calls/index.ts';
import { Live } from '../service/live.svelte.ts';
import type { Edited, Records } from '../service/records.svelte.ts';
import type { WaitingFile } from './intake.svelte.ts';

/** Whole records before they take the place of those that are here. */
export class DatabaseImport {
  #records: Records;
  #live: Live<'files.checkDatabase'>;
  #upload: string;
  /** The user has read what will be gone from here. */
  isAgreed = $state(false);

  constructor(records: Records, { upload }: WaitingFile) {
    this.#records = records;
    this.#upload = upload;
    this.#live = new Live({
      client: records.client,
      ticks: records.ticks,
      name: 'files.checkDatabase',
      args: () => ({ upload }),
    });
  }

  get report(): CallResult<'files.checkDatabase'> | undefined {
    return this.#live.value;
  }

  get error() {
    return this.#live.error;
  }

  run(): Promise<Edited<'files.importDatabase'>> {
    // Quiet: nothing of what is in sight is there any more, and the window begins anew.
    return this.#records.edit('files.importDatabase', { upload: this.#upload }, true);
  }
}
