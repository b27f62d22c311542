import path from 'node:path';
import { RefusedInput } from '../../contract/refusal.ts';
import type { Db } from '../../../db/sqlite.ts';
import { DATABASE_NAME } from './data-folder.ts';
import { openStore } from './store.ts';

/** The open records, which can be closed, replaced as a whole and opened again while the service runs. */
export type Records = {
  /**
   * Ask anew after every wait: another file may have taken its place. @throws StorageError where it could not be opened
   * again then; the next to ask tries once more.
   */
  readonly db: Db;
  /** The database's file; null in memory. */
  readonly file: string | null;
  /**
   * Closes the records, lets `swap` put another file in their place, and opens what is there then; so also when it
   * throws. @throws RefusedInput for records in memory, and what `swap` throws.
   */
  replace<T>(swap: (file: string) => T): T;
  close(): void;
};

export function openRecords(folder: string): Records {
  let { db } = openStore(folder);
  const file = folder === ':memory:' ? null : path.join(folder, DATABASE_NAME);
  let closed = false;
  const opened = (): Db => {
    if (!db.open && !closed) ({ db } = openStore(folder));
    return db;
  };
  return {
    get db() {
      return opened();
    },
    file,
    replace(swap) {
      if (file === null) throw inMemory();
      db.close();
      try {
        return swap(file);
      } finally {
        // What hinders it (a full disk) is told to whoever asks next: the swap has its own end to tell.
        try {
          opened();
        } catch {
          // See above.
        }
      }
    },
    close: () => {
      closed = true;
      db.close();
    },
  };
}

function inMemory(): RefusedInput {
  return new RefusedInput('This cannot be done:', [
    {
      path: 'records',
      value: ':memory:',
      message: 'these records are in memory and have no file',
      remedy: 'Start the program with a data folder.',
    },
  ]);
}

/** The file of the records. @throws RefusedInput for records in memory. */
export function fileOf({ file }: Pick<Records, 'file'>): string {
  if (file === null) throw inMemory();
  return file;
}
