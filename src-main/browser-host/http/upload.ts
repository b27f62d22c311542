import type { IncomingMessage, ServerResponse } from 'node:http';
import type { Gate } from '../../contract/gate.ts';
import { readUploadName } from '../../host/requests.ts';
import { sendAnswer, sendRefusal } from './answers.ts';
import { bodyChunks, BodyCut } from './body.ts';
import type { Limits } from './guard/limits.ts';

/**
 * POST /upload?name=…: the body as a stream to the gate. Never whole in memory; a stream that is cut throws in the
 * gate's hands, and the cut is the answer, whatever the gate made of it.
 * @throws BodyCut, and whatever the gate throws.
 */
export function createUploads(options: { gate: Gate; limits: Limits }) {
  const { gate, limits } = options;
  let running = 0;
  return async (
    request: IncomingMessage,
    response: ServerResponse,
    query: URLSearchParams,
  ): Promise<void> => {
    const name = readUploadName(query.get('name'));
    if (name === null) {
      sendRefusal(response, { status: 400, message: 'Give the plain name of the file as ?name=….' });
      return;
    }
    if (running >= limits.uploadsAtOnce) {
      sendRefusal(response, {
        status: 503,
        message: 'Other files are being read. Try again when they are done.',
      });
      return;
    }
    running++;
    let cut: BodyCut | null = null;
    try {
      const answer = await gate.upload(
        name,
        watched(request, limits, (reason) => (cut = reason)),
      );
      if (cut !== null) throw cut as BodyCut;
      sendAnswer(response, answer);
    } catch (error) {
      throw cut ?? error;
    } finally {
      running--;
    }
  };
}

async function* watched(request: IncomingMessage, limits: Limits, onCut: (reason: BodyCut) => void) {
  try {
    yield* bodyChunks(request, { most: limits.uploadBytes, idleMs: limits.bodyIdleMs });
  } catch (error) {
    if (error instanceof BodyCut) onCut(error);
    throw error;
  }
}
