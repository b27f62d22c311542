import { readBagFile } from '../../contract/formats/read-bag.ts';
import { exportDatabase } from '../../../db/files/backup.ts';
import { checkImport, importDatabase, type ImportReport } from '../../../db/files/import.ts';
import type { Replaced } from '../../../db/files/replace.ts';
import { roster } from '../../../db/repositories/bags/players.ts';
import type { Db } from '../../../db/sqlite.ts';
import { undoable } from '../../../db/undo/undo.ts';
import { refuseUnknownArchetypes } from '../../worker/answer.ts';
import { addPlayer } from '../bags/add-player.ts';
import { databaseFile } from '../records/backups.ts';
import { loadBag } from '../bags/bag-store.ts';
import { readCatalogue } from '../records/catalogue.ts';
import { stepLabel } from '../records/steps.ts';
import { openStore } from '../records/store.ts';
import { csvText } from './csv.ts';
import {
  exportPriceList,
  importPriceList,
  newNotes,
  readPriceList,
  type PriceOptions,
} from './prices-csv.ts';
import { exportRoster, importRoster, knownPlayers, readRoster, type RosterOptions } from './roster-csv.ts';

/** What the command line imports and exports. An import is one step that the window can take back. */
export type ImportOptions = { at: string; skipBad: boolean; preview: boolean };

/** Runs `use` on the records of a folder, then closes them. @throws StorageError where they cannot be opened */
export function withRecords<T>(folder: string, use: (db: Db) => T): T {
  const { db } = openStore(folder);
  try {
    return use(db);
  } finally {
    db.close();
  }
}

/** A line that says what came, or with `preview` what would. @throws RefusedInput */
export function importBag(db: Db, bytes: Uint8Array, { at, preview }: ImportOptions): string {
  const file = readBagFile(bytes);
  refuseUnknownArchetypes(file, readCatalogue(db));
  const what = `${file.player.name}, ${String(file.clubs.length)} clubs, ${String(file.prices.length)} prices`;
  if (preview) return `Would add: ${what}.`;
  const label = stepLabel('files.importBag', { player: file.player.name });
  const { bagId } = undoable(db, { label, at }, () => addPlayer(db, file, at));
  return `Added: ${what}; bag ${String(bagId)}.`;
}

/** @throws RefusedInput */
export function importPrices(db: Db, bytes: Uint8Array, options: ImportOptions & PriceOptions): string {
  const known = new Set(readCatalogue(db).map(({ id }) => id));
  const list = readPriceList(csvText(bytes, 'price list'), options, known);
  const left = leftOut(list.unknown);
  if (options.preview) {
    const fresh = newNotes(db, list).length;
    return `Would add ${counted(fresh, 'price note')}; ${String(list.notes.length - fresh)} there already, ${counted(list.bad.length, 'row')} that cannot be used.${left}`;
  }
  const step = { label: stepLabel('files.importPrices', {}), at: options.at };
  const { added, same, skipped } = undoable(db, step, () => importPriceList(db, list, options));
  return `Added ${counted(added, 'price note')}; ${String(same)} there already, ${counted(skipped, 'row')} skipped.${left}`;
}

/** @throws RefusedInput */
export function importPlayers(
  db: Db,
  bytes: Uint8Array,
  options: ImportOptions & RosterOptions & { skipKnown: boolean },
): string {
  const list = readRoster(csvText(bytes, 'roster'), options);
  const left = leftOut(list.unknown);
  if (options.preview) {
    const known = knownPlayers(db, list).size;
    return `Would add ${counted(list.players.length - (options.skipKnown ? known : 0), 'player')}; ${String(known)} of that name there already, ${counted(list.bad.length, 'row')} that cannot be used.${left}`;
  }
  const step = { label: stepLabel('files.importRoster', {}), at: options.at };
  const { added, known, skipped } = undoable(db, step, () => importRoster(db, list, options));
  return `Added ${counted(added, 'player')}; ${String(known)} there already, ${counted(skipped, 'row')} skipped.${left}`;
}

/** Replaces the closed records of a folder by those of a `.loftledger` file. @throws StorageError */
export function importRecords(
  folder: string,
  source: string,
  { at, preview }: Pick<ImportOptions, 'at' | 'preview'>,
): ImportReport & Partial<Replaced> {
  if (preview) return checkImport(source);
  const report = importDatabase({ file: databaseFile(folder), source, now: at });
  // The shipped archetypes are brought up to date at opening.
  withRecords(folder, () => undefined);
  return report;
}

/** The bag file with all prices that its plan reckons with. @throws StorageError 'missing' */
export function exportBag(db: Db, bagId: number): string {
  return `${JSON.stringify(loadBag(db, bagId).file, null, 1)}\n`;
}

export const exportPrices = exportPriceList;
export const exportPlayers = exportRoster;
export const exportRecords = exportDatabase;

/** Everybody's bag of now, for whoever asks for one by number. */
export function bagList(db: Db): { bagId: number; name: string; handicap: number; clubs: number }[] {
  return roster(db).flatMap(({ bagId, name, handicap, clubs }) =>
    bagId === undefined ? [] : [{ bagId, name, handicap, clubs }],
  );
}

function counted(count: number, what: string): string {
  return `${String(count)} ${what}${count === 1 ? '' : 's'}`;
}

function leftOut(unknown: readonly string[]): string {
  return unknown.length === 0 ? '' : ` Columns that mean nothing here: ${unknown.join(', ')}.`;
}
