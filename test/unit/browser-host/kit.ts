import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { CallAnswer, CallRequest, Gate, GatePage, HostEvent } from '../../../src-main/contract/gate.ts';
import {
  startLoopback,
  type Loopback,
  type LoopbackOptions,
} from '../../../src-main/browser-host/http/server.ts';

/** What lies beside the served folder and must never be read out of it. */
export const OUTSIDE = 'written outside of the window';

export function makeTempDir(): { dir: string; remove: () => void } {
  const dir = mkdtempSync(join(tmpdir(), 'loftledger-test-'));
  return { dir, remove: () => rmSync(dir, { recursive: true, force: true }) };
}

/** A built window in small: index.html, one script, a link that leads outside, and what lies outside. */
export function makeRenderer(parent: string): string {
  const folder = join(parent, 'renderer');
  mkdirSync(join(folder, 'assets'), { recursive: true });
  writeFileSync(
    join(folder, 'index.html'),
    '<!doctype html><title>Window</title><script src="assets/app.js"></script>',
  );
  writeFileSync(join(folder, 'assets', 'app.js'), PAINTING);
  writeFileSync(join(folder, 'assets', 'app.js.map'), '{"sources":["a/path"]}');
  writeFileSync(join(parent, 'outside.txt'), OUTSIDE);
  symlinkSync(join(parent, 'outside.txt'), join(folder, 'link.txt'));
  return folder;
}

/** What the real window does at its first paint. */
const PAINTING =
  'requestAnimationFrame(() => requestAnimationFrame(() => void fetch("/painted", { method: "POST" })));';

export type FakeGate = Gate & {
  calls: CallRequest[];
  uploads: { name: string; bytes: number; failed: boolean }[];
  opened: string[];
  emit(event: HostEvent): void;
  listeners(): number;
  /** What stands at `/page?id=…`. */
  pages: Map<string, GatePage>;
  closed: boolean;
  /** What the next calls do instead of answering with their own request. */
  onCall: ((request: CallRequest) => Promise<CallAnswer>) | null;
};

export function fakeGate(): FakeGate {
  const listeners = new Set<(event: HostEvent) => void>();
  const gate: FakeGate = {
    calls: [],
    uploads: [],
    opened: [],
    pages: new Map(),
    page: (id) => Promise.resolve(gate.pages.get(id) ?? null),
    closed: false,
    onCall: null,
    emit: (event) => listeners.forEach((listener) => listener(event)),
    listeners: () => listeners.size,
    async call(request) {
      gate.calls.push(request);
      return gate.onCall ? gate.onCall(request) : { ok: true, value: request };
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
    async upload(name, stream) {
      const record = { name, bytes: 0, failed: true };
      gate.uploads.push(record);
      for await (const chunk of stream) record.bytes += chunk.length;
      record.failed = false;
      return { ok: true, value: record.bytes };
    },
    async open(file) {
      gate.opened.push(file.name);
    },
    async close() {
      gate.closed = true;
    },
  };
  return gate;
}

export type Rig = {
  loopback: Loopback;
  gate: FakeGate;
  faults: unknown[];
  painted: () => number;
  close(): Promise<void>;
};

export async function startRig(options: Partial<LoopbackOptions> = {}): Promise<Rig> {
  const temp = makeTempDir();
  const gate = fakeGate();
  const faults: unknown[] = [];
  let painted = 0;
  const loopback = await startLoopback({
    gate,
    rendererDir: makeRenderer(temp.dir),
    onPainted: () => painted++,
    onFault: (error) => faults.push(error),
    ...options,
  });
  return {
    loopback,
    gate,
    faults,
    painted: () => painted,
    async close() {
      await loopback.close();
      temp.remove();
    },
  };
}

export type Answer = { status: number; headers: Map<string, string>; body: string; raw: string };

/** Sends these bytes and reads until the other side ends, or until `until` has come. */
export function exchange(
  port: number,
  send: string | Buffer,
  options: { until?: RegExp; endAfterSend?: boolean } = {},
): Promise<string> {
  return new Promise((resolve) => {
    let text = '';
    const socket = connect(port, '127.0.0.1', () => {
      socket.write(send);
      if (options.endAfterSend === true) socket.end();
    });
    socket.setEncoding('latin1').on('data', (part: string) => {
      text += part;
      if (options.until?.test(text) === true) socket.destroy();
    });
    socket.on('error', () => socket.destroy());
    socket.on('close', () => resolve(text));
  });
}

export function parseAnswer(raw: string): Answer {
  // An interim answer (100 Continue) is not the answer.
  const final = raw.replace(/^HTTP\/1\.1 100 [^\r]*\r\n\r\n/, '');
  const cut = final.indexOf('\r\n\r\n');
  const [first = '', ...lines] = final.slice(0, cut < 0 ? undefined : cut).split('\r\n');
  const headers = new Map<string, string>();
  for (const line of lines) {
    const colon = line.indexOf(':');
    headers.set(line.slice(0, colon).toLowerCase(), line.slice(colon + 1).trim());
  }
  return {
    status: Number(first.split(' ')[1] ?? NaN),
    headers,
    body: cut < 0 ? '' : final.slice(cut + 4),
    raw,
  };
}

export type Ask = {
  method?: string;
  target?: string;
  /** In place of, or beside, those of the own window; null takes one away. */
  headers?: Record<string, string | null>;
  body?: string;
};

/** A request as our own window would send it, changed where the attacker changes it; the header order is kept. */
export async function ask(
  rig: { loopback: Loopback },
  cookie: string | null,
  change: Ask = {},
): Promise<Answer> {
  const { port, origin } = rig.loopback;
  const method = change.method ?? 'GET';
  const body = change.body ?? '';
  const headers: Record<string, string | null> = {
    Host: `127.0.0.1:${String(port)}`,
    Connection: 'close',
    Cookie: cookie,
    'Sec-Fetch-Site': 'same-origin',
    ...(method === 'POST' ? { Origin: origin, 'Content-Type': 'application/json' } : {}),
    ...(body === '' ? {} : { 'Content-Length': String(Buffer.byteLength(body)) }),
    ...change.headers,
  };
  const lines = Object.entries(headers)
    .filter(([, value]) => value !== null)
    .map(([name, value]) => `${name}: ${String(value)}\r\n`);
  const text = `${method} ${change.target ?? '/'} HTTP/1.1\r\n${lines.join('')}\r\n${body}`;
  return parseAnswer(await exchange(port, Buffer.from(text, 'latin1')));
}

/** Uses the token, as the launch page does. @returns the Cookie header of the session. */
export async function enter(rig: { loopback: Loopback }): Promise<string> {
  const target = rig.loopback.openUrl.slice(rig.loopback.origin.length);
  const answer = await ask(rig, null, { target, headers: { 'Sec-Fetch-Site': 'cross-site' } });
  return (answer.headers.get('set-cookie') ?? '').split(';')[0] ?? '';
}

export const CALL = JSON.stringify({ call: 'demo.read', args: { id: 1 } });
