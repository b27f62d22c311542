import { spawn, type ChildProcess } from 'node:child_process';
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';
import type { Readable, Writable } from 'node:stream';
import { openChromiumPipe, type ChromiumPipe } from '../../host/chromium/chromium-pipe.ts';
import { CHROMIUM_PREFERENCES, chromiumArguments } from './chromium-arguments.ts';
import { writeLaunchPage } from '../http/launch-page.ts';
import { closeBrowser } from './window-control.ts';
import type { WindowPlace } from '../../host/window-place.ts';

export type ChromiumWindow = {
  pipe: ChromiumPipe;
  /** The launch page has been used: takes it away. */
  forgetLaunchPage(): void;
  /** Settles when Chromium has ended, which it does when its window closes. */
  ended: Promise<ChromiumEnd>;
  close(): Promise<void>;
};

/** @property lastWords what it last said on its error stream, for a start that failed. */
export type ChromiumEnd = { code: number | null; signal: string | null; lastWords: string };

export type ChromiumOptions = {
  binary: string;
  dataDir: string;
  openUrl: string;
  place: WindowPlace | null;
  env: NodeJS.ProcessEnv;
  asRoot: boolean;
};

const CLOSE_WITHIN_MS = 3_000;
const LAST_WORDS = 2_000;

/** Opens the window in a new, private profile, which is gone again when it has closed. */
export function openChromium(options: ChromiumOptions): ChromiumWindow {
  const profileDir = makeProfile(profileParent(options.binary, options.dataDir));
  const launchPage = writeLaunchPage(profileDir, options.openUrl);
  const { place, asRoot } = options;
  const child = spawn(options.binary, chromiumArguments({ profileDir, launchPage, place, asRoot }), {
    env: options.env,
    stdio: ['ignore', 'ignore', 'pipe', 'pipe', 'pipe'],
  });
  const pipe = openChromiumPipe(child.stdio[3] as Writable, child.stdio[4] as Readable);
  const ended = endOf(child).finally(() => removeProfile(profileDir));
  return {
    pipe,
    forgetLaunchPage: () => rmSync(launchPage, { force: true }),
    ended,
    async close() {
      // It may be half started, or hang: asked first, then ended.
      closeBrowser(pipe).catch(() => child.kill());
      const timer = setTimeout(() => child.kill('SIGKILL'), CLOSE_WITHIN_MS);
      await ended;
      clearTimeout(timer);
    },
  };
}

function endOf(child: ChildProcess): Promise<ChromiumEnd> {
  let lastWords = '';
  child.stderr?.setEncoding('utf8').on('data', (text: string) => {
    lastWords = (lastWords + text).slice(-LAST_WORDS);
  });
  return new Promise((resolve) => {
    child.once('error', (error) => resolve({ code: null, signal: null, lastWords: error.message }));
    child.once('exit', (code, signal) => resolve({ code, signal, lastWords }));
  });
}

/**
 * Chromium as a snap may not read hidden folders of the home folder, where the data is; its own folder it may.
 */
export function profileParent(binary: string, dataDir: string, home = homedir()): string {
  return binary.startsWith('/snap/') ? join(home, 'snap', 'chromium', 'common', 'loftledger') : dataDir;
}

/** One that an unclean end left behind is thrown away: the instance lock is ours, so nobody uses it. */
function makeProfile(parent: string): string {
  const profileDir = join(parent, 'window-profile');
  removeProfile(profileDir);
  mkdirSync(join(profileDir, 'Default'), { recursive: true, mode: 0o700 });
  const preferences = JSON.stringify(CHROMIUM_PREFERENCES);
  writeFileSync(join(profileDir, 'Default', 'Preferences'), preferences, { mode: 0o600 });
  return profileDir;
}

/** Chromium's helpers may still be writing for a moment after its end. */
function removeProfile(profileDir: string): void {
  rmSync(profileDir, { recursive: true, force: true, maxRetries: 5, retryDelay: 50 });
}
