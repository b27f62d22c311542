import type { Band, Columns, Money, Patch } from '../../row.ts';
import { fromRow, toPatchRow, toRow } from '../../row.ts';
import type { Db } from '../../sqlite.ts';
import { all, deleteRow, get, insertRow, missing, run, updateRow, type Row } from '../../statement.ts';
import { lotIdFor } from './lots.ts';

export type ClubKind = 'driver' | 'fairway' | 'hybrid' | 'iron' | 'wedge' | 'putter';
export type Place = 'bag' | 'shelf' | 'sold';

type Stored = {
  /** The club's id in the bag file, its own within the bag, shelf and sold clubs included. */
  key: string;
  kind: ClubKind;
  label?: string;
  loftDeg?: number;
  loftMeasured?: boolean;
  lieDeg?: number;
  lengthIn?: number;
  carryYd?: number;
  carrySdYd?: number;
  shots?: number;
  totalYd?: number;
  ballSpeedMph?: number;
  launchDeg?: number;
  spinRpm?: number;
  forgiveness?: 1 | 2 | 3 | 4;
  spinTier?: 'low' | 'mid' | 'high';
  flex?: 'L' | 'A' | 'R' | 'S' | 'X';
  yearMade?: number;
  goTo?: boolean;
  sell?: Band;
  /** What it was bought as, and for how much. Dates are YYYY-MM-DD. */
  archetypeId?: string;
  bought?: Money;
  boughtOn?: string;
  sold?: Money;
  soldOn?: string;
};

/** A club. `lotKey` is the key of the set it belongs to. */
export type ClubFields = Stored & { lotKey?: string };
export type Club = ClubFields & { id: number; bagId: number; place: Place };

const STORED: Columns<Stored> = {
  key: ['key', 'text'],
  kind: ['kind', 'text'],
  label: ['label', 'text'],
  loftDeg: ['loft_deg', 'real'],
  loftMeasured: ['loft_measured', 'flag'],
  lieDeg: ['lie_deg', 'real'],
  lengthIn: ['length_in', 'real'],
  carryYd: ['carry_yd', 'real'],
  carrySdYd: ['carry_sd_yd', 'real'],
  shots: ['shots', 'int'],
  totalYd: ['total_yd', 'real'],
  ballSpeedMph: ['ball_speed_mph', 'real'],
  launchDeg: ['launch_deg', 'real'],
  spinRpm: ['spin_rpm', 'real'],
  forgiveness: ['forgiveness', 'int'],
  spinTier: ['spin_tier', 'text'],
  flex: ['flex', 'text'],
  yearMade: ['year_made', 'int'],
  goTo: ['go_to', 'flag'],
  sell: ['sell', 'band'],
  archetypeId: ['archetype_id', 'text'],
  bought: ['bought', 'money'],
  boughtOn: ['bought_on', 'text'],
  sold: ['sold', 'money'],
  soldOn: ['sold_on', 'text'],
};

const CLUB: Columns<Club> = {
  ...STORED,
  lotKey: ['lot_key', 'text'],
  id: ['id', 'int'],
  bagId: ['bag_id', 'int'],
  place: ['place', 'text'],
};

const SELECT = `SELECT club.*, lot.key AS lot_key FROM club LEFT JOIN lot ON lot.id = club.lot_id`;

export type AddClubOptions = { place?: Place; position?: number };

/** Adds a club, by default as the last of the bag; a set that it names and the bag lacks is made. @returns its id. */
export function addClub(db: Db, bagId: number, club: ClubFields, options: AddClubOptions = {}): number {
  return db.transaction(() => {
    const { place = 'bag', position = nextPosition(db, bagId) } = options;
    const lotId = club.lotKey === undefined ? null : lotIdFor(db, bagId, club.lotKey);
    return insertRow(db, 'club', { ...toRow(STORED, club), bag_id: bagId, lot_id: lotId, place, position });
  })();
}

function nextPosition(db: Db, bagId: number): number {
  const sql = 'SELECT ifnull(max(position) + 1, 0) AS next FROM club WHERE bag_id = @bagId';
  return get<{ next: number }>(db, sql, { bagId })?.next ?? 0;
}

/** Changes a club; `lotKey` null takes it out of its set, `place` moves it to the shelf or marks it sold. */
export function updateClub(db: Db, id: number, patch: Patch<ClubFields & { place: Place }>): void {
  db.transaction(() => {
    const row: Row = toPatchRow(STORED, patch);
    if (patch.place !== undefined) row['place'] = patch.place;
    if (patch.lotKey !== undefined) {
      row['lot_id'] = patch.lotKey === null ? null : lotIdFor(db, readClub(db, id).bagId, patch.lotKey);
    }
    updateRow(db, 'club', id, row);
  })();
}

/**
 * Gives a club all that a bag file says of it, and puts it in the bag. What the file has no words for, as when
 * it was bought, stays.
 */
export function overwriteClub(
  db: Db,
  id: number,
  club: ClubFields,
  position: number,
  lotId: number | null,
): void {
  const kept = [
    'archetype_id',
    'bought_minor',
    'bought_currency',
    'bought_on',
    'sold_minor',
    'sold_currency',
    'sold_on',
  ];
  const row = toRow(STORED, club);
  const said = Object.entries(row).filter(([column, value]) => value !== null || !kept.includes(column));
  updateRow(db, 'club', id, { ...Object.fromEntries(said), place: 'bag', position, lot_id: lotId });
}

/** @throws StorageError 'missing'. */
export function readClub(db: Db, id: number): Club {
  const row = get(db, `${SELECT} WHERE club.id = @id`, { id });
  if (row === undefined) throw missing(db, 'club', id);
  return fromRow(CLUB, row);
}

/** The clubs of a bag that are in one place, in their order. */
export function listClubs(db: Db, bagId: number, place: Place = 'bag'): Club[] {
  const sql = `${SELECT} WHERE club.bag_id = @bagId AND club.place = @place ORDER BY club.position, club.id`;
  return all(db, sql, { bagId, place }).map((row) => fromRow(CLUB, row));
}

/** Puts the clubs of a bag in this order. */
export function orderClubs(db: Db, bagId: number, ids: readonly number[]): void {
  db.transaction(() => {
    ids.forEach((id, position) => {
      const sql = 'UPDATE club SET position = @position WHERE id = @id AND bag_id = @bagId';
      if (run(db, sql, { id, bagId, position }).changes === 0) throw missing(db, 'club', id);
    });
  })();
}

/** Deletes a club with its dated carries. Its shots stay in their session. */
export function deleteClub(db: Db, id: number): void {
  deleteRow(db, 'club', id);
}
