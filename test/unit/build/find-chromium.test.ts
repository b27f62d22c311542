import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { findChromium } from '../../../build/find/find-chromium.mjs';
import { findElectron } from '../../../build/find/find-electron.mjs';
import { makeTempDir } from '../browser-host/kit.ts';

const only =
  (...files: string[]) =>
  (file: string) =>
    files.includes(file);

describe('findChromium', () => {
  it('prefers the one that was chosen, and takes no other in its place', () => {
    const env = { LOFTLEDGER_CHROMIUM: '/opt/mine', PATH: '/usr/bin' };
    const platform = 'linux';
    expect(findChromium({ env, platform, canRun: only('/opt/mine', '/usr/bin/chromium') })).toBe('/opt/mine');
    expect(findChromium({ env, platform, canRun: only('/usr/bin/chromium') })).toBeNull();
  });

  it('looks along PATH, by name before folder', () => {
    const env = { PATH: '/usr/local/bin:relative:/usr/bin' };
    const find = (...files: string[]) => findChromium({ env, platform: 'linux', canRun: only(...files) });
    expect(find('/usr/local/bin/google-chrome', '/usr/bin/chromium')).toBe('/usr/bin/chromium');
    expect(find('/usr/bin/google-chrome')).toBe('/usr/bin/google-chrome');
    expect(find('relative/chromium')).toBeNull();
    expect(find()).toBeNull();
  });

  it('knows the usual places of macOS and Windows', () => {
    const mac = '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome';
    expect(findChromium({ env: {}, platform: 'darwin', canRun: only(mac) })).toBe(mac);
    const edge = 'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe';
    const env = { 'ProgramFiles(x86)': 'C:\\Program Files (x86)' };
    expect(findChromium({ env, platform: 'win32', canRun: only(edge) })).toBe(edge);
  });
});

describe('findElectron', () => {
  it('wants the path file and the binary that it names', () => {
    const temp = makeTempDir();
    expect(findElectron(temp.dir)).toBeNull();
    writeFileSync(join(temp.dir, 'path.txt'), 'electron\n');
    expect(findElectron(temp.dir)).toBeNull();
    mkdirSync(join(temp.dir, 'dist'));
    writeFileSync(join(temp.dir, 'dist', 'electron'), '');
    expect(findElectron(temp.dir)).toBe(join(temp.dir, 'dist', 'electron'));
    temp.remove();
  });
});
