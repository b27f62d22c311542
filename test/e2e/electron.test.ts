import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { _electron, type ElectronApplication, type Page } from 'playwright';
import { afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { ensureBuilt } from '../../build/ensure-built.mjs';
import { findElectron } from '../../build/find/find-electron.mjs';
import { startVirtualDisplay, type Display } from '../../src-main/browser-host/window/display.ts';
import { LOG_FILE, LOG_FOLDER } from '../../src-main/host/faults/log.ts';

/**
 * The real Electron, with the real window. Its binary is a download outside the package registry: where it is not, this
 * says so and is not run, and what is known of the Electron host is what its fake shows (test/faults/host/host-*).
 */
const ROOT = resolve(import.meta.dirname, '..', '..');
const binary = findElectron(join(ROOT, 'node_modules', 'electron'));

const WHY = 'not run: node_modules/electron has no binary, whose download is outside the package registry';
test.runIf(binary === null)(`the real Electron was ${WHY}`, ({ skip }) => {
  skip(WHY);
});

describe.runIf(binary !== null)('the real Electron', () => {
  let folder = '';
  let display: Display | null = null;
  let program: ElectronApplication | null = null;

  beforeAll(async () => {
    await ensureBuilt(() => undefined);
    if (process.platform === 'linux' && !process.env['DISPLAY'] && !process.env['WAYLAND_DISPLAY']) {
      display = await startVirtualDisplay();
    }
    return () => display?.close();
  });
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'loftledger-electron-'));
  });
  afterEach(async () => {
    await program?.close();
    program = null;
    rmSync(folder, { recursive: true, force: true });
  });

  async function start(): Promise<Page> {
    const asRoot = process.platform === 'linux' && process.getuid?.() === 0;
    program = await _electron.launch({
      executablePath: binary ?? '',
      args: [...(asRoot ? ['--no-sandbox'] : []), ROOT, '--data', folder],
      env: { ...(display?.env ?? process.env), INIT_CWD: folder } as Record<string, string>,
    });
    const page = await program.firstWindow();
    await page.getByRole('heading', { level: 1 }).waitFor();
    return page;
  }

  type Asked = { loftledger: { call(request: { call: string; args: unknown }): Promise<unknown> } };
  const ask = (page: Page, call: string, args: unknown) =>
    page.evaluate((request) => (globalThis as unknown as Asked).loftledger.call(request), { call, args });

  test('paints from app://, answers calls, and keeps them for the next start', async () => {
    const page = await start();
    expect(page.url()).toMatch(/^app:\/\/loftledger\//);
    expect(await ask(page, 'players.openDemo', { demo: 'invented-bag' })).toMatchObject({ ok: true });
    await program?.close();
    const again = await start();
    expect(await ask(again, 'players.roster', {})).toMatchObject({
      ok: true,
      value: [{ clubs: expect.any(Number) as unknown }],
    });
  });

  test('gives the page nothing but the bridge', async () => {
    const page = await start();
    const found = await page.evaluate(() => ({
      require: typeof (globalThis as Record<string, unknown>)['require'],
      process: typeof (globalThis as Record<string, unknown>)['process'],
      bridge: Object.keys((globalThis as unknown as Asked).loftledger).sort(),
    }));
    expect(found).toEqual({ require: 'undefined', process: 'undefined', bridge: ['call', 'onEvent'] });
  });

  test('lets the page go nowhere: no other page, no window, no request, no permission', async () => {
    const page = await start();
    const url = page.url();
    const tried = await page.evaluate(async () => {
      const fetched = await fetch('https://example.org/').then(
        () => 'fetched',
        () => 'refused',
      );
      const opened = window.open('https://example.org/');
      const permission = await navigator.permissions.query({ name: 'geolocation' });
      location.href = 'https://example.org/';
      await new Promise((done) => setTimeout(done, 500));
      return { fetched, opened: opened === null, permission: permission.state };
    });
    expect(tried).toEqual({ fetched: 'refused', opened: true, permission: 'denied' });
    expect(page.url()).toBe(url);
    expect(program?.windows()).toHaveLength(1);
  });

  test('is loaded anew after a crash, notes it, and has lost nothing', async () => {
    const page = await start();
    await ask(page, 'players.openDemo', { demo: 'invented-bag' });
    await program?.evaluate(({ BrowserWindow }) => {
      BrowserWindow.getAllWindows()[0]?.webContents.forcefullyCrashRenderer();
    });
    const log = join(folder, LOG_FOLDER, LOG_FILE);
    await expect.poll(() => readFileSync(log, 'utf8'), { timeout: 10_000 }).toContain('window-gone');
    const painted = async () =>
      program?.evaluate(({ BrowserWindow }) =>
        BrowserWindow.getAllWindows()[0]?.webContents.executeJavaScript(
          'document.querySelector("h1") !== null',
        ),
      );
    await expect.poll(painted, { timeout: 20_000 }).toBe(true);
  });
});
