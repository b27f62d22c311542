import { checkDatabase } from '../schema/check.ts';
import { StorageError } from '../errors.ts';
import { probeFile } from './probe.ts';
import { APPLICATION_ID, connect } from '../sqlite.ts';

const OTHER_FILE = 'Choose another file, or move this one away and start afresh.';

/**
 * Refuses what cannot be ours, by its header alone and without changing it: missing, empty, foreign, newer,
 * cut short.
 * @returns the version of its schema, and whether a write-ahead log lies beside it.
 */
export function verifyHeader(
  file: string,
  newest: number,
): { version: number; bytes: number; walLeft: boolean } {
  const state = probeFile(file);
  if (state.is === 'missing') {
    throw new StorageError('missing', `${file} does not exist`, 'Check the path.', file);
  }
  if (state.is === 'empty') {
    const remedy = 'Restore a backup, or delete the file to start afresh.';
    throw new StorageError(
      'empty-file',
      `${file} is empty (0 bytes), so it is no Loftledger database`,
      remedy,
      file,
    );
  }
  if (state.is === 'foreign') {
    throw new StorageError(
      'foreign-file',
      `${file} is no Loftledger database: ${state.why}`,
      OTHER_FILE,
      file,
    );
  }
  const { applicationId, version, bytes, shortBy, walLeft } = state;
  if (applicationId !== APPLICATION_ID || version < 1) {
    const message = `${file} is a database of another program (application id ${applicationId}, version ${version})`;
    throw new StorageError('foreign-file', message, OTHER_FILE, file);
  }
  if (version > newest) {
    const message = `${file} was written by a newer version of the program (schema ${version}; this one knows up to ${newest})`;
    throw new StorageError('newer-database', message, 'Update the program; the file was not changed.', file);
  }
  if (shortBy > 0) {
    const message = `${file} is cut short: ${bytes} bytes, ${shortBy} fewer than its header says`;
    throw new StorageError('damaged', message, 'Restore a backup, or copy the file again.', file);
  }
  return { version, bytes, walLeft };
}

/**
 * Checks a closed file that is ours alone, as a copy just made, whole. It is opened for writing but changes are
 * barred: SQLite does not know the CHECKs of a table when the connection is read-only, and would pass any value.
 * @param shown the name for messages, where the file is a copy. @returns the version of its schema.
 */
export function verifyFile(file: string, newest: number, shown = file): number {
  const { version } = verifyHeader(file, newest);
  const db = connect(file, { mustExist: true });
  try {
    db.pragma('query_only = ON');
    checkDatabase(db, shown, 'full');
    return version;
  } finally {
    db.close();
  }
}
