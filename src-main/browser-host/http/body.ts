import type { IncomingMessage } from 'node:http';
import { inTime } from '../../host/in-time.ts';

/** Why a body was not read to its end. */
export class BodyCut extends Error {
  readonly status: 408 | 413;
  constructor(status: 408 | 413, message: string) {
    super(message);
    this.name = 'BodyCut';
    this.status = status;
  }
}

/**
 * The body in chunks as they come, at most so many bytes, with no longer silence than given between two.
 * @throws BodyCut over the limit (413) or for silence (408); Node's error when the sender went away.
 */
export async function* bodyChunks(
  request: IncomingMessage,
  limits: { most: number; idleMs: number },
): AsyncGenerator<Uint8Array> {
  // Leaving early must not destroy the request, or its answer could not be sent any more.
  const body = request.iterator({ destroyOnReturn: false });
  const chunks: AsyncIterator<Uint8Array> = body[Symbol.asyncIterator]();
  let read = 0;
  try {
    for (;;) {
      // Only the wait for the sender counts as silence, not the time that the reader takes between two chunks.
      const next = await inTime(chunks.next(), limits.idleMs, silence);
      if (next.done === true) return;
      read += next.value.length;
      if (read > limits.most) throw tooLarge(limits.most);
      yield next.value;
    }
  } finally {
    // Not awaited: it would wait for the chunk that does not come. Without it nobody else could read on.
    chunks.return?.().catch(() => undefined);
  }
}

function silence(): BodyCut {
  return new BodyCut(408, 'The body did not come.');
}

function tooLarge(most: number): BodyCut {
  return new BodyCut(413, `At most ${String(most)} bytes are taken here.`);
}

/** The whole body. @throws as bodyChunks. */
export async function wholeBody(
  request: IncomingMessage,
  limits: { most: number; idleMs: number },
): Promise<Buffer> {
  const chunks: Uint8Array[] = [];
  for await (const chunk of bodyChunks(request, limits)) chunks.push(chunk);
  return Buffer.concat(chunks);
}
