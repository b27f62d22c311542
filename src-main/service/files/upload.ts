import type { Incoming } from '../../contract/calls/program/incoming.ts';
import type { CallAnswer } from '../../contract/gate.ts';
import { MOST_BYTES } from '../../contract/formats/incoming-kinds.ts';
import { RefusedInput } from '../../contract/refusal.ts';
import { StorageError } from '../../../db/errors.ts';
import { callError } from '../call-error.ts';
import { HEAD_BYTES, recognise } from './recognise.ts';
import type { Uploads } from './uploads.ts';

/**
 * Files that the window sends: kept until calls have read them, none taken in before its preview was seen. The answer is
 * an `Incoming`: what the file is, and the id that calls find it by. Nothing is kept of one that is cut short, too large,
 * or of no kind that is known.
 */
export async function takeUpload(
  name: string,
  stream: AsyncIterable<Uint8Array>,
  uploads: Uploads,
): Promise<CallAnswer> {
  const chunks = stream[Symbol.asyncIterator]();
  try {
    const { head, first } = await headOf(chunks);
    const kind = recognise(name, head);
    const { id, bytes } = await uploads.take(name, joined(first, chunks), MOST_BYTES[kind]);
    return { ok: true, value: { upload: id, name, bytes, kind } satisfies Incoming };
  } catch (error) {
    // What the stream itself threw is the host's to tell.
    if (!(error instanceof RefusedInput || error instanceof StorageError)) throw error;
    return { ok: false, error: callError(error) };
  } finally {
    await chunks.return?.();
  }
}

/** The first bytes, and the chunks that they came in. */
async function headOf(chunks: AsyncIterator<Uint8Array>): Promise<{ head: Uint8Array; first: Uint8Array[] }> {
  const first: Uint8Array[] = [];
  let bytes = 0;
  while (bytes < HEAD_BYTES) {
    const next = await chunks.next();
    if (next.done === true) break;
    first.push(next.value);
    bytes += next.value.length;
  }
  return { head: Buffer.concat(first).subarray(0, HEAD_BYTES), first };
}

async function* joined(
  first: readonly Uint8Array[],
  chunks: AsyncIterator<Uint8Array>,
): AsyncGenerator<Uint8Array> {
  yield* first;
  for (;;) {
    const next = await chunks.next();
    if (next.done === true) return;
    yield next.value;
  }
}
