import { SqliteError } from './sqlite.ts';

/** What went wrong, for code that must tell the cases apart. */
export type StorageCode =
  | 'missing' // no such file, or no such row
  | 'empty-file' // a file of zero bytes
  | 'foreign-file' // not a database, or another program's
  | 'newer-database' // written by a newer version of this program
  | 'older-database' // wants an upgrade, but is opened for reading only
  | 'damaged' // the checks of SQLite found errors
  | 'orphan-wal' // a write-ahead log whose database is gone
  | 'read-only' // the folder or file cannot be written
  | 'disk-full'
  | 'busy' // locked by another process
  | 'in-use' // another process has it open
  | 'bad-rows' // an import breaks a rule of the tables
  | 'bad-value' // a value that no column takes, as NaN
  | 'constraint' // a rule of a table refused the row
  | 'undo-conflict' // a row is not as the undo log left it
  | 'not-empty' // a target that must be fresh holds rows
  | 'io'
  | 'bug'; // ours

/** The one error that storage throws: what, why, what to do, and about which file. */
export class StorageError extends Error {
  readonly code: StorageCode;
  readonly remedy: string;
  readonly file: string;

  constructor(code: StorageCode, message: string, remedy: string, file: string, cause?: unknown) {
    super(message, cause === undefined ? undefined : { cause });
    this.name = 'StorageError';
    this.code = code;
    this.remedy = remedy;
    this.file = file;
  }
}

const REMEDY = {
  space: 'Free some space and try again; nothing was changed.',
  wait: 'Close the other program, or wait a moment, and try again.',
  allow: 'Allow access to the file and its folder, or choose another data folder.',
  folder: 'Choose another data folder.',
  path: 'Check the path.',
  file: 'Choose another file, or move this one away.',
  restore: 'Restore a backup; the damaged file is kept beside it.',
  value: 'Correct the value; nothing was changed.',
  disk: 'Check the disk and the connection to it, then try again.',
} as const;

// First match wins; the first word is a prefix of SQLite's extended codes or of Node's.
const KNOWN: readonly (readonly [prefix: string, StorageCode, text: string, remedy: keyof typeof REMEDY])[] =
  [
    ['SQLITE_FULL', 'disk-full', 'the disk is full', 'space'],
    // The file that connections share beside the log could not grow: by SQLite's list of codes, for want of space.
    ['SQLITE_IOERR_SHMSIZE', 'disk-full', 'the disk is full', 'space'],
    ['ENOSPC', 'disk-full', 'the disk is full', 'space'],
    ['EDQUOT', 'disk-full', 'the disk quota is used up', 'space'],
    ['SQLITE_BUSY', 'busy', 'another program is writing to it', 'wait'],
    ['SQLITE_LOCKED', 'busy', 'it is locked', 'wait'],
    ['SQLITE_READONLY', 'read-only', 'it cannot be written', 'allow'],
    ['SQLITE_CANTOPEN', 'read-only', 'it cannot be opened', 'allow'],
    ['SQLITE_PERM', 'read-only', 'access is denied', 'allow'],
    ['EACCES', 'read-only', 'access is denied', 'allow'],
    ['EPERM', 'read-only', 'access is denied', 'allow'],
    ['EROFS', 'read-only', 'the disk is read-only', 'folder'],
    ['ENOTDIR', 'read-only', 'a part of its path is a file, not a folder', 'folder'],
    ['EEXIST', 'read-only', 'a file stands where a folder is wanted', 'folder'],
    ['ENOENT', 'missing', 'it does not exist', 'path'],
    ['EISDIR', 'foreign-file', 'it is a folder', 'file'],
    ['SQLITE_CORRUPT', 'damaged', 'the file is damaged', 'restore'],
    ['SQLITE_NOTADB', 'foreign-file', 'it is not a database', 'file'],
    ['SQLITE_CONSTRAINT', 'constraint', 'a rule of the table refuses it', 'value'],
    ['SQLITE_IOERR', 'io', 'the disk reported an error', 'disk'],
    ['SQLITE_TOOBIG', 'bad-value', 'a value is too long to store', 'value'],
    ['SQLITE_NOMEM', 'io', 'memory has run out', 'space'],
    ['EIO', 'io', 'the disk reported an error', 'disk'],
  ];

/** The code of a SQLite or Node error, '' for any other. */
export function codeOf(error: unknown): string {
  if (error instanceof SqliteError) return error.code;
  if (error instanceof Error && 'code' in error && typeof error.code === 'string') return error.code;
  return '';
}

/**
 * Turns whatever was thrown into a StorageError that says what was being done.
 * A StorageError passes unchanged; an error that is neither SQLite's nor the system's is our own bug.
 */
export function toStorageError(error: unknown, file: string, doing: string): StorageError {
  if (error instanceof StorageError) return error;
  const code = codeOf(error);
  const known = KNOWN.find(([prefix]) => code.startsWith(prefix));
  const detail = detailOf(error);
  if (known !== undefined) {
    const [, kind, text, remedy] = known;
    return new StorageError(kind, `${doing} ${file}: ${text} (${detail})`, REMEDY[remedy], file, error);
  }
  if (/^E[A-Z]+$/.test(code)) {
    return new StorageError('io', `${doing} ${file}: ${detail} (${code})`, REMEDY.disk, file, error);
  }
  const remedy = 'This is an error of the program; please report it.';
  return new StorageError('bug', `${doing} ${file}: ${detail}`, remedy, file, error);
}

/** What the error itself says; of a system call only its name, since Node's own text names paths of this machine. */
function detailOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const { syscall } = error as NodeJS.ErrnoException;
  return syscall === undefined ? error.message : `${codeOf(error)}, ${syscall}`;
}

/**
 * An error of SQLite or of the system as a StorageError; any other as it is, since it is somebody else's to name.
 */
export function namedFault(error: unknown, file: string, doing: string): unknown {
  return codeOf(error) === '' ? error : toStorageError(error, file, doing);
}

/** Runs fn; whatever it throws leaves as a StorageError. */
export function guarded<T>(file: string, doing: string, fn: () => T): T {
  try {
    return fn();
  } catch (error) {
    throw toStorageError(error, file, doing);
  }
}
