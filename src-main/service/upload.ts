import type { CallAnswer, CallRequest } from '../contract/gate.ts';
import { MAX_BAG_BYTES } from '../contract/read-bag.ts';
import { RefusedInput } from '../contract/refusal.ts';
import { StorageError } from '../../db/errors.ts';
import { callError } from './call-error.ts';
import { MAX_CSV_BYTES } from './files/csv.ts';
import type { Uploads } from './files/uploads.ts';

/** What is kept of a file until a call reads it. Databases: what the host lets through at most. */
const KEPT: readonly (readonly [ending: RegExp, mostBytes: number])[] = [
  [/\.(?:csv|tsv|txt)$/i, MAX_CSV_BYTES],
  [/\.loftledger$/i, 200 * 1024 * 1024],
];

/**
 * Files that the window sends: a bag file (.json) is taken in at once; tables and databases are kept, and the answer
 * is `{upload, name, bytes}` for the `files.*` calls. Nothing is kept of one that is cut short or too large.
 */
export async function takeUpload(
  name: string,
  stream: AsyncIterable<Uint8Array>,
  { dispatch, uploads }: { dispatch: (request: CallRequest) => Promise<CallAnswer>; uploads: Uploads },
): Promise<CallAnswer> {
  const kept = KEPT.find(([ending]) => ending.test(name));
  if (kept !== undefined) return keep(name, stream, kept[1], uploads);
  if (!/\.json$/i.test(name)) {
    return refused(
      'A bag file ends in .json, a table in .csv, a database in .loftledger.',
      'Choose one of these.',
    );
  }
  const parts: Uint8Array[] = [];
  let size = 0;
  for await (const part of stream) {
    size += part.length;
    if (size > MAX_BAG_BYTES) return refused('The file is larger than 2 MB.', 'Check that it is a bag file.');
    parts.push(part);
  }
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(Buffer.concat(parts));
  } catch {
    return refused('The file is not UTF-8 text.', 'Choose a bag file in JSON.');
  }
  return dispatch({ call: 'players.importBag', args: { text } });
}

async function keep(
  name: string,
  stream: AsyncIterable<Uint8Array>,
  mostBytes: number,
  uploads: Uploads,
): Promise<CallAnswer> {
  try {
    const { id, bytes } = await uploads.take(name, stream, mostBytes);
    return { ok: true, value: { upload: id, name, bytes } };
  } catch (error) {
    // What the stream itself threw is the host's to tell.
    if (!(error instanceof RefusedInput || error instanceof StorageError)) throw error;
    return { ok: false, error: callError(error) };
  }
}

function refused(message: string, remedy: string): CallAnswer {
  return { ok: false, error: { kind: 'refused', message: `${message} ${remedy}` } };
}
