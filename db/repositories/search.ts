import type { Db } from '../sqlite.ts';
import { all, get } from '../statement.ts';

/** A player as the search knows them. */
export type PlayerName = { playerId: number; name: string; archived: boolean };

/** Everybody, the archived too, by name. */
export function playerNames(db: Db): PlayerName[] {
  const sql = `SELECT id AS playerId, name, archived_at IS NOT NULL AS archived
                 FROM player ORDER BY name COLLATE NOCASE, id`;
  return all<{ playerId: number; name: string; archived: number }>(db, sql).map((row) => ({
    ...row,
    archived: row.archived === 1,
  }));
}

/** What clubs are called: label, else id; each once, however they are capitalised. */
export function clubNames(db: Db): string[] {
  const sql = `SELECT min(ifnull(label, key)) AS name FROM club
                GROUP BY ifnull(label, key) COLLATE NOCASE ORDER BY 1`;
  return all<{ name: string }>(db, sql).map(({ name }) => name);
}

export type NamedClub = {
  clubId: string;
  name: string;
  place: 'bag' | 'shelf' | 'sold';
  bagId: number;
  playerId: number;
  player: string;
};

/** Clubs of one name, the newest first. */
export function clubsNamed(db: Db, name: string, most: number): NamedClub[] {
  const sql = `SELECT club.key AS clubId, ifnull(club.label, club.key) AS name, club.place, bag.id AS bagId,
                      player.id AS playerId, player.name AS player
                 FROM club JOIN bag ON bag.id = club.bag_id JOIN player ON player.id = bag.player_id
                WHERE ifnull(club.label, club.key) = @name COLLATE NOCASE
                ORDER BY club.id DESC LIMIT @most`;
  return all<NamedClub>(db, sql, { name, most });
}

/** What has an index of its words. */
export type Written = 'price_note' | 'diary_entry';
export type SaidNote = { id: number; said: string };

/**
 * Notes whose words hold the three-letter pieces that `match` asks for (FTS5: quoted threes, AND, OR), the newest
 * first, with all their words between blanks. Read on as needed: the index gives one at a time.
 */
export function notesSaying(db: Db, written: Written, match: string): IterableIterator<SaidNote> {
  return db
    .prepare<[string], SaidNote>(
      `SELECT said.id, said.said FROM ${written}_index AS found CROSS JOIN ${written}_said AS said ON said.id = found.rowid
        WHERE found.${written}_index MATCH ? ORDER BY found.rowid DESC`,
    )
    .iterate(match);
}

/**
 * A number that changes whenever names of players or clubs may have: of changes here, counted by triggers that go
 * with the connection, and of commits by others.
 */
export function namesVersion(db: Db): string {
  installCounter(db);
  const here = get<{ n: number }>(db, 'SELECT n FROM names_changed')?.n ?? 0;
  return `${String(here)}/${String(db.pragma('data_version', { simple: true }))}`;
}

function installCounter(db: Db): void {
  const sql = `SELECT 1 AS there FROM sqlite_temp_schema WHERE name = 'names_changed'`;
  if (get(db, sql) !== undefined) return;
  const count = 'BEGIN UPDATE names_changed SET n = n + 1; END';
  const on = (table: string, event: string, name: string) =>
    `CREATE TEMP TRIGGER names_${table}_${name} AFTER ${event} ON main.${table} ${count};`;
  db.exec(`
    CREATE TEMP TABLE names_changed (n INTEGER NOT NULL) STRICT;
    INSERT INTO names_changed VALUES (0);
    ${on('player', 'INSERT', 'in')} ${on('player', 'DELETE', 'out')}
    ${on('player', 'UPDATE OF name, archived_at', 'change')}
    ${on('club', 'INSERT', 'in')} ${on('club', 'DELETE', 'out')} ${on('club', 'UPDATE OF label, key', 'change')}
  `);
}
