import type { BagFile } from '../../contract/formats/bag-file.ts';
import { checkBagFile } from '../../contract/formats/read-bag.ts';
import { StorageError } from '../../../db/errors.ts';
import { findBag } from '../../../db/repositories/bags/bags.ts';
import { listClubs, type Club, type Place } from '../../../db/repositories/bags/clubs.ts';
import { readPlayer } from '../../../db/repositories/bags/players.ts';
import { readBag } from '../../../db/repositories/bags/whole-bag.ts';
import type { Db } from '../../../db/sqlite.ts';
import { bagFileOf } from './bag-rows.ts';
import { filePrices, notedBands, type BandOptions } from '../prices/price-bands.ts';

export type LoadedBag = { playerId: number; file: BagFile };

/**
 * A bag as its file would have it, with every price that a plan reckons with: its own, and the bands of everybody's
 * notes in its currency. @throws StorageError 'missing'
 */
export function loadBag(db: Db, bagId: number, options: Pick<BandOptions, 'shared'> = {}): LoadedBag {
  return load(db, bagId, options);
}

/** A bag with its own prices alone: what an edit changes and a copy takes along. @throws StorageError 'missing' */
export function loadOwnBag(db: Db, bagId: number): LoadedBag {
  return load(db, bagId, { ownOnly: true });
}

function load(db: Db, bagId: number, options: BandOptions): LoadedBag {
  const { playerId, currency } = findBag(db, bagId);
  const bag = readBag(db, bagId);
  const prices = filePrices(notedBands(db, bagId, currency, options), currency);
  const file: BagFile = { ...bagFileOf(readPlayer(db, playerId), { ...bag, prices: [] }), prices };
  // A set whose clubs are all on the shelf or sold is none of the bag's.
  const held = file.sets?.filter((set) => file.clubs.some((club) => club.set === set.id)) ?? [];
  if (held.length > 0) file.sets = held;
  else delete file.sets;
  return { playerId, file };
}

/** The bag after an edit, checked as a file would be: one set of rules and messages. @throws RefusedInput */
export function checkedEdit(db: Db, bagId: number, edit: (file: BagFile) => unknown): BagFile {
  return checkBagFile(edit(loadOwnBag(db, bagId).file));
}

/** The row id of a club of a bag by its file id. @throws StorageError 'missing' */
export function clubRowId(db: Db, bagId: number, clubId: string): number {
  return clubOf(db, bagId, clubId, ['bag']).id;
}

/** A club of a bag by its file id, wherever it is now. @throws StorageError 'missing' */
export function clubOf(
  db: Db,
  bagId: number,
  clubId: string,
  places: readonly Place[] = ['bag', 'shelf', 'sold'],
): Club {
  for (const place of places) {
    const row = listClubs(db, bagId, place).find((club) => club.key === clubId);
    if (row) return row;
  }
  throw new StorageError(
    'missing',
    `There is no club "${clubId}" in this bag.`,
    'Look at the bag again.',
    db.name,
  );
}
