import { dirname } from 'node:path';
import { backupFolderOf } from './files/backup.ts';
import { checkDatabase, lookingAt, type CheckLevel } from './schema/check.ts';
import { finishErasure } from './erase.ts';
import { guarded, StorageError } from './errors.ts';
import {
  exists,
  makePrivateFile,
  makePrivateFolder,
  publish,
  removeDatabase,
  sizeOf,
} from './files/files.ts';
import { removeLeftovers } from './files/leftovers.ts';
import { withSetupLock } from './files/lock.ts';
import { migrate, type MigrateReport } from './schema/migrate.ts';
import { loadMigrations, type Migration } from './migration-files.ts';
import { noteOpen } from './files/open-files.ts';
import { schemaProblems } from './schema/schema.ts';
import { connect, pragmaNumber, type Db } from './sqlite.ts';
import { installUndo } from './undo/undo-triggers.ts';
import { verifyHeader } from './files/verify.ts';

export type OpenOptions = {
  /** A path, or ':memory:'. */
  file: string;
  /** ISO time, for the name of a backup. */
  now: string;
  readonly?: boolean;
  /** auto (the default): before opening returns, but for a file over LARGE_BYTES later, by the caller. */
  check?: 'auto' | CheckLevel;
  migrations?: readonly Migration[];
  backupDir?: string;
  busyTimeoutMs?: number;
};

export type Opened = {
  db: Db;
  file: string;
  created: boolean;
  /** The schema version it had, where it was upgraded. */
  upgradedFrom: number | null;
  /** The backup made before the upgrade. */
  backup: string | null;
  /** A log lay beside the file: its last user died, or another process has it open. */
  unclean: boolean;
  /** A check that was left for after first paint: call checkDatabase(db, file, pendingCheck). */
  pendingCheck: CheckLevel | null;
};

/** Above this a whole check takes long enough to be seen, so it waits for the first paint. */
export const LARGE_BYTES = 64 * 1024 * 1024;

const MEMORY = ':memory:';

/**
 * Opens the database: creates it where there is none, upgrades an older one after a backup, and refuses,
 * unchanged, what it must not touch. Processes that open the same file at once take turns.
 * @throws StorageError 'missing' (reading only), 'empty-file', 'foreign-file', 'newer-database',
 * 'older-database' (reading only), 'damaged', 'orphan-wal', 'read-only', 'disk-full', 'busy'.
 */
export function openDatabase(options: OpenOptions): Opened {
  const { file } = options;
  const migrations = options.migrations ?? loadMigrations();
  return guarded(file, 'Opening', () => {
    if (file === MEMORY) return openMemory(options, migrations);
    if (options.readonly === true) return openToRead(options, migrations);
    makePrivateFolder(dirname(file));
    return withSetupLock(file, () => {
      removeLeftovers(file);
      const created = !exists(file);
      if (created) create(file, migrations, options.now);
      return { ...openToWrite(options, migrations), created };
    });
  });
}

/** Closes it; the last to leave folds the log into the file. Closing twice is fine. */
export function closeDatabase(db: Db): void {
  db.close();
}

function openMemory(options: OpenOptions, migrations: readonly Migration[]): Opened {
  const db = connect(MEMORY);
  migrate(db, { file: MEMORY, migrations, now: options.now, backupDir: null });
  installUndo(db);
  const none = { upgradedFrom: null, backup: null, unclean: false, pendingCheck: null };
  return { db, file: MEMORY, created: true, ...none };
}

/** Builds the new database under another name, so that nobody ever finds half of one. */
function create(file: string, migrations: readonly Migration[], now: string): void {
  if (exists(`${file}-wal`) && sizeOf(`${file}-wal`) !== 0) {
    const message = `${file} is gone, but the log of its last edits, ${file}-wal, is still there`;
    throw new StorageError(
      'orphan-wal',
      message,
      'Put the file back beside its log, or restore a backup.',
      file,
    );
  }
  const part = `${file}.new`;
  removeDatabase(part);
  try {
    const db = connect(part);
    try {
      makePrivateFile(part);
      migrate(db, { file: part, migrations, now, backupDir: null });
      db.pragma('journal_mode = WAL');
    } finally {
      db.close();
    }
    publish(part, file);
  } finally {
    removeDatabase(part);
  }
}

function openToWrite(options: OpenOptions, migrations: readonly Migration[]): Opened {
  const { file, now } = options;
  const { bytes, walLeft } = verifyHeader(file, migrations.length);
  return opening(options, (db) => {
    lookingAt(file, () => refuseWrongSchema(db, file, migrations));
    const pendingCheck = checkNow(db, options, bytes, walLeft);
    turnOnLog(db, file);
    const backupDir = options.backupDir ?? backupFolderOf(file);
    const report: MigrateReport = migrate(db, { file, migrations, now, backupDir });
    installUndo(db);
    finishErasure(db);
    const upgradedFrom = report.to > report.from ? report.from : null;
    return { created: false, upgradedFrom, backup: report.backup, unclean: walLeft, pendingCheck };
  });
}

function openToRead(options: OpenOptions, migrations: readonly Migration[]): Opened {
  const { file } = options;
  const { version, bytes, walLeft } = verifyHeader(file, migrations.length);
  if (version < migrations.length) {
    const message = `${file} has schema ${version}, and reading it takes an upgrade to ${migrations.length}`;
    throw new StorageError(
      'older-database',
      message,
      'Open it once for writing; a backup is made first.',
      file,
    );
  }
  return opening(options, (db) => {
    lookingAt(file, () => refuseWrongSchema(db, file, migrations));
    const pendingCheck = checkNow(db, options, bytes, walLeft);
    return { created: false, upgradedFrom: null, backup: null, unclean: walLeft, pendingCheck };
  });
}

function opening(options: OpenOptions, fn: (db: Db) => Omit<Opened, 'db' | 'file'>): Opened {
  const { file, readonly = false, busyTimeoutMs } = options;
  const db = connect(file, {
    readonly,
    mustExist: true,
    ...(busyTimeoutMs === undefined ? {} : { busyTimeoutMs }),
  });
  try {
    const rest = fn(db);
    noteOpen(file, db);
    return { db, file, ...rest };
  } catch (error) {
    db.close();
    throw error;
  }
}

function turnOnLog(db: Db, file: string): void {
  const mode = db.pragma('journal_mode = WAL', { simple: true });
  if (mode !== 'wal') {
    const message = `${file} cannot keep a write-ahead log (mode ${String(mode)})`;
    throw new StorageError(
      'read-only',
      message,
      'Choose a data folder on a local disk that can be written.',
      file,
    );
  }
  // The driver's default for WAL may lose the last commits in a power cut; a person's edits must not go.
  db.pragma('synchronous = FULL');
}

function refuseWrongSchema(db: Db, file: string, migrations: readonly Migration[]): void {
  const version = pragmaNumber(db, 'user_version');
  const problems = schemaProblems(db, migrations, version);
  if (problems.length === 0) return;
  const message = `${file} says it has schema ${version}, but ${problems.slice(0, 3).join('; ')}`;
  throw new StorageError('damaged', message, 'Restore a backup.', file);
}

/** Checks now what the options ask for, and returns what is left for later. */
function checkNow(db: Db, options: OpenOptions, bytes: number, unclean: boolean): CheckLevel | null {
  const { file, check = 'auto' } = options;
  const level = check === 'auto' ? (unclean ? 'full' : 'quick') : check;
  if (check === 'auto' && bytes > LARGE_BYTES) return level;
  checkDatabase(db, file, level);
  return null;
}
