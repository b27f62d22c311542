import { StorageError } from '../../db/errors.ts';
import { defaultDataFolder } from '../service/records/data-folder.ts';
import { openStore } from '../service/records/store.ts';
import { userPath } from './files.ts';

type Store = ReturnType<typeof openStore>;

/**
 * Runs `use` on the records, then closes them. Where the usual data folder cannot be written and none was asked for,
 * the shipped catalogue serves from memory, and standard error says so.
 */
export function withStore<T>(folder: string | undefined, use: (db: Store['db']) => T): T {
  const { db } = open(folder);
  try {
    return use(db);
  } finally {
    db.close();
  }
}

function open(folder: string | undefined): Store {
  if (folder !== undefined) return openStore(userPath(folder));
  try {
    return openStore(defaultDataFolder());
  } catch (error) {
    if (!(error instanceof StorageError) || error.code !== 'read-only') throw error;
    process.stderr.write(
      `loftledger: ${error.message} Using the shipped catalogue, without your own records.\n`,
    );
    return openStore(':memory:');
  }
}
