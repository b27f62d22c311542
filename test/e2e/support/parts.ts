import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { text } from 'node:stream/consumers';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { build } from 'vite';
import type { BagFile } from '../../../src-main/contract/formats/bag-file.ts';
import type { CallArgs, CallName, CallResult } from '../../../src-main/contract/calls/index.ts';
import type { CallAnswer, CallRequest, Gate } from '../../../src-main/contract/gate.ts';
import { ANSWER_HEADERS, pageHeaders } from '../../../src-main/host/headers.ts';
import { readStaticFiles, type StaticFile } from '../../../src-main/host/static-files.ts';
import { createService } from '../../../src-main/service/service.ts';
import { demoBag } from '../../../db/demo/index.ts';
import { LONG } from '../../parts/long.ts';

const ROOT = resolve(import.meta.dirname, '..', '..', '..');

/** usual: the demo; long: full and with long names; empty: nothing is known; error: the service refuses. */
export const CASES = ['usual', 'long', 'empty', 'error'] as const;
export type Case = (typeof CASES)[number];

/** The page of parts in every case, each on a service of its own. */
export type Parts = { url(of: Case, screen: string): string; close(): Promise<void> };

export async function startParts(): Promise<Parts> {
  const folder = mkdtempSync(join(tmpdir(), 'loftledger-parts-'));
  await build({
    configFile: false,
    root: join(ROOT, 'test', 'parts'),
    publicDir: join(ROOT, 'src-renderer', 'public'),
    plugins: [svelte({ configFile: join(ROOT, 'svelte.config.js') })],
    build: {
      outDir: folder,
      emptyOutDir: true,
      assetsInlineLimit: 0,
      modulePreload: { polyfill: false },
      // Nobody waits for this page over a wire.
      chunkSizeWarningLimit: 5_000,
      rolldownOptions: { checks: { pluginTimings: false } },
    },
    logLevel: 'warn',
  });
  const files = readStaticFiles(folder);
  const served = new Map<Case, { origin: string; bagId: number; close: () => Promise<void> }>();
  for (const one of CASES) served.set(one, await serve(one, files));
  const of = (one: Case) => {
    const found = served.get(one);
    if (!found) throw new Error(`no case "${one}"`);
    return found;
  };
  return {
    url: (one, screen) => `${of(one).origin}/#/${screen}/${String(of(one).bagId)}`,
    async close() {
      for (const { close } of served.values()) await close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

async function serve(one: Case, files: ReadonlyMap<string, StaticFile>) {
  const gate = await createService({ dataDir: ':memory:', version: '0.0.0-parts' });
  const bagId = await fill(gate, one);
  const server = createServer((request, response) => {
    void answer(request, response, gate, one, files);
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('the server has no port');
  return {
    origin: `http://127.0.0.1:${String(address.port)}`,
    bagId,
    async close() {
      server.closeAllConnections();
      await new Promise((done) => server.close(done));
      await gate.close();
    },
  };
}

async function answer(
  request: IncomingMessage,
  response: ServerResponse,
  gate: Gate,
  one: Case,
  files: ReadonlyMap<string, StaticFile>,
): Promise<void> {
  if (request.url === '/call') {
    const body = JSON.parse(await text(request)) as CallRequest;
    const answered = one === 'error' ? refusing(body) : null;
    response.writeHead(200, { ...ANSWER_HEADERS, 'Content-Type': 'application/json' });
    response.end(JSON.stringify(answered ?? (await gate.call(body))));
    return;
  }
  if (request.url === '/events') {
    // Nothing is ever told; the stream only stays open.
    response.writeHead(200, { ...ANSWER_HEADERS, 'Content-Type': 'text/event-stream' });
    response.write('\n');
    return;
  }
  const { pathname, searchParams } = new URL(request.url ?? '/', 'http://parts');
  if (pathname === '/upload') {
    response.writeHead(200, { ...ANSWER_HEADERS, 'Content-Type': 'application/json' });
    response.end(JSON.stringify(await gate.upload(searchParams.get('name') ?? '', request)));
    return;
  }
  const page = pathname === '/page' ? await gate.page(searchParams.get('id') ?? '') : null;
  if (page) {
    response.writeHead(200, { ...ANSWER_HEADERS, ...pageHeaders(page) });
    response.end(page.bytes);
    return;
  }
  const file = files.get(pathname);
  response.writeHead(file ? 200 : 404, { ...ANSWER_HEADERS, 'Content-Type': file?.type ?? 'text/plain' });
  response.end(file?.bytes);
}

/** What the page needs to stand at all is answered; all else is refused at length. */
const ANSWERED = new Set(['settings.read', 'history.state', 'bags.read', 'answers.plan', 'catalogue.list']);

function refusing({ call }: CallRequest): CallAnswer | null {
  if (ANSWERED.has(call)) return null;
  return {
    ok: false,
    error: {
      kind: 'refused',
      message: LONG.sentence,
      refusals: [
        {
          path: '$.clubs[3].carry',
          of: LONG.word,
          value: LONG.word,
          message: 'cannot be used',
          remedy: LONG.sentence,
        },
      ],
    },
  };
}

/** @returns the bag that the page opens. */
async function fill(gate: Gate, one: Case): Promise<number> {
  async function call<K extends CallName>(name: K, args: CallArgs<K>): Promise<CallResult<K>> {
    const done = await gate.call({ call: name, args });
    if (!done.ok) throw new Error(`${name}: ${done.error.message}`);
    return done.value as CallResult<K>;
  }
  const { bagId, playerId } = await call('players.importBag', { text: JSON.stringify(bagOf(one)) });
  if (one === 'empty') return bagId;
  for (let n = 1; n <= 25; n += 1) {
    const text = one === 'long' ? `${LONG.sentence}\n\n${LONG.word.repeat(2)}` : 'Grip a touch stronger.';
    await call('diary.add', { playerId, on: `2026-10-${String(n).padStart(2, '0')}`, text });
  }
  const { currency } = bagOf(one).units;
  const scale = one === 'long' ? 100 : 1;
  for (const [likely, seen, condition] of [
    [45, '2026-11-01', 'played'],
    [55, '2026-11-10', 'light wear'],
    [50, '2026-01-01', 'played'],
    [28, '2026-10-20', 'worn'],
    [420, '2026-11-12', 'played'],
  ] as const) {
    const place = one === 'long' ? { place: LONG.sentence } : {};
    const band = { low: likely * 0.8 * scale, likely: likely * scale, high: likely * 1.2 * scale };
    await call('prices.add', {
      note: { archetype: 'hybrid-25-t3', bagId, ...band, currency, seen, condition, ...place },
    });
  }
  const { plan } = await call('answers.plan', { bagId });
  if (plan.plan.items) {
    const why = one === 'long' ? LONG.sentence : 'It mends most.';
    await call('plans.pick', { bagId, name: 'The plan', why, items: plan.plan.items });
  }
  return bagId;
}

function bagOf(one: Case): BagFile {
  const usual = demoBag('invented-bag') as BagFile;
  const full = demoBag('range-bag') as BagFile;
  switch (one) {
    case 'usual':
    case 'error':
      return usual;
    case 'empty':
      return {
        format: 'loftledger-bag',
        version: 1,
        player: { name: 'Nobody', handicap: 20, handed: 'left', ground: 'soft' },
        units: { distance: 'm', speed: 'km/h', currency: 'JPY' },
        clubs: [],
        prices: [],
      };
    case 'long':
      return {
        ...full,
        player: { ...full.player, name: LONG.name, missNote: LONG.sentence, miss: ['left', 'right', 'fat'] },
        clubs: full.clubs.map((club, i) => ({
          ...club,
          label:
            i % 3 === 0 ? LONG.name : i % 3 === 1 ? `${String(i)} ${LONG.word}` : (club.label ?? club.id),
        })),
      };
  }
}
