import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ensureBuilt } from '../../../build/ensure-built.mjs';
import { makeTempDir } from '../../unit/browser-host/kit.ts';

/**
 * The built Electron entry with the real service, its worker and its database, on a fake Electron: no binary is
 * needed. The real Electron is run by the packaging's own check, where there is one.
 */
const ROOT = resolve(import.meta.dirname, '..', '..', '..');
const HOOKS = join(import.meta.dirname, 'host-electron-hooks.ts');

const temp = makeTempDir();
beforeAll(async () => {
  await ensureBuilt(() => undefined);
});
afterAll(() => temp.remove());

/** With a window the fake runs on until it is ended. */
function start(argv: string[], env: Record<string, string> = {}) {
  const entry = join(ROOT, 'out', 'main', 'main.js');
  // Electron's argv has the project folder before the user's words; Node's has the entry there.
  return spawnSync(process.execPath, ['--import', HOOKS, entry, ...argv], {
    encoding: 'utf8',
    cwd: temp.dir,
    env: { ...process.env, INIT_CWD: temp.dir, ...env },
  });
}

describe('the Electron entry', () => {
  it('sets everything up in order, answers the page, and takes all down again', () => {
    const run = start(['--check', '--data', join(temp.dir, 'data')]);
    expect(run.status, run.stderr).toBe(0);
    expect(JSON.parse(run.stdout)).toMatchObject({
      host: 'electron',
      readyMs: expect.any(Number) as unknown,
    });
    const steps = JSON.parse(run.stderr.trim().split('\n').at(-1) ?? '') as string[];
    expect(steps.filter((step) => !step.startsWith('switch '))).toEqual([
      'sandbox',
      'scheme',
      'path userData',
      'ready',
      'requests locked',
      'serve app in loftledger',
      'window with preload.cjs',
      'contents locked',
      'ipc',
      'menu',
      'page 200',
      'plan answered',
      'ipc taken down',
      'exit 0',
    ]);
    expect(steps.indexOf('switch host-resolver-rules')).toBeLessThan(steps.indexOf('ready'));
    const log = readFileSync(join(temp.dir, 'data', 'logs', 'loftledger.log'), 'utf8');
    expect(log).toMatch(/ start host=electron program=0\.0\.0 .*\n.* end exitCode=0\n$/s);
  });

  it('gives files of its arguments, and those that the system hands over, to the window', () => {
    const names = ['given.json', 'clicked.loftledger'];
    for (const name of names) writeFileSync(join(temp.dir, name), '{}');
    const run = start(['--data', join(temp.dir, 'files'), 'given.json'], {
      FAKE_ELECTRON_OPENS: join(temp.dir, 'clicked.loftledger'),
      FAKE_ELECTRON_FILES: '2',
      FAKE_ELECTRON_CLOSES: '1',
    });
    expect(run.status, run.stderr).toBe(0);
    const steps = JSON.parse(run.stderr.trim().split('\n').at(-1) ?? '') as string[];
    expect(steps).toContain('file taken');
    expect(steps).toContain('opened clicked.loftledger given.json');
    for (const name of names) expect(steps).toContain(`recent ${name}`);
    // What has to be done before Electron is ready still is.
    for (const step of ['sandbox', 'scheme', 'path userData']) {
      expect(steps.indexOf(step)).toBeLessThan(steps.indexOf('ready'));
    }
  });

  it('is 2 for a file that is not there, with its path and what to do', () => {
    const run = start(['--data', join(temp.dir, 'typo'), 'typo.loftledger']);
    expect(run.status).toBe(2);
    expect(run.stderr).toContain('typo.loftledger: there is no such file. Check the path.');
    expect(existsSync(join(temp.dir, 'typo'))).toBe(false);
  });

  it('refuses what it does not understand with the usage', () => {
    const run = start(['--wat']);
    expect(run.status).toBe(2);
    expect(run.stderr).toContain('--no-window');
    expect(run.stdout).toBe('');
  });
});
