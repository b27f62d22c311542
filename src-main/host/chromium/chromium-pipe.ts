import type { Readable, Writable } from 'node:stream';

type Result = Record<string, unknown>;
type Waiting = { resolve: (result: Result) => void; reject: (error: Error) => void };
type Message = { id?: number; result?: Result; error?: { message: string } };

/**
 * Commands to a Chromium of our own over its two debugging pipes (JSON texts, each ended by a zero byte;
 * --remote-debugging-pipe). No port is opened, and when this process dies, however it dies, the pipe closes and Chromium
 * ends with it.
 */
export type ChromiumPipe = {
  /** @param sessionId of a page that was attached to. @throws when Chromium refuses the command, or is gone. */
  send(method: string, params?: Record<string, unknown>, sessionId?: string): Promise<Result>;
};

export function openChromiumPipe(toChromium: Writable, fromChromium: Readable): ChromiumPipe {
  const waiting = new Map<number, Waiting>();
  // Kept as pieces: a printed page comes as one message of megabytes.
  let pieces: string[] = [];
  let lastId = 0;
  let gone = false;

  const end = () => {
    gone = true;
    for (const { reject } of waiting.values()) reject(new Error('Chromium has ended.'));
    waiting.clear();
  };
  toChromium.on('error', end);
  fromChromium.on('error', end);
  fromChromium.on('close', end);
  fromChromium.setEncoding('utf8');
  fromChromium.on('data', (text: string) => {
    const parts = text.split('\0');
    const rest = parts.pop() ?? '';
    for (const part of parts) {
      receive(JSON.parse([...pieces, part].join('')) as Message);
      pieces = [];
    }
    if (rest !== '') pieces.push(rest);
  });

  function receive({ id, result, error }: Message): void {
    if (id === undefined) return;
    const asked = waiting.get(id);
    waiting.delete(id);
    if (error === undefined) asked?.resolve(result ?? {});
    else asked?.reject(new Error(error.message));
  }

  return {
    send(method, params = {}, sessionId) {
      if (gone) return Promise.reject(new Error('Chromium has ended.'));
      const id = ++lastId;
      return new Promise((resolve, reject) => {
        waiting.set(id, { resolve, reject });
        const command = { id, method, params, ...(sessionId === undefined ? {} : { sessionId }) };
        toChromium.write(`${JSON.stringify(command)}\0`);
      });
    },
  };
}
