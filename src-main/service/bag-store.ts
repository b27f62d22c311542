import type { BagFile } from '../contract/bag-file.ts';
import { checkBagFile } from '../contract/read-bag.ts';
import { StorageError } from '../../db/errors.ts';
import { findBag } from '../../db/repositories/bags.ts';
import { listClubs } from '../../db/repositories/clubs.ts';
import { readPlayer } from '../../db/repositories/players.ts';
import { readBag } from '../../db/repositories/whole-bag.ts';
import type { Db } from '../../db/sqlite.ts';
import { bagFileOf } from './bag-rows.ts';

export type LoadedBag = { playerId: number; file: BagFile };

/** A bag as its file would have it. @throws StorageError 'missing' */
export function loadBag(db: Db, bagId: number): LoadedBag {
  const { playerId } = findBag(db, bagId);
  return { playerId, file: bagFileOf(readPlayer(db, playerId), readBag(db, bagId)) };
}

/** The bag after an edit, checked as a file would be: one set of rules and messages. @throws RefusedInput */
export function checkedEdit(db: Db, bagId: number, edit: (file: BagFile) => unknown): BagFile {
  return checkBagFile(edit(loadBag(db, bagId).file));
}

/** The row id of a club of a bag by its file id. @throws StorageError 'missing' */
export function clubRowId(db: Db, bagId: number, clubId: string): number {
  const row = listClubs(db, bagId).find((club) => club.key === clubId);
  if (!row) {
    throw new StorageError(
      'missing',
      `There is no club "${clubId}" in this bag.`,
      'Look at the bag again.',
      db.name,
    );
  }
  return row.id;
}
