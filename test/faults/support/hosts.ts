import { fork, spawn, type ChildProcess } from 'node:child_process';
import { join, resolve } from 'node:path';
import type { CallAnswer, HostEvent } from '../../../src-main/contract/gate.ts';

/** A running host, asked as its window would ask it. */
export type HostDriver = {
  call(message: unknown): Promise<CallAnswer>;
  /** By address, as the window fetches from its own origin. */
  fetch(
    path: string,
    init?: { method?: string; headers?: Record<string, string>; body?: string },
  ): Promise<Fetched>;
  events: HostEvent[];
  end(): Promise<void>;
};

export type Fetched = { status: number; headers: Record<string, string>; body: string };

const ROOT = resolve(import.meta.dirname, '..', '..', '..');

const gone = (child: ChildProcess): Promise<void> =>
  child.exitCode === null && child.signalCode === null
    ? new Promise((done) => child.once('exit', () => done()))
    : Promise.resolve();

/** The browser host as `npm start -- --no-window` runs it, over HTTP. */
export async function browserHost(dataDir: string): Promise<HostDriver> {
  const child = spawn(
    process.execPath,
    [join(ROOT, 'build', 'start.mjs'), '--no-window', '--data', dataDir],
    {
      stdio: ['ignore', 'pipe', 'pipe'],
    },
  );
  let said = '';
  child.stderr.on('data', (part: Buffer) => (said += String(part)));
  const url = await new Promise<string>((done, failed) => {
    let out = '';
    child.stdout.on('data', (part: Buffer) => {
      out += String(part);
      if (out.includes('\n')) done((JSON.parse(out) as { url: string }).url);
    });
    child.once('exit', () => failed(new Error(`the host ended: ${said}`)));
  });
  const { origin } = new URL(url);
  const cookie = (await fetch(url)).headers.get('set-cookie')?.split(';')[0] ?? '';
  const events: HostEvent[] = [];
  const listening = new AbortController();
  await listen(`${origin}/events`, cookie, events, listening.signal);
  const own = { Cookie: cookie, Origin: origin };
  return {
    events,
    async call(message) {
      const response = await fetch(`${origin}/call`, {
        method: 'POST',
        headers: { ...own, 'Content-Type': 'application/json' },
        body: JSON.stringify(message),
      });
      return (await response.json()) as CallAnswer;
    },
    async fetch(path, init = {}) {
      const response = await fetch(`${origin}${path}`, { ...init, headers: { ...own, ...init.headers } });
      const { status, headers } = response;
      return { status, headers: Object.fromEntries(headers), body: await response.text() };
    },
    async end() {
      listening.abort();
      child.kill('SIGTERM');
      await gone(child);
    },
  };
}

/** Server-sent events into a list, from once the stream is open. */
async function listen(url: string, cookie: string, events: HostEvent[], signal: AbortSignal): Promise<void> {
  const response = await fetch(url, { headers: { Cookie: cookie }, signal });
  let text = '';
  const read = async () => {
    for await (const part of (response.body ?? []) as AsyncIterable<Uint8Array>) {
      text += Buffer.from(part).toString();
      const blocks = text.split('\n\n');
      text = blocks.pop() ?? '';
      for (const block of blocks) {
        if (block.startsWith('data: ')) events.push(JSON.parse(block.slice(6)) as HostEvent);
      }
    }
  };
  void read().catch(() => undefined);
}

type FromFake = { ready?: true; event?: HostEvent; id?: number; value?: unknown };

/**
 * The built Electron entry on the tests' fake of Electron, in a process of its own: the real gate, service, worker and
 * app:// handler, without Electron itself.
 */
export async function fakeElectronHost(dataDir: string): Promise<HostDriver> {
  const hooks = join(ROOT, 'test', 'faults', 'host', 'host-electron-hooks.ts');
  const child = fork(join(ROOT, 'out', 'main', 'main.js'), ['--data', dataDir], {
    execArgv: ['--import', hooks],
    env: { ...process.env, INIT_CWD: dataDir },
    serialization: 'advanced',
    stdio: ['ignore', 'ignore', 'pipe', 'ipc'],
  });
  let said = '';
  child.stderr?.on('data', (part: Buffer) => (said += String(part)));
  const waiting = new Map<number, (value: unknown) => void>();
  const events: HostEvent[] = [];
  await new Promise<void>((done, failed) => {
    child.once('exit', () => failed(new Error(`the host ended: ${said}`)));
    child.on('message', ({ ready, event, id, value }: FromFake) => {
      if (ready === true) done();
      if (event !== undefined) events.push(event);
      if (id === undefined) return;
      waiting.get(id)?.(value);
      waiting.delete(id);
    });
  });
  let lastId = 0;
  const ask = (what: object): Promise<unknown> =>
    new Promise((answered) => {
      const id = ++lastId;
      waiting.set(id, answered);
      child.send({ id, ...what });
    });
  return {
    events,
    call: async (message) => (await ask({ message })) as CallAnswer,
    fetch: async (path, init = {}) => (await ask({ fetch: { path, ...init } })) as Fetched,
    async end() {
      child.disconnect();
      await gone(child);
    },
  };
}
