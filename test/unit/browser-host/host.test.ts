import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { tryLock } from '../../../db/files/lock.ts';
import { runHost, type HostParts } from '../../../src-main/browser-host/host.ts';
import { presentDisplay } from '../../../src-main/browser-host/window/display.ts';
import { whyItEnded } from '../../../src-main/browser-host/window/window.ts';
import { createLog } from '../../../src-main/host/faults/log.ts';
import { fakeGate, makeRenderer, makeTempDir } from './kit.ts';

let temp: ReturnType<typeof makeTempDir>;
let rendererDir: string;
beforeEach(() => {
  temp = makeTempDir();
  rendererDir = makeRenderer(temp.dir);
});
afterEach(() => temp.remove());

/** A start without Chromium and without a display, which the test ends. */
function start(argv: string[], change: Partial<HostParts> = {}) {
  const gate = fakeGate();
  const printed: string[] = [];
  const said: string[] = [];
  const end = Promise.withResolvers<undefined>();
  const code = runHost({
    argv,
    env: { PATH: '' },
    standsIn: temp.dir,
    rendererDir,
    version: '0.0.0',
    chromium: null,
    createGate: () => Promise.resolve(gate),
    tryLock,
    print: (line) => printed.push(line),
    say: (line) => said.push(line),
    log: createLog(),
    askedToEnd: end.promise.then(() => undefined),
    sinceStartMs: () => 0,
    ...change,
  });
  return { gate, printed, said, code, end: () => end.resolve(undefined) };
}

describe('the log', () => {
  it('has the mode and faults by their place, never by their words', async () => {
    const log = createLog();
    const host = start(['--no-window', '--data', 'd'], {
      log,
      createGate: ({ onFault }) => {
        onFault(new Error('cannot plan for Ada Lovelace'), 'answers.plan');
        return Promise.resolve(fakeGate());
      },
    });
    await expect.poll(() => host.printed.length).toBe(1);
    host.end();
    expect(await host.code).toBe(0);
    const text = readFileSync(join(temp.dir, 'd', 'logs', 'loftledger.log'), 'utf8');
    expect(text).toMatch(/ mode mode=no-window\n/);
    expect(text).toMatch(/ fault in=answers\.plan kind=Error at=/);
    expect(text).not.toContain('Ada');
    // Who reads the terminal is told in full.
    expect(host.said.join()).toContain('Ada');
  });

  it('has an error that nobody caught, which ends the program with 1, everything closed', async () => {
    const log = createLog();
    const broken = Promise.withResolvers<undefined>();
    const host = start(['--no-window', '--data', 'd'], { log, askedToEnd: broken.promise });
    await expect.poll(() => host.printed.length).toBe(1);
    broken.reject(new TypeError('x is undefined'));
    expect(await host.code).toBe(1);
    expect(host.gate.closed).toBe(true);
    expect(readFileSync(join(temp.dir, 'd', 'logs', 'loftledger.log'), 'utf8')).toContain(
      'fault in=run kind=TypeError',
    );
  });
});

describe('without a window', () => {
  it('prints one line with the host and the address, and ends when asked, everything closed', async () => {
    const host = start(['--no-window', '--data', 'd']);
    await expect.poll(() => host.printed.length).toBe(1);
    const line = JSON.parse(host.printed[0] ?? '') as { host: string; url: string };
    expect(Object.keys(line)).toEqual(['host', 'url']);
    expect(line.host).toBe('browser');
    const answer = await fetch(line.url);
    expect(answer.status).toBe(200);
    expect(answer.headers.get('set-cookie')).toContain('HttpOnly');
    host.end();
    expect(await host.code).toBe(0);
    expect(host.gate.closed).toBe(true);
    expect(host.printed).toHaveLength(1);
    await expect(fetch(line.url)).rejects.toThrow();
    expect(existsSync(join(temp.dir, 'd', 'window.sock'))).toBe(false);
    const lock = tryLock(join(temp.dir, 'd'));
    expect(lock).not.toBeNull();
    lock?.release();
  });

  it.runIf(process.platform === 'linux')(
    'is what a machine without a display gets, and is told so',
    async () => {
      const host = start(['--data', 'd']);
      await expect.poll(() => host.printed.length).toBe(1);
      expect(host.said.join()).toContain('no display');
      host.end();
      expect(await host.code).toBe(0);
    },
  );
});

describe('a second start on the same data', () => {
  it('says so and leaves the first alone', async () => {
    const first = start(['--no-window', '--data', 'd']);
    await expect.poll(() => first.printed.length).toBe(1);
    const windowed = start(['--data', 'd'], { env: { DISPLAY: ':9' } });
    expect(await windowed.code).toBe(0);
    expect(windowed.said.join()).toContain('without a window');
    const served = start(['--no-window', '--data', 'd']);
    expect(await served.code).toBe(1);
    expect(served.printed).toEqual([]);
    expect(served.said.join()).toContain('--data');
    first.end();
    expect(await first.code).toBe(0);
  });
});

describe('a start with files', () => {
  const file = (name: string) => {
    writeFileSync(join(temp.dir, name), 'x');
    return name;
  };

  it('opens them in the window, in their order', async () => {
    const host = start(['--no-window', '--data', 'd', file('b.loftledger'), file('a.json')]);
    await expect.poll(() => host.gate.opened).toEqual(['b.loftledger', 'a.json']);
    host.end();
    expect(await host.code).toBe(0);
  });

  it('that is the second opens them in the first, also where the display is another', async () => {
    const first = start(['--no-window', '--data', 'd']);
    await expect.poll(() => first.printed.length).toBe(1);
    const second = start(['--data', 'd', file('b.loftledger')]);
    expect(await second.code).toBe(0);
    expect(second.said.join()).toContain('Its page shows what was opened.');
    await expect.poll(() => first.gate.opened).toEqual(['b.loftledger']);
    const served = start(['--no-window', '--data', 'd', 'b.loftledger']);
    expect(await served.code).toBe(1);
    expect(first.gate.opened).toHaveLength(1);
    first.end();
    await first.code;
  });

  it('that are not there, or no files, is 2 with path and remedy, and touches nothing', async () => {
    for (const [name, words] of [
      ['typo.loftledger', 'typo.loftledger: there is no such file. Check the path.'],
      ['.', 'it is a folder'],
    ] as const) {
      const host = start(['--data', 'd', name]);
      expect(await host.code).toBe(2);
      expect(host.said.join()).toContain(words);
    }
    expect(existsSync(join(temp.dir, 'd'))).toBe(false);
  });
});

describe('what cannot be', () => {
  it('a command line that is not understood is 2, with the usage, and touches nothing', async () => {
    const host = start(['--nowindow', '--data', 'd']);
    expect(await host.code).toBe(2);
    expect(host.said.join()).toContain('npm start -- [--no-window');
    expect(host.printed).toEqual([]);
    expect(existsSync(join(temp.dir, 'd'))).toBe(false);
  });

  it('help is 0, on standard output', async () => {
    const host = start(['--help']);
    expect(await host.code).toBe(0);
    expect(host.printed.join()).toContain('--check');
  });

  it('a service that cannot open is 1, with its words and its remedy, and the lock is free again', async () => {
    const error = Object.assign(new Error('d/loftledger.db: this file is from a newer Loftledger'), {
      remedy: 'Install the newer version.',
    });
    const host = start(['--no-window', '--data', 'd'], { createGate: () => Promise.reject(error) });
    expect(await host.code).toBe(1);
    expect(host.said).toEqual([`${error.message}. Install the newer version.`]);
    tryLock(join(temp.dir, 'd'))?.release();
  });

  it('a window without Chromium is 1, and says what to install', async () => {
    const host = start(['--data', 'd'], { env: { DISPLAY: ':9' } });
    expect(await host.code).toBe(1);
    expect(host.said.join()).toContain('apt-get install chromium');
    expect(host.gate.closed).toBe(true);
  });

  it('a window that has not been built is 1', async () => {
    const host = start(['--no-window', '--data', 'd'], { rendererDir: join(temp.dir, 'd') });
    expect(await host.code).toBe(1);
    expect(host.said.join()).toContain('npm run build');
  });
});

describe('presentDisplay', () => {
  it('is what the session names, or the desktop where there is always one', () => {
    expect(presentDisplay({ DISPLAY: ':0' }, 'linux')?.name).toBe(':0');
    expect(presentDisplay({ DISPLAY: ':0', WAYLAND_DISPLAY: 'wayland-1' }, 'linux')?.name).toBe('wayland-1');
    expect(presentDisplay({ DISPLAY: '' }, 'linux')).toBeNull();
    expect(presentDisplay({}, 'darwin')?.name).toBe('desktop');
    expect(presentDisplay({}, 'win32')?.name).toBe('desktop');
  });
});

describe('whyItEnded', () => {
  it('says what can be done about the known reasons, and repeats the others', () => {
    const end = { code: 1, signal: null };
    expect(whyItEnded({ ...end, lastWords: 'Missing X server or $DISPLAY' })).toContain('--no-window');
    expect(whyItEnded({ ...end, lastWords: 'FATAL: No usable sandbox! ...' })).toContain('user namespaces');
    expect(whyItEnded({ ...end, lastWords: 'no such library' })).toContain(
      '(code 1). It last said:\nno such library',
    );
    expect(whyItEnded({ code: null, signal: 'SIGSEGV', lastWords: '' })).toBe(
      'Chromium ended (signal SIGSEGV).',
    );
  });
});
