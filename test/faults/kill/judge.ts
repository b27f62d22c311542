import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { backupFolderOf, listBackups } from '../../../db/files/backup.ts';
import { checkLinks } from '../../../db/schema/check.ts';
import { logicalDump } from '../../../db/schema/dump.ts';
import { checkImport } from '../../../db/files/import.ts';
import { loadMigrations } from '../../../db/migration-files.ts';
import type { Db } from '../../../db/sqlite.ts';
import { history, redo, undo } from '../../../db/undo/undo.ts';
import { verifyFile } from '../../../db/files/verify.ts';
import { DATABASE_NAME } from '../../../src-main/service/records/data-folder.ts';
import { openStore } from '../../../src-main/service/records/store.ts';
import { filesOf, SAVED } from './load.ts';
import { fingerprint, stateOf, stateOfDump, type Line, type State } from './protocol.ts';

/** What is known of a data folder that was killed over and over: its last state, and what was ever whole in it. */
export type Known = {
  /** The state after the last commit that was told; null before the first opening. */
  state: State | null;
  /** Fingerprints of all states that were told: a backup or an export must be one of them. */
  states: Set<string>;
  saves: Set<string>;
};

export const nothingKnown = (): Known => ({ state: null, states: new Set(), saves: new Set() });

export type Verdict = {
  /** Commits that were told since the last kill. */
  commits: number;
  /** Rows compared after reopening. */
  rows: number;
  /** Backups, exports and saved files looked through. */
  files: number;
  /** What was being done; 'opening' before the first word. */
  during: string;
  /** The edit was committed and its word had not come. */
  untold: boolean;
  lost: string[];
  damaged: string[];
  half: string[];
};

/**
 * Opens the records after a kill, as the next start would, and compares all rows with what was told. `known` is
 * brought up to date.
 */
export function judge(folder: string, lines: readonly Line[], known: Known): Verdict {
  const verdict: Verdict = {
    commits: 0,
    rows: 0,
    files: 0,
    during: 'opening',
    untold: false,
    lost: [],
    damaged: [],
    half: [],
  };
  const doing = listen(lines, known, verdict);
  const file = join(folder, DATABASE_NAME);
  if (known.state === null && !existsSync(file)) return verdict;
  try {
    const { db } = openStore(folder);
    try {
      compare(db, doing, known, verdict);
    } finally {
      db.close();
    }
  } catch (error) {
    verdict.damaged.push(
      `${file} cannot be opened: ${error instanceof Error ? error.message : String(error)}`,
    );
  }
  lookThrough(folder, file, known, verdict);
  return verdict;
}

type Doing = Extract<Line, { is: 'doing' }>;

/** Goes through what was told. @returns the edit that was begun and whose end was not told. */
function listen(lines: readonly Line[], known: Known, verdict: Verdict): Doing | null {
  let doing: Doing | null = null;
  for (const line of lines) {
    if (line.is === 'opened') {
      if (known.state !== null && known.state.hash !== line.hash) {
        verdict.lost.push(`opened on ${String(line.rows)} rows that are not those of before`);
      }
      for (const name of line.left) verdict.half.push(`${name} was left lying by a start`);
      verdict.during = 'between two edits';
    }
    if (line.is === 'doing') {
      doing = line;
      verdict.during = line.op;
      if (line.saves !== undefined) known.saves.add(line.saves);
      if (line.back.by === 'after') known.states.add(line.back.hash);
    } else {
      if (line.is === 'done') verdict.commits += 1;
      doing = null;
      if (line.is === 'done') verdict.during = 'between two edits';
      known.state = { hash: line.hash, rows: line.rows };
      known.states.add(line.hash);
    }
  }
  return doing;
}

const stateIn = (db: Db): State => stateOfDump(logicalDump(db));

function compare(db: Db, doing: Doing | null, known: Known, verdict: Verdict): void {
  const check = db.pragma('integrity_check', { simple: true });
  if (check !== 'ok') verdict.damaged.push(`integrity_check: ${String(check)}`);
  checkLinks(db, db.name);
  const found = stateIn(db);
  verdict.rows = found.rows;
  const told = known.state;
  known.state = found;
  known.states.add(found.hash);
  if (told === null || told.hash === found.hash) return;
  // The one edit that was begun may be there whole: then the way back leads to what was told.
  if (doing !== null && wayBack(db, doing) === told.hash) {
    verdict.untold = true;
    known.state = stateIn(db);
    return;
  }
  verdict.lost.push(
    `${String(told.rows)} rows were told, ${String(found.rows)} other rows are there; ${doing?.op ?? 'nothing'} was begun`,
  );

  function wayBack(db: Db, { back }: Doing): string | null {
    switch (back.by) {
      case 'undo':
        return history(db).undo.length === 0 ? null : (undo(db), stateIn(db).hash);
      case 'redo':
        return history(db).redo.length === 0 ? null : (redo(db), stateIn(db).hash);
      case 'after':
        return back.hash === found.hash ? (told?.hash ?? null) : null;
      case 'none':
        return null;
    }
  }
}

/** Whatever passes for a backup, an export or a saved document must be whole. */
function lookThrough(folder: string, file: string, known: Known, verdict: Verdict): void {
  const newest = loadMigrations().length;
  const whole = (name: string, look: () => void) => {
    verdict.files += 1;
    try {
      look();
      if (!known.states.has(stateOf(name).hash)) verdict.half.push(`${name} holds rows that never were`);
    } catch (error) {
      verdict.half.push(`${name}: ${error instanceof Error ? error.message : String(error)}`);
    }
  };
  for (const backup of listBackups(backupFolderOf(file))) {
    whole(backup.file, () => void verifyFile(backup.file, newest));
  }
  // Exports are never changed again, so the newest few of each kill stand for all.
  const exports = filesOf(join(folder, 'exports')).filter((name) => name.endsWith('.loftledger'));
  for (const name of exports.sort().slice(-2)) whole(name, () => void checkImport(name));
  const saved = join(folder, SAVED, 'prices.csv');
  if (existsSync(saved)) {
    verdict.files += 1;
    if (!known.saves.has(fingerprint(readFileSync(saved)))) verdict.half.push(`${saved} was half written`);
  }
}
