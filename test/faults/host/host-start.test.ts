import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { ensureBuilt } from '../../../build/ensure-built.mjs';
import { findElectron } from '../../../build/find/find-electron.mjs';
import { makeTempDir } from '../../unit/browser-host/kit.ts';

/** `npm start` itself, without npm: the script, the real service and the real window. */
const ROOT = resolve(import.meta.dirname, '..', '..', '..');
const hasElectron = findElectron(join(ROOT, 'node_modules', 'electron')) !== null;

let temp: ReturnType<typeof makeTempDir>;
beforeAll(async () => {
  await ensureBuilt(() => undefined);
});
beforeEach(() => (temp = makeTempDir()));
afterEach(() => temp.remove());

function start(...argv: string[]) {
  const env = { ...process.env, INIT_CWD: temp.dir };
  const child = spawn(process.execPath, [join(ROOT, 'build', 'start.mjs'), ...argv], { env, cwd: ROOT });
  const text = { out: '', err: '' };
  child.stdout.setEncoding('utf8').on('data', (part: string) => (text.out += part));
  child.stderr.setEncoding('utf8').on('data', (part: string) => (text.err += part));
  const code = new Promise<number | null>((end) => child.once('close', (status) => end(status)));
  return { child, text, code };
}

describe('npm start', () => {
  it('--no-window prints one line, says which host it is and why, serves the window and the calls, ends on SIGTERM', async () => {
    const host = start('--no-window', '--data', 'mine');
    await expect.poll(() => host.text.out, { timeout: 30_000 }).toContain('\n');
    const { url } = JSON.parse(host.text.out) as { url: string };
    const { origin } = new URL(url);
    const opened = await fetch(url);
    const cookie = opened.headers.get('set-cookie')?.split(';')[0] ?? '';
    const page = await fetch(origin, { headers: { Cookie: cookie } });
    expect(await page.text()).toContain('<title>Loftledger');
    const call = await fetch(`${origin}/call`, {
      method: 'POST',
      headers: { Cookie: cookie, Origin: origin, 'Content-Type': 'application/json' },
      body: JSON.stringify({ call: 'history.state', args: {} }),
    });
    expect(await call.json()).toEqual({ ok: true, value: { undo: null, redo: null } });
    host.child.kill('SIGTERM');
    expect(await host.code).toBe(0);
    expect(host.text.out.trim().split('\n')).toHaveLength(1);
    expect(host.text.err).toMatch(/running on the browser host.*, since /);
    expect(existsSync(join(temp.dir, 'mine', 'loftledger.db'))).toBe(true);
  });

  it.runIf(process.platform === 'linux')('--check opens the real window and prints its line', async () => {
    const host = start('--check');
    expect(await host.code, host.text.err).toBe(0);
    expect(JSON.parse(host.text.out)).toEqual({
      host: hasElectron ? 'electron' : 'browser',
      display: expect.any(String) as unknown,
      readyMs: expect.any(Number) as unknown,
    });
  });

  it('is 2 with the usage for what it does not understand, and 0 for --help', async () => {
    const wrong = start('--wat');
    expect(await wrong.code).toBe(2);
    expect([wrong.text.out, wrong.text.err.includes('--no-window')]).toEqual(['', true]);
    const help = start('--help');
    expect(await help.code).toBe(0);
    expect(help.text.out).toContain('--no-window');
  });
});
