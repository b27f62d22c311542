import type { Columns } from '../../row.ts';
import { fromRow, toRow } from '../../row.ts';
import type { Db } from '../../sqlite.ts';
import { all, deleteRow, get, insertRow } from '../../statement.ts';
import { updateClub } from './clubs.ts';

/** A club's carry on a day. `onDate` is YYYY-MM-DD. */
export type CarryFields = {
  onDate: string;
  source: 'stated' | 'measured';
  carryYd: number;
  carrySdYd?: number;
  shots?: number;
  totalYd?: number;
  importId?: number;
};
export type Carry = CarryFields & { id: number; recordedAt: string };

const FIELDS: Columns<CarryFields> = {
  onDate: ['on_date', 'text'],
  source: ['source', 'text'],
  carryYd: ['carry_yd', 'real'],
  carrySdYd: ['carry_sd_yd', 'real'],
  shots: ['shots', 'int'],
  totalYd: ['total_yd', 'real'],
  importId: ['import_id', 'int'],
};
const CARRY: Columns<Carry> = { ...FIELDS, id: ['id', 'int'], recordedAt: ['recorded_at', 'text'] };

/**
 * Adds to a club's history. The newest day counts (of one day, the entry made last): the club takes its carry,
 * spread, shots and total from it. @returns the entry's id.
 */
export function recordCarry(db: Db, clubId: number, carry: CarryFields, at: string): number {
  return db.transaction(() => {
    const id = insertRow(db, 'club_carry', { ...toRow(FIELDS, carry), club_id: clubId, recorded_at: at });
    takeNewest(db, clubId);
    return id;
  })();
}

/** Deletes an entry; the club goes back to what is then the newest, or keeps what it has when none is left. */
export function deleteCarry(db: Db, id: number): void {
  db.transaction(() => {
    const entry = get<{ club_id: number }>(db, 'SELECT club_id FROM club_carry WHERE id = @id', { id });
    deleteRow(db, 'club_carry', id);
    if (entry !== undefined) takeNewest(db, entry.club_id);
  })();
}

/** A club's history, newest first. */
export function carriesOf(db: Db, clubId: number): Carry[] {
  const sql = 'SELECT * FROM club_carry WHERE club_id = @clubId ORDER BY on_date DESC, id DESC';
  return all(db, sql, { clubId }).map((row) => fromRow(CARRY, row));
}

function takeNewest(db: Db, clubId: number): void {
  const newest = carriesOf(db, clubId)[0];
  if (newest === undefined) return;
  const { carryYd, carrySdYd = null, shots = null, totalYd = null } = newest;
  updateClub(db, clubId, { carryYd, carrySdYd, shots, totalYd });
}
