import type { Readable, Writable } from 'node:stream';

/**
 * Commands to our own Chromium over two pipes that only the two processes hold (no port is opened). When this
 * process dies, however it dies, the pipe closes and Chromium ends with it.
 */
export type CdpPipe = {
  /** @throws when Chromium refuses the command, or is gone. */
  send(method: string, params?: Record<string, unknown>): Promise<Record<string, unknown>>;
};

type Waiting = { resolve: (result: Record<string, unknown>) => void; reject: (error: Error) => void };
type Message = { id?: number; result?: Record<string, unknown>; error?: { message: string } };

/** Messages are JSON texts, each ended by a zero byte (Chromium's --remote-debugging-pipe). */
export function openCdpPipe(toChromium: Writable, fromChromium: Readable): CdpPipe {
  const waiting = new Map<number, Waiting>();
  let lastId = 0;
  let gone = false;
  let rest = '';

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
    const parts = (rest + text).split('\0');
    rest = parts.pop() ?? '';
    for (const part of parts) receive(JSON.parse(part) as Message);
  });

  function receive(message: Message): void {
    if (message.id === undefined) return;
    const asked = waiting.get(message.id);
    waiting.delete(message.id);
    if (message.error !== undefined) asked?.reject(new Error(message.error.message));
    else asked?.resolve(message.result ?? {});
  }

  return {
    send(method, params = {}) {
      if (gone) return Promise.reject(new Error('Chromium has ended.'));
      const id = ++lastId;
      return new Promise((resolve, reject) => {
        waiting.set(id, { resolve, reject });
        toChromium.write(`${JSON.stringify({ id, method, params })}\0`);
      });
    },
  };
}
