import type { Server } from 'node:http';
import type { Duplex } from 'node:stream';
import { ANSWER_HEADERS } from '../../host/headers.ts';

/**
 * What Node would answer by itself, or not at all: requests that it cannot parse, that come too slowly, and methods
 * that are no requests of ours. They get our headers and our words too.
 */
export function answerBrokenRequests(server: Server): void {
  server.on('clientError', (error: NodeJS.ErrnoException, socket) => {
    const [status, reason, text] = BROKEN.get(error.code ?? '') ?? MALFORMED;
    endWith(socket, rawAnswer(status, reason, text));
  });
  server.on('connect', (_request, socket) => {
    endWith(socket, rawAnswer(405, 'Method Not Allowed', 'This method is not answered here.'));
  });
  server.on('checkExpectation', (_request, response) => {
    response.socket?.end(rawAnswer(417, 'Expectation Failed', 'This expectation is not met here.'));
  });
}

type Broken = readonly [status: number, reason: string, text: string];

const MALFORMED: Broken = [400, 'Bad Request', 'This is not a request that can be read.'];

/** Node's codes of the errors that have an own status. */
const BROKEN: ReadonlyMap<string, Broken> = new Map([
  ['ERR_HTTP_REQUEST_TIMEOUT', [408, 'Request Timeout', 'The request came too slowly.']],
  ['HPE_HEADER_OVERFLOW', [431, 'Request Header Fields Too Large', 'The headers are too large.']],
]);

function endWith(socket: Duplex, answer: string): void {
  if (socket.writable) socket.end(answer, () => socket.destroy());
  else socket.destroy();
}

/** A whole HTTP answer as text, for connections that never became a request of ours. */
function rawAnswer(status: number, reason: string, text: string): string {
  const headers = {
    ...ANSWER_HEADERS,
    'Content-Type': 'text/plain; charset=utf-8',
    'Content-Length': String(Buffer.byteLength(text)),
    Connection: 'close',
  };
  const lines = Object.entries(headers).map(([name, value]) => `${name}: ${value}`);
  return `HTTP/1.1 ${String(status)} ${reason}\r\n${lines.join('\r\n')}\r\n\r\n${text}`;
}
