import type { Columns } from '../../row.ts';
import { fromRow, toRow } from '../../row.ts';
import type { Db } from '../../sqlite.ts';
import { all, deleteRow, get, insertRow, missing, run, updateRow } from '../../statement.ts';

/** One file of shots. Shots are stored in yards and mph; the units are those of the file. */
export type ShotImportFields = {
  playerId: number;
  fileName?: string;
  /** What finds the column mapping again for the next file of this shape. */
  headerSignature?: string;
  mapping?: Record<string, string>;
  distanceUnit: 'yd' | 'm';
  speedUnit: 'mph' | 'km/h' | 'm/s';
  /** YYYY-MM-DD. */
  sessionOn?: string;
  rowsRead: number;
  rowsSkipped: number;
};
export type ShotImport = ShotImportFields & { id: number; importedAt: string };

export type ShotFields = {
  clubId?: number;
  /** Row in the file; the header is row 1. */
  rowNumber: number;
  clubLabel?: string;
  carryYd?: number;
  totalYd?: number;
  /** Right of the target is positive. */
  sideYd?: number;
  apexYd?: number;
  landingDeg?: number;
  clubSpeedMph?: number;
  ballSpeedMph?: number;
  launchDeg?: number;
  spinRpm?: number;
  attackDeg?: number;
  dynamicLoftDeg?: number;
};
/** `leftOut`: by the user's decision; it does not count. */
export type NewShot = ShotFields & { leftOut?: boolean };
export type Shot = ShotFields & { id: number; importId: number; leftOut: boolean };

const IMPORT_FIELDS: Columns<ShotImportFields> = {
  playerId: ['player_id', 'int'],
  fileName: ['file_name', 'text'],
  headerSignature: ['header_signature', 'text'],
  mapping: ['mapping_json', 'json'],
  distanceUnit: ['distance_unit', 'text'],
  speedUnit: ['speed_unit', 'text'],
  sessionOn: ['session_on', 'text'],
  rowsRead: ['rows_read', 'int'],
  rowsSkipped: ['rows_skipped', 'int'],
};
const IMPORT: Columns<ShotImport> = {
  ...IMPORT_FIELDS,
  id: ['id', 'int'],
  importedAt: ['imported_at', 'text'],
};

const SHOT_FIELDS: Columns<ShotFields> = {
  clubId: ['club_id', 'int'],
  rowNumber: ['row_number', 'int'],
  clubLabel: ['club_label', 'text'],
  carryYd: ['carry_yd', 'real'],
  totalYd: ['total_yd', 'real'],
  sideYd: ['side_yd', 'real'],
  apexYd: ['apex_yd', 'real'],
  landingDeg: ['landing_deg', 'real'],
  clubSpeedMph: ['club_speed_mph', 'real'],
  ballSpeedMph: ['ball_speed_mph', 'real'],
  launchDeg: ['launch_deg', 'real'],
  spinRpm: ['spin_rpm', 'real'],
  attackDeg: ['attack_deg', 'real'],
  dynamicLoftDeg: ['dynamic_loft_deg', 'real'],
};
const SHOT: Columns<Shot> = {
  ...SHOT_FIELDS,
  id: ['id', 'int'],
  importId: ['import_id', 'int'],
  leftOut: ['left_out', 'flag'],
};

/** Stores a file of shots whole, or nothing of it. @returns the import's id. */
export function addShotImport(
  db: Db,
  fields: ShotImportFields,
  shots: readonly NewShot[],
  at: string,
): number {
  return db.transaction(() => {
    const id = insertRow(db, 'shot_import', { ...toRow(IMPORT_FIELDS, fields), imported_at: at });
    for (const { leftOut = false, ...shot } of shots) {
      const row = { ...toRow(SHOT_FIELDS, shot), import_id: id, left_out: Number(leftOut) };
      insertRow(db, 'shot', row);
    }
    return id;
  })();
}

/** @throws StorageError 'missing'. */
export function readShotImport(db: Db, id: number): ShotImport {
  const row = get(db, 'SELECT * FROM shot_import WHERE id = @id', { id });
  if (row === undefined) throw missing(db, 'shot import', id);
  return fromRow(IMPORT, row);
}

/** A player's sessions, newest import first. */
export function listShotImports(db: Db, playerId: number): ShotImport[] {
  const sql = 'SELECT * FROM shot_import WHERE player_id = @playerId ORDER BY imported_at DESC, id DESC';
  return all(db, sql, { playerId }).map((row) => fromRow(IMPORT, row));
}

/** The shots of one import in the order of the file. */
export function shotsOfImport(db: Db, importId: number): Shot[] {
  const sql = 'SELECT * FROM shot WHERE import_id = @importId ORDER BY row_number, id';
  return all(db, sql, { importId }).map((row) => fromRow(SHOT, row));
}

/** All shots of a club, session by session. */
export function shotsOfClub(db: Db, clubId: number): Shot[] {
  const sql = 'SELECT * FROM shot WHERE club_id = @clubId ORDER BY import_id, row_number, id';
  return all(db, sql, { clubId }).map((row) => fromRow(SHOT, row));
}

/** Gives the shots of an import that carry a label to a club, or with null to none. @returns how many. */
export function assignShots(db: Db, importId: number, clubLabel: string, clubId: number | null): number {
  const sql = 'UPDATE shot SET club_id = @clubId WHERE import_id = @importId AND club_label = @clubLabel';
  return run(db, sql, { clubId, importId, clubLabel }).changes;
}

/** Leaves a shot out of the averages, or takes it in again. */
export function leaveOut(db: Db, shotId: number, out: boolean): void {
  updateRow(db, 'shot', shotId, { left_out: Number(out) });
}

/** Deletes an import with its shots. */
export function deleteShotImport(db: Db, id: number): void {
  deleteRow(db, 'shot_import', id);
}
