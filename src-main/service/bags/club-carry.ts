import {
  carriesOf,
  deleteCarry,
  recordCarry,
  type CarryFields,
} from '../../../db/repositories/bags/carries.ts';
import { findBag } from '../../../db/repositories/bags/bags.ts';
import { readClub, type Club } from '../../../db/repositories/bags/clubs.ts';
import type { Db } from '../../../db/sqlite.ts';

/**
 * Adds a carry to a club's history. What the club had before any history goes into it first, dated by the day its bag
 * came in; a carry typed by hand takes the place of one typed for the same day.
 */
export function recordDated(db: Db, clubId: number, entry: CarryFields, at: string): void {
  const history = carriesOf(db, clubId);
  if (history.length === 0) recordBefore(db, readClub(db, clubId), entry.onDate, at);
  if (entry.importId === undefined) {
    for (const old of history) {
      if (old.onDate === entry.onDate && old.importId === undefined) deleteCarry(db, old.id);
    }
  }
  recordCarry(db, clubId, entry, at);
}

/** A carry typed into the bag counts from today on, also where an entry of a later day is there. */
export function recordTyped(db: Db, clubId: number, typed: Club, today: string, at: string): void {
  const { carryYd } = typed;
  if (carryYd === undefined) return;
  const newest = carriesOf(db, clubId)[0]?.onDate ?? today;
  const onDate = newest > today ? newest : today;
  recordDated(db, clubId, { onDate, ...carryFields({ ...typed, carryYd }) }, at);
}

function recordBefore(db: Db, club: Club, until: string, at: string): void {
  const { carryYd, bagId } = club;
  const onDate = findBag(db, bagId).createdAt.slice(0, 10);
  if (carryYd === undefined || onDate >= until) return;
  recordCarry(db, club.id, { onDate, ...carryFields({ ...club, carryYd }) }, at);
}

function carryFields(club: Club & { carryYd: number }): Omit<CarryFields, 'onDate'> {
  const { carryYd, carrySdYd, shots, totalYd } = club;
  return {
    source: shots === undefined ? 'stated' : 'measured',
    carryYd,
    ...(carrySdYd === undefined ? {} : { carrySdYd }),
    ...(shots === undefined ? {} : { shots }),
    ...(totalYd === undefined ? {} : { totalYd }),
  };
}
