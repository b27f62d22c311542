import type { Band, Columns } from '../../row.ts';
import { fromRow, toPatchRow, toRow } from '../../row.ts';
import type { Db } from '../../sqlite.ts';
import { all, deleteRow, get, insertRow, missing, run, updateRow } from '../../statement.ts';

/** Clubs bought or sold together. `key` is the set's id in the bag file. */
export type LotFields = { key: string; sell?: Band };

/** `listed`: the file's `sets` names it; else a club alone does. */
export type Lot = LotFields & { id: number; listed: boolean };

const FIELDS: Columns<LotFields> = { key: ['key', 'text'], sell: ['sell', 'band'] };
const LOT: Columns<Lot> = { ...FIELDS, id: ['id', 'int'], listed: ['listed', 'flag'] };

/** @returns the new set's id. @throws StorageError 'constraint' when the bag has that key. */
export function addLot(
  db: Db,
  bagId: number,
  lot: LotFields,
  options: { listed?: boolean; position?: number } = {},
): number {
  const { listed = true, position = 0 } = options;
  return insertRow(db, 'lot', { ...toRow(FIELDS, lot), bag_id: bagId, listed: Number(listed), position });
}

/** The id of the bag's set of that key, which is made where it is new. */
export function lotIdFor(db: Db, bagId: number, key: string): number {
  const sql = 'SELECT id FROM lot WHERE bag_id = @bagId AND key = @key';
  return get<{ id: number }>(db, sql, { bagId, key })?.id ?? addLot(db, bagId, { key }, { listed: false });
}

/** Sets what the whole set would sell for; null takes it away. */
export function setLotSell(db: Db, id: number, sell: Band | null): void {
  updateRow(db, 'lot', id, { ...toPatchRow(FIELDS, { sell }), listed: 1 });
}

/** Gives a set all that the file's `sets` say of it. */
export function markLot(db: Db, id: number, lot: LotFields, position: number): void {
  updateRow(db, 'lot', id, { ...toRow(FIELDS, lot), listed: 1, position });
}

/** The sets of a bag in its order. */
export function listLots(db: Db, bagId: number): Lot[] {
  return all(db, 'SELECT * FROM lot WHERE bag_id = @bagId ORDER BY position, id', { bagId }).map((row) =>
    fromRow(LOT, row),
  );
}

/** Deletes a set; its clubs stay, as single clubs. */
export function deleteLot(db: Db, id: number): void {
  db.transaction(() => {
    const lot = get<{ bag_id: number }>(db, 'SELECT bag_id FROM lot WHERE id = @id', { id });
    if (lot === undefined) throw missing(db, 'set', id);
    run(db, 'UPDATE club SET lot_id = NULL WHERE bag_id = @bag_id AND lot_id = @id', { ...lot, id });
    deleteRow(db, 'lot', id);
  })();
}
