import { closeSync, openSync, readSync } from 'node:fs';
import { guarded } from '../errors.ts';
import { sizeOf } from './files.ts';
import { isOpenHere } from './open-files.ts';
import { connect, pragmaNumber } from '../sqlite.ts';

/** What stands at a path, found without changing a byte. */
export type FileState =
  | { is: 'missing' }
  | { is: 'empty' }
  | { is: 'foreign'; why: string }
  | {
      is: 'database';
      applicationId: number;
      version: number;
      bytes: number;
      shortBy: number;
      walLeft: boolean;
    };

// The database header: https://www.sqlite.org/fileformat2.html#the_database_header
const HEADER_BYTES = 100;
const MAGIC = 'SQLite format 3\0';
const PAGE_SIZE_AT = 16;
const CHANGE_COUNTER_AT = 24;
const PAGE_COUNT_AT = 28;
const USER_VERSION_AT = 60;
const APPLICATION_ID_AT = 68;
const VALID_FOR_AT = 92;

/**
 * Looks at a file. The header is read as plain bytes, so that a file that will be refused gets no lock, no
 * log and no shared memory beside it. `walLeft`: a write-ahead log lies there, so somebody has the database
 * open or died with it open; then the version is asked of SQLite itself, reading only, as the log may hold
 * a newer header.
 */
export function probeFile(file: string): FileState {
  return guarded(file, 'Looking at', () => {
    const bytes = sizeOf(file);
    if (bytes === null) return { is: 'missing' };
    if (bytes === 0) return { is: 'empty' };
    const wal = sizeOf(`${file}-wal`);
    const walLeft = wal !== null;
    if (isOpenHere(file)) return { is: 'database', ...askVersion(file), bytes, shortBy: 0, walLeft };
    const header = readHeader(file);
    if (header.length < HEADER_BYTES) return { is: 'foreign', why: `it has only ${bytes} bytes` };
    if (header.toString('latin1', 0, MAGIC.length) !== MAGIC) {
      return { is: 'foreign', why: 'it does not begin like a SQLite database' };
    }
    const fromHeader = {
      applicationId: header.readUInt32BE(APPLICATION_ID_AT),
      version: header.readInt32BE(USER_VERSION_AT),
    };
    if (wal !== null && wal > 0) {
      const known = askVersion(file);
      return { is: 'database', ...known, bytes, shortBy: 0, walLeft };
    }
    return { is: 'database', ...fromHeader, bytes, shortBy: bytesMissing(header, bytes), walLeft };
  });
}

function readHeader(file: string): Buffer {
  const fd = openSync(file, 'r');
  try {
    const buffer = Buffer.alloc(HEADER_BYTES);
    return buffer.subarray(0, readSync(fd, buffer, 0, HEADER_BYTES, 0));
  } finally {
    closeSync(fd);
  }
}

/** How much shorter the file is than its header says; 0 where the header does not vouch for its count. */
function bytesMissing(header: Buffer, bytes: number): number {
  if (header.readUInt32BE(CHANGE_COUNTER_AT) !== header.readUInt32BE(VALID_FOR_AT)) return 0;
  const stored = header.readUInt16BE(PAGE_SIZE_AT);
  const pageBytes = stored === 1 ? 65536 : stored;
  return Math.max(0, header.readUInt32BE(PAGE_COUNT_AT) * pageBytes - bytes);
}

function askVersion(file: string): { applicationId: number; version: number } {
  const db = connect(file, { readonly: true, mustExist: true });
  try {
    return { applicationId: pragmaNumber(db, 'application_id'), version: pragmaNumber(db, 'user_version') };
  } finally {
    db.close();
  }
}
