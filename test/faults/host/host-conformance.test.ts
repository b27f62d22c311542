import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ensureBuilt } from '../../../build/ensure-built.mjs';
import { findElectron } from '../../../build/find/find-electron.mjs';
import { loadMigrations } from '../../../db/migration-files.ts';
import { calls, type CallName } from '../../../src-main/contract/calls/index.ts';
import type { CallAnswer } from '../../../src-main/contract/gate.ts';
import { ANSWER_HEADERS } from '../../../src-main/host/headers.ts';
import { bagFile } from '../../support/bags.ts';
import { makeTempDir } from '../../unit/browser-host/kit.ts';
import { browserHost, fakeElectronHost, type HostDriver } from '../support/hosts.ts';

/**
 * One contract, two hosts: the same conversation with each, which must go the same way. The Electron host runs on the
 * tests' fake of Electron: its entry, its gate and its app:// handler are real, Electron is not. (With a binary
 * test/e2e/electron.test.ts runs the real one.)
 */
const ROOT = resolve(import.meta.dirname, '..', '..', '..');
const withReal = findElectron(join(ROOT, 'node_modules', 'electron')) !== null;

const temp = makeTempDir();
let hosts: { browser: HostDriver; electron: HostDriver };
beforeAll(async () => {
  await ensureBuilt(() => undefined);
  const [browser, electron] = await Promise.all([
    browserHost(join(temp.dir, 'browser')),
    fakeElectronHost(join(temp.dir, 'electron')),
  ]);
  hosts = { browser, electron };
});
afterAll(async () => {
  await Promise.all([hosts.browser.end(), hosts.electron.end()]);
  temp.remove();
});

/** Puts the same to both; what they answer must be the same but for what differs by chance or place. */
async function both<T>(ask: (host: HostDriver) => Promise<T>): Promise<T> {
  const [first, second] = await Promise.all([ask(hosts.browser), ask(hosts.electron)]);
  expect(plain(second)).toEqual(plain(first));
  return first;
}

/** Random ids, times of day and folders made the same. */
function plain(value: unknown): unknown {
  if (value === undefined) return undefined;
  const text = JSON.stringify(value)
    .replaceAll(/[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}/g, '(id)')
    .replaceAll(/\d{4}-\d\d-\d\dT\d\d[:-]\d\d[:-]\d\d[.-]\d{3}Z/g, '(time)')
    .replaceAll(join(temp.dir, 'browser'), '(folder)')
    .replaceAll(join(temp.dir, 'electron'), '(folder)')
    .replaceAll(/"version":"[^"]+"/g, '"version":"(version)"')
    .replaceAll(/"programVersion":"[^"]+"/g, '"programVersion":"(version)"');
  return JSON.parse(text) as unknown;
}

async function call(name: CallName, args: unknown): Promise<CallAnswer> {
  const answer = await both((host) => host.call({ call: name, args }));
  if (answer.ok) expect(calls[name].result.safeParse(answer.value).error).toBeUndefined();
  return answer;
}

async function value(name: CallName, args: unknown): Promise<Record<string, unknown>> {
  const answer = await call(name, args);
  if (!answer.ok) throw new Error(`${name}: ${answer.error.message}`);
  return answer.value as Record<string, unknown>;
}

describe(`both hosts${withReal ? '' : ' (the real Electron was not run: its binary is not here)'}`, () => {
  it('begin with the same empty records, on the same schema', async () => {
    expect((await value('players.roster', {}))['length']).toBe(0);
    await value('catalogue.list', {});
    await value('history.state', {});
    await value('settings.read', {});
    for (const host of Object.values(hosts)) {
      // Which host it is, and what that can do, is the one thing that they tell differently.
      const about = await host.call({ call: 'program.about', args: {} });
      expect(calls['program.about'].result.safeParse(about.ok ? about.value : null).error).toBeUndefined();
    }
    expect(loadMigrations().length).toBeGreaterThan(0);
  });

  it('take edits, answers, undo and redo the same way, and tell of them in the same order', async () => {
    const opened = await value('players.importBag', {
      text: JSON.stringify(bagFile({ budget: { amount: 120 } })),
    });
    const { bagId } = opened;
    await value('bags.updateClub', { bagId, clubId: '7i', patch: { carry: 128 } });
    const note = { archetype: 'hybrid-22-t3', low: 30, likely: 45, high: 60, currency: 'GBP' };
    await value('prices.add', { note });
    await value('answers.plan', { bagId });
    await value('history.undo', {});
    await value('history.redo', {});
    await value('bags.read', { bagId });
    await value('search.all', { text: 'hybrid', limit: 5 });
    await value('backups.make', {});
    for (const host of Object.values(hosts)) await expect.poll(() => host.events.length).toBeGreaterThan(5);
    expect(plain(hosts.electron.events)).toEqual(plain(hosts.browser.events));
  });

  it.each([
    ['an unknown call', { call: 'no.such', args: {} }],
    ['a call that every object has', { call: 'constructor', args: {} }],
    ['no name', { args: {} }],
    ['a name that is no text', { call: 7, args: {} }],
    ['a name of odd letters', { call: '../x', args: {} }],
    ['a key more', { call: 'history.state', args: {}, more: 1 }],
    ['arguments of another kind', { call: 'players.create', args: [] }],
    ['no arguments', { call: 'players.create' }],
    ['an argument more', { call: 'history.state', args: { more: 1 } }],
    ['a row that is not there', { call: 'bags.read', args: { bagId: 999 } }],
    ['a value out of range', { call: 'answers.whatIf', args: { bagId: 1, temperatureC: 900, altitudeM: 0 } }],
    ['a list in place of a call', []],
    ['nothing', null],
  ])('refuse %s', async (_, message) => {
    const answer = await both(async (host) => {
      const { ok, error } = (await host.call(message)) as { ok: boolean; error?: { kind: string } };
      return { ok, kind: error?.kind };
    });
    expect(answer.ok).toBe(false);
    expect(['refused', 'not-found']).toContain(answer.kind);
  });

  it('keep, refuse and read uploads the same way', async () => {
    const post = (name: string, body: string, type = 'application/octet-stream') =>
      both(async (host) => {
        const path = `/upload?name=${encodeURIComponent(name)}`;
        const { status, body: text } = await host.fetch(path, {
          method: 'POST',
          headers: { 'Content-Type': type },
          body,
        });
        return { status, answer: JSON.parse(text) as CallAnswer };
      });
    expect((await post('prices.csv', 'archetype,price,currency\nhybrid-22-t3,45,GBP\n')).answer.ok).toBe(
      true,
    );
    expect((await post('bag.json', JSON.stringify(bagFile()))).status).toBe(200);
    expect((await post('x.exe', 'MZ')).answer.ok).toBe(false);
    expect((await post('../x.csv', 'a')).status).toBe(400);
    expect((await post('x.csv', 'a', 'text/plain')).status).toBe(415);
  });

  it('serve the same window under the same policy, and nothing else', async () => {
    const index = readFileSync(join(ROOT, 'out', 'renderer', 'index.html'), 'utf8');
    const page = await both(async (host) => {
      const { status, headers, body } = await host.fetch('/index.html');
      const own = Object.keys(ANSWER_HEADERS).map((name) => [name, headers[name.toLowerCase()]]);
      return { status, body, own, type: headers['content-type'] };
    });
    expect(page.status).toBe(200);
    expect(page.body).toBe(index);
    expect(page.own).toEqual(Object.entries(ANSWER_HEADERS));
    for (const path of ['/nothing-there', '/assets', '/index.html.bak', '/page?id=none', '/package.json']) {
      expect(await both(async (host) => (await host.fetch(path)).status)).toBe(404);
    }
    for (const method of ['PUT', 'DELETE']) {
      expect(await both(async (host) => (await host.fetch('/', { method })).status)).toBe(405);
    }
    expect(await both(async (host) => (await host.fetch('/painted', { method: 'POST' })).status)).toBe(204);
  });

  it('keep everything for the next start', async () => {
    const before = await value('players.roster', {});
    await Promise.all([hosts.browser.end(), hosts.electron.end()]);
    const [browser, electron] = await Promise.all([
      browserHost(join(temp.dir, 'browser')),
      fakeElectronHost(join(temp.dir, 'electron')),
    ]);
    hosts = { browser, electron };
    expect(await value('players.roster', {})).toEqual(before);
    expect((await value('history.state', {}))['undo']).not.toBeNull();
  });
});
