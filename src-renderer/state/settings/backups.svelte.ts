import type { BackupLine } from '../../../src-main/contract/calls/program/files.ts';
import type { CallError } from '../../../src-main/contract/gate.ts';
import { Live } from '../service/live.svelte.ts';
import type { Edited, Records } from '../service/records.svelte.ts';

export class BackupsState {
  #records: Records;
  #live: Live<'backups.list'>;

  constructor(records: Records) {
    this.#records = records;
    this.#live = new Live({
      client: records.client,
      ticks: records.ticks,
      name: 'backups.list',
      args: () => ({}),
    });
  }

  /** The newest first; undefined until they are read. */
  get list(): readonly BackupLine[] | undefined {
    return this.#live.value;
  }

  get error(): CallError | undefined {
    return this.#live.error;
  }

  make(): Promise<Edited<'backups.make'>> {
    return this.#records.edit('backups.make', {});
  }

  remove(sequence: number): Promise<Edited<'backups.remove'>> {
    return this.#records.edit('backups.remove', { sequence });
  }

  /** Nothing that the window shows is true any more: it begins anew after this. */
  restore(sequence: number): Promise<Edited<'backups.restore'>> {
    return this.#records.edit('backups.restore', { sequence }, true);
  }

  saveAll(): Promise<Edited<'files.exportDatabase'>> {
    return this.#records.edit('files.exportDatabase', {}, true);
  }
}
