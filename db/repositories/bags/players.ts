import type { PlanStatus } from '../plans.ts';
import type { Columns, Money, Patch } from '../../row.ts';
import { fromRow, toPatchRow, toRow } from '../../row.ts';
import type { Db } from '../../sqlite.ts';
import { all, deleteRow, get, insertRow, missing, updateRow, type Row } from '../../statement.ts';
import type { PlayerName } from '../search.ts';

export type Miss = 'left' | 'right' | 'high' | 'low' | 'fat' | 'thin';

/** What is known of a player. `pain` and `missNote` are health data, as is the diary: see erasePlayer. */
export type PlayerFields = {
  name: string;
  /** Better than scratch is negative. */
  handicap: number;
  targetHandicap?: number;
  driverSpeedMph?: number;
  handed: 'right' | 'left';
  ground: 'soft' | 'firm';
  flighted?: boolean;
  miss?: Miss[];
  missNote?: string;
  pain?: boolean;
  airTemperatureC?: number;
  /** 0 to 1. */
  airHumidity?: number;
  airAltitudeM?: number;
};

/** Times are ISO text. */
export type Player = PlayerFields & {
  id: number;
  createdAt: string;
  lastLookedAt?: string;
  archivedAt?: string;
};

const FIELDS: Columns<PlayerFields> = {
  name: ['name', 'text'],
  handicap: ['handicap', 'real'],
  targetHandicap: ['target_handicap', 'real'],
  driverSpeedMph: ['driver_speed_mph', 'real'],
  handed: ['handed', 'text'],
  ground: ['ground', 'text'],
  flighted: ['flighted', 'flag'],
  miss: ['miss_json', 'json'],
  missNote: ['miss_note', 'text'],
  pain: ['pain', 'flag'],
  airTemperatureC: ['air_temperature_c', 'real'],
  airHumidity: ['air_humidity', 'real'],
  airAltitudeM: ['air_altitude_m', 'real'],
};

const PLAYER: Columns<Player> = {
  ...FIELDS,
  id: ['id', 'int'],
  createdAt: ['created_at', 'text'],
  lastLookedAt: ['last_looked_at', 'text'],
  archivedAt: ['archived_at', 'text'],
};

/** @returns the new player's id. */
export function createPlayer(db: Db, fields: PlayerFields, at: string): number {
  return insertRow(db, 'player', { ...toRow(FIELDS, fields), created_at: at });
}

export function updatePlayer(db: Db, id: number, patch: Patch<PlayerFields>): void {
  updateRow(db, 'player', id, toPatchRow(FIELDS, patch));
}

/** @throws StorageError 'missing'. */
export function readPlayer(db: Db, id: number): Player {
  const row = get(db, 'SELECT * FROM player WHERE id = @id', { id });
  if (row === undefined) throw missing(db, 'player', id);
  return fromRow(PLAYER, row);
}

/** By name; without the archived unless `archived` asks for them alone. */
export function listPlayers(db: Db, options: { archived?: boolean } = {}): Player[] {
  const which = options.archived === true ? 'NOT NULL' : 'NULL';
  const sql = `SELECT * FROM player WHERE archived_at IS ${which} ORDER BY name COLLATE NOCASE, id`;
  return all(db, sql).map((row) => fromRow(PLAYER, row));
}

/** Players who are not archived, those looked at last first, then those who never were, by name. */
export function lookedAtLast(db: Db, most: number): PlayerName[] {
  const sql = `SELECT id AS playerId, name FROM player WHERE archived_at IS NULL
                ORDER BY last_looked_at IS NULL, last_looked_at DESC, name COLLATE NOCASE, id LIMIT @most`;
  return all<{ playerId: number; name: string }>(db, sql, { most }).map((row) => ({
    ...row,
    archived: false,
  }));
}

/** "Last looked at" is no edit: call it outside of any undo step. */
export function touchPlayer(db: Db, id: number, at: string): void {
  updateRow(db, 'player', id, { last_looked_at: at });
}

export function archivePlayer(db: Db, id: number, at: string): void {
  updateRow(db, 'player', id, { archived_at: at });
}

export function unarchivePlayer(db: Db, id: number): void {
  updateRow(db, 'player', id, { archived_at: null });
}

/** Deletes a player with all that hangs on them. Can be undone within a step; erasePlayer cannot. */
export function deletePlayer(db: Db, id: number): void {
  deleteRow(db, 'player', id);
}

/** A line of the roster. Findings and budget are those of the bag of now and its latest plan. */
export type RosterLine = {
  id: number;
  name: string;
  handicap: number;
  lastLookedAt?: string;
  bagId?: number;
  /** Clubs in the bag of now. */
  clubs: number;
  openFindings?: number;
  status?: PlanStatus;
  plannedAt?: string;
  budget?: Money;
  /** Day of the newest diary entry. */
  notedOn?: string;
};

const ROSTER: Columns<RosterLine> = {
  id: ['id', 'int'],
  name: ['name', 'text'],
  handicap: ['handicap', 'real'],
  lastLookedAt: ['last_looked_at', 'text'],
  bagId: ['bag_id', 'int'],
  clubs: ['clubs', 'int'],
  openFindings: ['open_findings', 'int'],
  status: ['status', 'text'],
  plannedAt: ['planned_at', 'text'],
  budget: ['budget', 'money'],
  notedOn: ['noted_on', 'text'],
};

/** All players who are not archived, by name. */
export function roster(db: Db): RosterLine[] {
  const sql = `
    SELECT player.id, player.name, player.handicap, player.last_looked_at, bag.id AS bag_id,
           bag.budget_minor, bag.budget_currency, plan.open_findings, plan.status,
           plan.made_at AS planned_at,
           (SELECT count(*) FROM club WHERE club.bag_id = bag.id AND club.place = 'bag') AS clubs,
           (SELECT max(on_date) FROM diary_entry WHERE diary_entry.player_id = player.id) AS noted_on
      FROM player
      LEFT JOIN bag ON bag.player_id = player.id AND bag.state = 'now'
      LEFT JOIN plan ON plan.bag_id = bag.id AND plan.kind = 'latest'
     WHERE player.archived_at IS NULL
     ORDER BY player.name COLLATE NOCASE, player.id`;
  return all<Row>(db, sql).map((row) => fromRow(ROSTER, row));
}
