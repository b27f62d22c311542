import { spawn, type ChildProcess } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { startVirtualDisplay, type Display } from '../../../src-main/browser-host/window/display.ts';
import { makeRenderer, makeTempDir } from '../../unit/browser-host/kit.ts';

/** The browser host with its real window, in a real Chromium on a display in memory. */
const onLinux = process.platform === 'linux';
const CHILD = join(import.meta.dirname, 'host-window-child.ts');

let display: Display;
let temp: ReturnType<typeof makeTempDir>;
let rendererDir: string;
let dataDir: string;
let children: ChildProcess[];

beforeAll(async () => {
  if (onLinux) display = await startVirtualDisplay();
});
afterAll(() => display?.close());
beforeEach(() => {
  temp = makeTempDir();
  rendererDir = makeRenderer(temp.dir);
  dataDir = join(temp.dir, 'data');
  children = [];
});
afterEach(async () => {
  for (const child of children) child.kill('SIGKILL');
  await expect.poll(() => chromiums(), { timeout: 10_000 }).toEqual([]);
  temp.remove();
});

function start(argv: string[], env: NodeJS.ProcessEnv = display.env) {
  const child = spawn(process.execPath, [CHILD, rendererDir, ...argv], {
    env,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  children.push(child);
  const text = { out: '', err: '' };
  child.stdout.setEncoding('utf8').on('data', (part: string) => (text.out += part));
  child.stderr.setEncoding('utf8').on('data', (part: string) => (text.err += part));
  const code = new Promise<number | null>((resolve) => child.once('close', (status) => resolve(status)));
  return { child, text, code };
}

/** Process ids and command lines of the browser processes (not their helpers) that run on this test's data. */
function chromiums(): { pid: number; argv: string[] }[] {
  return readdirSync('/proc')
    .filter((name) => /^\d+$/.test(name))
    .flatMap((name) => {
      try {
        const argv = readFileSync(`/proc/${name}/cmdline`, 'utf8').split('\0');
        const ours = argv.includes(`--user-data-dir=${dataDir}/window-profile`);
        return ours && !argv.some((word) => word.startsWith('--type=')) ? [{ pid: Number(name), argv }] : [];
      } catch {
        return [];
      }
    });
}

/** The window is open once the launch page has been used and taken away. */
async function opened(): Promise<void> {
  const launchPage = join(dataDir, 'window-profile', 'launch.html');
  const isOpen = () => chromiums().length === 1 && !existsSync(launchPage);
  await expect.poll(isOpen, { timeout: 30_000 }).toBe(true);
}

describe.runIf(onLinux)('--check', () => {
  it('opens the window without a display, prints one line at its first paint, and leaves nothing behind', async () => {
    const before = readdirSync(tmpdir());
    const { DISPLAY: _display, WAYLAND_DISPLAY: _wayland, ...env } = process.env;
    const host = start(['--check'], env);
    expect(await host.code, host.text.err).toBe(0);
    const answer = JSON.parse(host.text.out) as Record<string, unknown>;
    expect(answer).toEqual({
      host: 'browser',
      display: expect.stringMatching(/^:\d+ \(Xvfb\)$/) as unknown,
      readyMs: expect.any(Number) as unknown,
    });
    const left = readdirSync(tmpdir()).filter((name) => name.startsWith('loftledger-check-'));
    expect(left.filter((name) => !before.includes(name))).toEqual([]);
  });

  it('says why and is 1 when the display cannot be reached', async () => {
    const { WAYLAND_DISPLAY: _wayland, ...env } = process.env;
    const host = start(['--check', '--data', dataDir], { ...env, DISPLAY: ':4999' });
    expect(await host.code).toBe(1);
    expect(host.text.out).toBe('');
    expect(host.text.err).toContain('cannot be reached');
  });

  it('says why and is 1 when the window never paints', async () => {
    // The own content security policy forbids inline scripts: a window that needs one never paints.
    const inline = '<script>fetch("/painted", { method: "POST" })</script>';
    writeFileSync(join(rendererDir, 'index.html'), `${inline}<script src="/assets/next.js"></script>`);
    const body = JSON.stringify({ call: 'loaded', args: {} });
    const call = { method: 'POST', headers: { 'Content-Type': 'application/json' }, body };
    writeFileSync(join(rendererDir, 'assets', 'next.js'), `fetch("/call", ${JSON.stringify(call)});`);
    const host = start(['--check', '--data', dataDir]);
    await expect.poll(() => host.text.err, { timeout: 30_000 }).toContain('called loaded');
    host.child.kill('SIGTERM');
    expect(await host.code).toBe(1);
    expect(host.text.out).toBe('');
    expect(host.text.err).toContain('before the window had painted');
  });
});

describe.runIf(onLinux)('the window', () => {
  it('gets the token by a private page that is gone once used, and not by its command line', async () => {
    const host = start(['--data', dataDir]);
    await expect.poll(() => chromiums().length, { timeout: 30_000 }).toBe(1);
    const argv = chromiums()[0]?.argv.join(' ') ?? '';
    expect(argv).toContain('--remote-debugging-pipe');
    expect(argv).not.toMatch(/token|http:\/\/127\.0\.0\.1:(?!1 )/);
    await opened();
    expect(statSync(dataDir).mode & 0o777).toBe(0o700);
    expect(statSync(join(dataDir, 'window-profile')).mode & 0o777).toBe(0o700);
    host.child.kill('SIGTERM');
    expect(await host.code).toBe(0);
    expect(chromiums()).toEqual([]);
    expect(readdirSync(dataDir).filter((name) => name.startsWith('window-profile'))).toEqual([]);
  });

  it('is brought to the front by a second start, which then ends', async () => {
    const first = start(['--data', dataDir]);
    await opened();
    const second = start(['--data', dataDir]);
    expect(await second.code).toBe(0);
    expect(second.text.err).toContain('brought to the front');
    expect(chromiums()).toHaveLength(1);
    first.child.kill('SIGTERM');
    expect(await first.code).toBe(0);
  });

  it('ends the program when it closes', async () => {
    const host = start(['--data', dataDir]);
    await opened();
    process.kill(chromiums()[0]?.pid ?? 0, 'SIGTERM');
    expect(await host.code).toBe(0);
    expect(existsSync(join(dataDir, 'window.sock'))).toBe(false);
  });

  it('goes when the program is killed, and what that left does not hinder the next start', async () => {
    const killed = start(['--data', dataDir]);
    await opened();
    killed.child.kill('SIGKILL');
    await expect.poll(() => chromiums(), { timeout: 10_000 }).toEqual([]);
    expect(existsSync(join(dataDir, 'window.sock'))).toBe(true);
    const next = start(['--check', '--data', dataDir]);
    expect(await next.code, next.text.err).toBe(0);
  });
});
