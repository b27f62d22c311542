import path from 'node:path';
import { loadCatalogue } from '../../../db/catalogue/index.ts';
import { openDatabase, type Opened } from '../../../db/open.ts';
import { seedArchetypes } from '../../../db/repositories/prices/archetypes.ts';
import { DATABASE_NAME } from './data-folder.ts';

/** Opens the records of a data folder (or `:memory:`), brings the shipped archetypes up to date. */
export function openStore(folder: string): Opened {
  const file = folder === ':memory:' ? folder : path.join(folder, DATABASE_NAME);
  const now = new Date().toISOString();
  const opened = openDatabase({ file, now });
  try {
    seedArchetypes(opened.db, loadCatalogue(), now);
    return opened;
  } catch (error) {
    opened.db.close();
    throw error;
  }
}
