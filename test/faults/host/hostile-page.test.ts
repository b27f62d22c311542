import { spawnSync } from 'node:child_process';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { chmodSync, mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Browser, type BrowserContext, type Page } from 'playwright';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { findChromium } from '../../../build/find/find-chromium.mjs';
import { openDatabase } from '../../../db/open.ts';
import { makeDataFolder } from '../../../src-main/host/start/data-folder.ts';
import { DATABASE_NAME } from '../../../src-main/service/records/data-folder.ts';
import { startRig, type Rig } from '../../unit/browser-host/kit.ts';

/**
 * A hostile page in a real Chromium that has the session's cookie: what the browser really sends, not what we think
 * that it does. Once from another port of this machine (same site, so cookies go along) and once from another site.
 */
const executablePath = findChromium();
let rig: Rig;
let hostile: Server;
let browser: Browser;
let context: BrowserContext;
let port: number;

beforeAll(async () => {
  rig = await startRig();
  hostile = createServer((_request, response) => {
    response.setHeader('Content-Type', 'text/html');
    response.end('<!doctype html><title>hostile</title>');
  });
  await new Promise<void>((done) => hostile.listen(0, '127.0.0.1', done));
  ({ port } = hostile.address() as AddressInfo);
  browser = await chromium.launch({
    executablePath: executablePath ?? '',
    args: [
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
      '--disable-background-networking',
      '--host-resolver-rules=MAP evil.example 127.0.0.1, MAP rebound.example 127.0.0.1',
    ],
  });
  context = await browser.newContext();
  const own = await context.newPage();
  await own.goto(rig.loopback.openUrl);
  await own.waitForURL(`${rig.loopback.origin}/`);
});
afterAll(async () => {
  await browser.close();
  hostile.close();
  await rig.close();
});
beforeEach(() => {
  rig.gate.calls.length = 0;
  rig.gate.uploads.length = 0;
});

/** Runs in the hostile page: everything that a page can send, and whether it learnt anything. */
async function attack(target: string): Promise<Record<string, string>> {
  const learnt: Record<string, string> = {};
  const call = JSON.stringify({ call: 'players.erase', args: { playerId: 1 } });
  const tries: Record<string, () => Promise<unknown>> = {
    'fetch JSON': () =>
      fetch(`${target}/call`, {
        method: 'POST',
        credentials: 'include',
        headers: { 'Content-Type': 'application/json' },
        body: call,
      }),
    'fetch without CORS': () =>
      fetch(`${target}/call`, { method: 'POST', credentials: 'include', mode: 'no-cors', body: call }).then(
        (answer) => {
          if (answer.type !== 'opaque') return answer;
          throw new Error('opaque');
        },
      ),
    'fetch a page': () => fetch(`${target}/`, { credentials: 'include' }),
    beacon: () => {
      navigator.sendBeacon(`${target}/call`, new Blob([call], { type: 'text/plain' }));
      return Promise.reject(new Error('nothing comes back'));
    },
    upload: () =>
      fetch(`${target}/upload?name=a.csv`, {
        method: 'POST',
        credentials: 'include',
        mode: 'no-cors',
        body: 'x',
      }).then(() => Promise.reject(new Error('opaque'))),
    events: () =>
      new Promise((done, failed) => {
        const stream = new EventSource(`${target}/events`, { withCredentials: true });
        stream.onopen = done;
        stream.onerror = () => {
          stream.close();
          failed(new Error('no stream'));
        };
      }),
    'web socket': () =>
      new Promise((done, failed) => {
        const socket = new WebSocket(`${target.replace('http', 'ws')}/events`);
        socket.onopen = done;
        socket.onerror = () => failed(new Error('no socket'));
      }),
    image: () =>
      new Promise((done, failed) => {
        const image = new Image();
        image.onload = done;
        image.onerror = () => failed(new Error('no image'));
        image.src = `${target}/icon.svg`;
      }),
    script: () =>
      new Promise((done, failed) => {
        const script = document.createElement('script');
        script.onload = done;
        script.onerror = () => failed(new Error('no script'));
        script.src = `${target}/assets/app.js`;
        document.head.append(script);
      }),
    form: () => {
      const frame = document.createElement('iframe');
      frame.name = 'answer';
      document.body.append(frame);
      const form = document.createElement('form');
      Object.assign(form, {
        method: 'post',
        action: `${target}/call`,
        target: 'answer',
        enctype: 'text/plain',
      });
      const field = document.createElement('input');
      Object.assign(field, { name: call.slice(0, -1), value: '}' });
      form.append(field);
      document.body.append(form);
      form.submit();
      return new Promise((_done, failed) => setTimeout(() => failed(new Error('nothing comes back')), 500));
    },
  };
  for (const [name, run] of Object.entries(tries)) {
    learnt[name] = await run().then(
      () => 'got through',
      () => 'kept out',
    );
  }
  return learnt;
}

describe.skipIf(executablePath === null)('a hostile page in a real browser', () => {
  const SITES: [string, () => string][] = [
    ['another port of this machine', () => `http://127.0.0.1:${String(port)}/`],
    ['another site', () => `http://evil.example:${String(port)}/`],
  ];
  async function open(url: string): Promise<Page> {
    const page = await context.newPage();
    await page.goto(url);
    return page;
  }

  it('is measured against the own window, which gets through', async () => {
    const page = await open(`${rig.loopback.origin}/`);
    const status = await page.evaluate(async () => {
      const body = JSON.stringify({ call: 'demo.read', args: {} });
      const headers = { 'Content-Type': 'application/json' };
      return (await fetch('/call', { method: 'POST', headers, body })).status;
    });
    expect(status).toBe(200);
    expect(rig.gate.calls).toHaveLength(1);
    await page.close();
  });

  it.each(SITES)('from %s learns nothing and does nothing', async (_name, url) => {
    const page = await open(url());
    const learnt = await page.evaluate(attack, rig.loopback.origin);
    expect(Object.keys(learnt)).toHaveLength(10);
    expect(Object.entries(learnt).filter(([, outcome]) => outcome !== 'kept out')).toEqual([]);
    expect(rig.gate.calls).toEqual([]);
    expect(rig.gate.uploads).toEqual([]);
    await page.close();
  });

  it.each(SITES)('from %s cannot frame the window, nor read one that it opened', async (_name, url) => {
    const page = await open(url());
    const seen = await page.evaluate(async (target) => {
      const frame = document.createElement('iframe');
      frame.src = `${target}/`;
      document.body.append(frame);
      const opened = window.open(`${target}/`);
      await new Promise((done) => setTimeout(done, 700));
      const read = (what: () => unknown) => {
        try {
          return String(what());
        } catch {
          return 'kept out';
        }
      };
      return [read(() => frame.contentWindow?.document.title), read(() => opened?.document.title)];
    }, rig.loopback.origin);
    expect(seen).not.toContain('Window');
    expect(rig.gate.calls).toEqual([]);
    await page.close();
  });

  it('whose name is made to point here (DNS rebinding) is told that nothing is served under it', async () => {
    const page = await context.newPage();
    const answer = await page.goto(`http://rebound.example:${String(rig.loopback.port)}/`);
    expect(answer?.status()).toBe(421);
    await page.close();
  });
});

const asRoot =
  process.platform === 'linux' &&
  process.getuid?.() === 0 &&
  spawnSync('setpriv', ['--version']).status === 0;
const OTHER = ['--reuid=65534', '--regid=65534', '--clear-groups'];

describe.runIf(asRoot)('another user of this machine', () => {
  it('reads neither the records nor what lies beside them, and finds no way in without the token', () => {
    const base = mkdtempSync(join(tmpdir(), 'loftledger-other-'));
    try {
      chmodSync(base, 0o755);
      const folder = join(base, 'data');
      makeDataFolder(folder);
      const file = join(folder, DATABASE_NAME);
      openDatabase({ file, now: '2026-11-26T00:00:00Z' }).db.close();
      expect(statSync(folder).mode & 0o777).toBe(0o700);
      expect(statSync(file).mode & 0o777).toBe(0o600);
      const as = (...words: string[]) => spawnSync('setpriv', [...OTHER, ...words], { encoding: 'utf8' });
      expect(as('cat', '/proc/self/status').stdout).toContain('65534');
      for (const words of [
        ['cat', file],
        ['ls', folder],
        ['touch', join(folder, 'x')],
      ]) {
        expect(as(...words).status, words.join(' ')).not.toBe(0);
      }
    } finally {
      rmSync(base, { recursive: true, force: true });
    }
  });
});
