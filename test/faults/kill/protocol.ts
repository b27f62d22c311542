import { createHash } from 'node:crypto';
import { writeSync } from 'node:fs';
import { logicalDump } from '../../../db/schema/dump.ts';
import { connect } from '../../../db/sqlite.ts';

/**
 * How the state before an edit is found again, should the edit have been committed and its word not have come:
 * taken back, done again, or (for what cannot be taken back) the state that it makes, known beforehand.
 */
export type Back =
  | { by: 'undo' | 'redo' }
  | { by: 'after'; hash: string }
  /** The edit changes no rows: a backup, an export. */
  | { by: 'none' };

/** What the child says, a JSON line each, written before it goes on. */
export type Line =
  /** `left`: half-written files that a start left lying. */
  | { is: 'opened'; hash: string; rows: number; left: string[] }
  /** `saves`: the fingerprint of the text that is about to be written over another. */
  | { is: 'doing'; op: string; back: Back; saves?: string }
  | { is: 'done'; op: string; hash: string; rows: number };

export const say = (line: Line): void => sayLine(line);

/** As one JSON line to whoever started this process, before this returns: a full pipe is waited for. */
export function sayLine(value: unknown): void {
  const bytes = Buffer.from(`${JSON.stringify(value)}\n`);
  for (let at = 0; at < bytes.length;) {
    try {
      at += writeSync(1, bytes, at);
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EAGAIN') throw error;
    }
  }
}

export const fingerprint = (text: string | Uint8Array): string =>
  createHash('sha256').update(text).digest('hex');

export type State = { hash: string; rows: number };

export function stateOfDump(dump: string): State {
  return { hash: fingerprint(dump), rows: dump.split('\n').filter((line) => line.startsWith('[')).length };
}

/** All user rows of a database file, as any other reader sees them. */
export function stateOf(file: string): State {
  const db = connect(file, { readonly: true, mustExist: true });
  try {
    return stateOfDump(logicalDump(db));
  } finally {
    db.close();
  }
}
