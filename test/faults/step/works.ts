import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { backupFolderOf, exportDatabase, listBackups, makeBackup } from '../../../db/files/backup.ts';
import { erasePlayer } from '../../../db/erase.ts';
import { importDatabase } from '../../../db/files/import.ts';
import { applyMigrations } from '../../../db/schema/migrate.ts';
import { loadMigrations } from '../../../db/migration-files.ts';
import { openDatabase } from '../../../db/open.ts';
import { createPlayer } from '../../../db/repositories/bags/players.ts';
import { restoreBackup } from '../../../db/files/restore.ts';
import { connect, type Db } from '../../../db/sqlite.ts';
import { undo, undoable } from '../../../db/undo/undo.ts';
import { readBagFile } from '../../../src-main/contract/formats/read-bag.ts';
import { addPlayer } from '../../../src-main/service/bags/add-player.ts';
import { saveWhole } from '../../../src-main/service/handover/save.ts';
import { openStore } from '../../../src-main/service/records/store.ts';
import { bagFile } from '../../support/bags.ts';

/** A piece of work that is killed before each of its steps: what lies there before, and the work. */
export type Work = {
  name: string;
  prepare(folder: string): void;
  /** @returns what is to be stepped through; all before it (opening) is not. */
  begin(folder: string): () => void;
  /** What else must hold after the next opening. @returns what does not. */
  after?(folder: string): string | null;
};

export const FILE = 'loftledger.db';
export const SAVED = 'plan.md';
export const EXPORT = 'out.loftledger';
const NOW = '2026-11-26T04:20:00.000Z';
const LATER = '2026-11-27T05:30:00.000Z';
/** The oldest schema with bags and notes: the furthest way up. */
const OLD_SCHEMA = 5;

function addPlayers(db: Db, count: number): void {
  for (let n = 0; n < count; n += 1) {
    const player = { name: `Invented ${String(n)}`, missNote: 'n'.repeat(900) };
    const file = readBagFile(JSON.stringify(bagFile({}, player)));
    undoable(db, { label: `player ${String(n)}`, at: NOW }, () => addPlayer(db, file, NOW));
  }
}

function records(folder: string, players = 6): void {
  const { db } = openStore(folder);
  addPlayers(db, players);
  db.close();
}

/** Other records than those of the folder, as a backup or an export would hold them. */
function withOthers(folder: string): void {
  records(folder, 2);
  const { db } = openStore(folder);
  makeBackup(db, { dir: backupFolderOf(join(folder, FILE)), now: NOW, reason: 'by-hand' });
  exportDatabase(db, join(folder, EXPORT));
  addPlayers(db, 3);
  db.close();
}

/** Opens the records; the work goes on with them. */
function onRecords(work: (db: Db, folder: string) => void): Work['begin'] {
  return (folder) => {
    const { db } = openStore(folder);
    return () => {
      work(db, folder);
      db.close();
    };
  };
}

export const WORKS: readonly Work[] = [
  {
    name: 'the first opening',
    prepare: () => undefined,
    begin: (folder) => () => void openStore(folder).db.close(),
  },
  {
    name: 'an upgrade',
    prepare(folder) {
      mkdirSync(folder, { recursive: true });
      const db = connect(join(folder, FILE));
      db.transaction(() => {
        applyMigrations(db, loadMigrations(), OLD_SCHEMA);
      })();
      const player = { name: 'Invented', handicap: 9, handed: 'left', ground: 'firm' } as const;
      for (let n = 0; n < 5; n += 1) createPlayer(db, player, NOW);
      db.close();
    },
    begin: (folder) => () => {
      openDatabase({ file: join(folder, FILE), now: LATER }).db.close();
    },
  },
  {
    name: 'an edit',
    prepare: records,
    begin: onRecords((db) => {
      addPlayers(db, 1);
    }),
  },
  { name: 'an undo', prepare: records, begin: onRecords((db) => void undo(db)) },
  {
    name: 'a backup',
    prepare: withOthers,
    begin: onRecords((db, folder) => {
      makeBackup(db, { dir: backupFolderOf(join(folder, FILE)), now: LATER, reason: 'by-hand' });
    }),
  },
  {
    name: 'an export over another',
    prepare: withOthers,
    begin: onRecords((db, folder) => void exportDatabase(db, join(folder, EXPORT))),
  },
  {
    name: 'a restore',
    prepare: withOthers,
    begin: (folder) => () => {
      const file = join(folder, FILE);
      const [backup] = listBackups(backupFolderOf(file));
      if (backup === undefined) throw new Error('there is no backup');
      restoreBackup({ file, backup: backup.file, now: LATER });
      openStore(folder).db.close();
    },
  },
  {
    name: 'an import of whole records',
    prepare: withOthers,
    begin: (folder) => () => {
      importDatabase({ file: join(folder, FILE), source: join(folder, EXPORT), now: LATER });
      openStore(folder).db.close();
    },
  },
  {
    name: 'an erasure',
    prepare: records,
    begin: onRecords((db) => void erasePlayer(db, 2)),
    after(folder) {
      const { db } = openStore(folder);
      const erased = db.prepare('SELECT 1 FROM player WHERE id = 2').get() === undefined;
      db.close();
      const isThere = readFileSync(join(folder, FILE)).includes('Invented 1');
      return erased && isThere ? 'an erased player’s name is still in the file' : null;
    },
  },
  {
    name: 'a document over another',
    prepare(folder) {
      mkdirSync(folder, { recursive: true });
      writeFileSync(join(folder, SAVED), 'the first document\n'.repeat(2000));
    },
    begin: (folder) => () => {
      saveWhole(join(folder, SAVED), 'the second document\n'.repeat(3000));
    },
  },
];

/** A work that is not safe, to see that it is found out: half a document lies under the document's name for a while. */
export const CARELESS: Work = {
  name: 'a careless document over another',
  prepare(folder) {
    mkdirSync(folder, { recursive: true });
    writeFileSync(join(folder, SAVED), 'the first document\n'.repeat(2000));
  },
  begin: (folder) => () => {
    writeFileSync(join(folder, SAVED), 'the second document\n'.repeat(1000));
    writeFileSync(join(folder, SAVED), 'the second document\n'.repeat(3000));
  },
};

/** The saved document, whole or not; null where there is none. */
export function savedDocument(folder: string): string | null {
  const file = join(folder, SAVED);
  return existsSync(file) ? readFileSync(file, 'utf8') : null;
}
