import type { IncomingMessage, ServerResponse } from 'node:http';
import type { CallRequest, Gate } from '../../contract/gate.ts';
import { parseJson } from '../../contract/json.ts';
import { RefusedInput } from '../../contract/refusal.ts';
import { asCallRequest } from '../../host/requests.ts';
import { sendAnswer, sendRefusal } from './answers.ts';
import { wholeBody } from './body.ts';
import type { Limits } from './guard/limits.ts';

/**
 * POST /call: `{call, args}` to the gate, its answer back with 200, whether ok or not. A body that is no such request
 * is 400.
 * @throws BodyCut, and whatever the gate throws (which is a fault of ours).
 */
export async function answerCall(
  request: IncomingMessage,
  response: ServerResponse,
  options: { gate: Gate; limits: Limits },
): Promise<void> {
  const { gate, limits } = options;
  const bytes = await wholeBody(request, { most: limits.callBytes, idleMs: limits.bodyIdleMs });
  const wanted = readCallRequest(bytes, limits.callBytes);
  if (wanted === null) {
    sendRefusal(response, { status: 400, message: 'The body must be the JSON of {call, args}.' });
    return;
  }
  sendAnswer(response, await gate.call(wanted));
}

/** @returns null for what is no JSON, or not `{call: text, args?}`. */
export function readCallRequest(bytes: Uint8Array, maxBytes: number): CallRequest | null {
  let value: unknown;
  try {
    value = parseJson(bytes, { what: 'call', maxBytes });
  } catch (error) {
    if (error instanceof RefusedInput) return null;
    throw error;
  }
  return asCallRequest(value);
}
