import { spawn } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

/** What the system shows a folder with; from memory. Each takes the folder as its only argument, without a shell. */
const OPENERS: Readonly<Partial<Record<NodeJS.Platform, string>>> = {
  darwin: 'open',
  linux: 'xdg-open',
  win32: 'explorer.exe',
};

/** An opener that has not failed by then has the folder open, or is still asking: it is not waited for. */
const WAIT_MS = 2_000;

/**
 * Shows one folder, always the same, in the system's own file manager.
 * @returns null where there is no screen or no such program.
 */
export function folderOpener(
  folder: string,
  { env, hasDisplay, platform = process.platform }: Where,
): (() => Promise<boolean>) | null {
  const name = OPENERS[platform];
  const program = name === undefined || !hasDisplay ? null : onPath(name, env);
  return program === null ? null : () => opened(program, folder, env, platform);
}

type Where = { env: NodeJS.ProcessEnv; hasDisplay: boolean; platform?: NodeJS.Platform };

function onPath(name: string, env: NodeJS.ProcessEnv): string | null {
  for (const dir of (env['PATH'] ?? '').split(delimiter)) {
    if (dir === '') continue;
    const file = join(dir, name);
    try {
      accessSync(file, constants.X_OK);
      return file;
    } catch {
      // Not here: the next one.
    }
  }
  return null;
}

function opened(
  program: string,
  folder: string,
  env: NodeJS.ProcessEnv,
  platform: NodeJS.Platform,
): Promise<boolean> {
  return new Promise((done) => {
    const child = spawn(program, [folder], { env, stdio: 'ignore', detached: true });
    const timer = setTimeout(() => done(true), WAIT_MS);
    const end = (isOpen: boolean) => {
      clearTimeout(timer);
      done(isOpen);
    };
    child.once('error', () => end(false));
    // Windows' own ends with 1 also when it has opened the folder (from memory).
    child.once('exit', (code) => end(code === 0 || platform === 'win32'));
    child.unref();
  });
}
