import { chmodSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { folderOpener } from '../../../../src-main/browser-host/window/open-folder.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'loftledger-opener-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

/** A stand-in for the system's opener that notes what it was given. */
function opener(exitCode: number): NodeJS.ProcessEnv {
  const file = join(folder, 'xdg-open');
  writeFileSync(
    file,
    `#!/bin/sh\nprintf '%s\\n' "$#" "$1" > "${join(folder, 'asked')}"\nexit ${String(exitCode)}\n`,
  );
  chmodSync(file, 0o700);
  return { PATH: folder };
}

const asked = () => readFileSync(join(folder, 'asked'), 'utf8').split('\n');

test('shows the folder as one argument, whatever its name holds', async () => {
  const odd = join(folder, 'a b; touch "x" $(id)');
  const open = folderOpener(odd, { env: opener(0), hasDisplay: true, platform: 'linux' });
  expect(await open?.()).toBe(true);
  expect(asked().slice(0, 2)).toEqual(['1', odd]);
  expect(existsSync(join(folder, 'x'))).toBe(false);
});

test('says so where it failed', async () => {
  const open = folderOpener(folder, { env: opener(3), hasDisplay: true, platform: 'linux' });
  expect(await open?.()).toBe(false);
});

test('without a screen, or without an opener, there is none', () => {
  expect(folderOpener(folder, { env: opener(0), hasDisplay: false, platform: 'linux' })).toBeNull();
  expect(folderOpener(folder, { env: { PATH: '/nowhere' }, hasDisplay: true, platform: 'linux' })).toBeNull();
  expect(folderOpener(folder, { env: {}, hasDisplay: true, platform: 'linux' })).toBeNull();
  expect(folderOpener(folder, { env: opener(0), hasDisplay: true, platform: 'aix' })).toBeNull();
});
