import type { Columns, Money, Patch } from '../../row.ts';
import { fromRow, toPatchRow, toRow } from '../../row.ts';
import type { Db } from '../../sqlite.ts';
import { all, deleteRow, get, insertRow, missing, run, updateRow } from '../../statement.ts';
import { dropUnusedCourse } from '../courses.ts';

export type BagState = 'now' | 'planned' | 'archived';

/** A bag without its contents. The units are what its owner reads in; stored are yards, mph, minor units. */
export type BagFields = {
  name?: string;
  state: BagState;
  distanceUnit: 'yd' | 'm';
  speedUnit: 'mph' | 'km/h' | 'm/s';
  /** ISO 4217. Changing it converts nothing: every amount keeps its own. */
  currency: string;
  budget?: Money;
  /** Whether the budget must hold before anything is sold. */
  cashBeforeSales?: boolean;
  changePutter?: boolean;
  courseId?: number;
};
export type Bag = BagFields & { id: number; playerId: number; createdAt: string };

const FIELDS: Columns<BagFields> = {
  name: ['name', 'text'],
  state: ['state', 'text'],
  distanceUnit: ['distance_unit', 'text'],
  speedUnit: ['speed_unit', 'text'],
  currency: ['currency', 'text'],
  budget: ['budget', 'money'],
  cashBeforeSales: ['cash_before_sales', 'flag'],
  changePutter: ['change_putter', 'flag'],
  courseId: ['course_id', 'int'],
};
const BAG: Columns<Bag> = {
  ...FIELDS,
  id: ['id', 'int'],
  playerId: ['player_id', 'int'],
  createdAt: ['created_at', 'text'],
};

/** Adds an empty bag. One of state 'now' takes the place of the one before, which is archived. @returns its id. */
export function createBag(db: Db, playerId: number, fields: BagFields, at: string): number {
  return db.transaction(() => {
    if (fields.state === 'now') archiveCurrent(db, playerId);
    return insertRow(db, 'bag', { ...toRow(FIELDS, fields), player_id: playerId, created_at: at });
  })();
}

/** Changes a bag's own fields; for its state see setBagState. */
export function updateBag(db: Db, id: number, patch: Patch<Omit<BagFields, 'state'>>): void {
  const { state: _state, ...row } = toPatchRow<BagFields>(FIELDS, patch);
  updateRow(db, 'bag', id, row);
}

/** A player has one bag of now: making this one it archives the one before. */
export function setBagState(db: Db, id: number, state: BagState): void {
  db.transaction(() => {
    const bag = findBag(db, id);
    if (bag.state === state) return;
    if (state === 'now') archiveCurrent(db, bag.playerId);
    updateRow(db, 'bag', id, { state });
  })();
}

function archiveCurrent(db: Db, playerId: number): void {
  run(db, `UPDATE bag SET state = 'archived' WHERE player_id = @playerId AND state = 'now'`, { playerId });
}

/** A bag without its contents. @throws StorageError 'missing'. */
export function findBag(db: Db, id: number): Bag {
  const row = get(db, 'SELECT * FROM bag WHERE id = @id', { id });
  if (row === undefined) throw missing(db, 'bag', id);
  return fromRow(BAG, row);
}

/** A player's bags: the one of now, then the planned, then the archived, each newest first. */
export function listBags(db: Db, playerId: number): Bag[] {
  const sql = `SELECT * FROM bag WHERE player_id = @playerId
               ORDER BY CASE state WHEN 'now' THEN 0 WHEN 'planned' THEN 1 ELSE 2 END, id DESC`;
  return all(db, sql, { playerId }).map((row) => fromRow(BAG, row));
}

/** Deletes a bag with all it holds, and its course where that has no name and no other bag. */
export function deleteBag(db: Db, id: number): void {
  db.transaction(() => {
    const { courseId } = findBag(db, id);
    deleteRow(db, 'bag', id);
    if (courseId !== undefined) dropUnusedCourse(db, courseId);
  })();
}
