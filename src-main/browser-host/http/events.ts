import type { ServerResponse } from 'node:http';
import type { Gate } from '../../contract/gate.ts';
import { sendRefusal } from './answers.ts';
import { ANSWER_HEADERS } from '../../host/headers.ts';
import type { Limits } from './guard/limits.ts';

/**
 * GET /events: the gate's events as server-sent events, each a `data:` line with the JSON of `{event, data}`. Events
 * of a time without connection are not kept: a window that reconnects reads its state anew.
 */
export function createEvents(options: { gate: Gate; limits: Limits }) {
  const { gate, limits } = options;
  const streams = new Set<ServerResponse>();
  return {
    open(response: ServerResponse): void {
      if (streams.size >= limits.eventStreams) {
        sendRefusal(response, { status: 503, message: 'Too many event streams are open.' });
        return;
      }
      streams.add(response);
      response.writeHead(200, { ...ANSWER_HEADERS, 'Content-Type': 'text/event-stream; charset=utf-8' });
      const write = (text: string) => {
        // Cut, not buffered without end, when the reader sleeps.
        if (response.writableLength > limits.eventBacklogBytes) response.destroy();
        else response.write(text);
      };
      write('retry: 1000\n\n');
      const heartbeat = setInterval(() => write(':\n\n'), limits.heartbeatMs);
      const stop = gate.subscribe((event) => write(`data: ${JSON.stringify(event)}\n\n`));
      response.once('close', () => {
        clearInterval(heartbeat);
        stop();
        streams.delete(response);
      });
    },
    closeAll(): void {
      for (const response of streams) response.end();
    },
  };
}
