import type { IncomingMessage, ServerResponse } from 'node:http';
import type { CallAnswer } from '../../contract/gate.ts';
import type { Refused } from './guard/guards.ts';
import { ANSWER_HEADERS } from '../../host/headers.ts';

/** Every answer goes out through here, so that none lacks the headers. */
export function send(
  response: ServerResponse,
  status: number,
  headers: Record<string, string>,
  body: string | Buffer = '',
): void {
  if (response.headersSent) return;
  const length = String(Buffer.byteLength(body));
  response.writeHead(status, { ...ANSWER_HEADERS, ...headers, 'Content-Length': length });
  response.end(response.req.method === 'HEAD' ? undefined : body);
}

export function sendAnswer(response: ServerResponse, answer: CallAnswer): void {
  send(response, 200, JSON_TYPE, JSON.stringify(answer));
}

const JSON_TYPE = { 'Content-Type': 'application/json; charset=utf-8' };

/**
 * A refusal: as a CallAnswer where the asker posts, as a line of text where it may be a person. It holds our words
 * only, never an error's own text.
 */
export function sendRefusal(response: ServerResponse, refused: Refused): void {
  const allow: Record<string, string> = refused.allow === undefined ? {} : { Allow: refused.allow };
  if (response.req.method === 'POST') {
    const answer: CallAnswer = { ok: false, error: { kind: 'refused', message: refused.message } };
    send(response, refused.status, { ...JSON_TYPE, ...allow }, JSON.stringify(answer));
  } else {
    send(
      response,
      refused.status,
      { 'Content-Type': 'text/plain; charset=utf-8', ...allow },
      refused.message,
    );
  }
}

/** A fault of ours: the cause goes to the host's own error stream, the asker learns that it happened. */
export function sendBug(response: ServerResponse): void {
  const message =
    'A fault in Loftledger, not in what you did. Nothing was changed. The terminal has the details.';
  const answer: CallAnswer = { ok: false, error: { kind: 'bug', message } };
  send(response, 500, JSON_TYPE, JSON.stringify(answer));
}

/**
 * After an answer that came before the body's end: reads and drops the rest for a moment, since closing at once would
 * reset the connection before the sender has read why. Then cuts.
 */
export function linger(request: IncomingMessage, forMs: number): void {
  if (request.complete) return;
  request.resume();
  const timer = setTimeout(() => {
    if (!request.complete) request.socket.destroy();
  }, forMs);
  timer.unref();
  request.once('close', () => clearTimeout(timer));
}
