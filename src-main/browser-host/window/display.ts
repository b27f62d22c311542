import { spawn } from 'node:child_process';
import type { Readable } from 'node:stream';

/** Somewhere to show a window: its name for messages, the environment that leads there, and its end. */
export type Display = { name: string; env: NodeJS.ProcessEnv; close(): void };

/** @returns null on a Linux without a graphical session. */
export function presentDisplay(
  env: NodeJS.ProcessEnv = process.env,
  platform: NodeJS.Platform = process.platform,
): Display | null {
  const close = () => undefined;
  if (platform === 'win32' || platform === 'darwin') return { name: 'desktop', env, close };
  const name = env['WAYLAND_DISPLAY'] || env['DISPLAY'];
  return name ? { name, env, close } : null;
}

const READY_WITHIN_MS = 20_000;

/**
 * A display in memory, for a check on a machine without one. Takes the first free number itself.
 * @throws when Xvfb is missing or does not start.
 */
export async function startVirtualDisplay(env: NodeJS.ProcessEnv = process.env): Promise<Display> {
  const child = spawn('Xvfb', ['-displayfd', '3', '-screen', '0', '1440x1000x24', '-nolisten', 'tcp'], {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
  });
  const number = await new Promise<string>((resolve, reject) => {
    const timer = setTimeout(() => {
      child.kill();
      reject(new Error('Xvfb did not come up in 20 s.'));
    }, READY_WITHIN_MS);
    const fail = (why: string) => {
      clearTimeout(timer);
      reject(
        new Error(`There is no display, and Xvfb ${why}. Install it (on Debian: apt-get install xvfb).`),
      );
    };
    child.once('error', () => fail('cannot be started'));
    child.once('exit', (code) => fail(`ended with code ${String(code)}`));
    (child.stdio[3] as Readable).once('data', (bytes: Buffer) => {
      clearTimeout(timer);
      resolve(bytes.toString('ascii').trim());
    });
  });
  const { WAYLAND_DISPLAY: _wayland, ...rest } = env;
  return { name: `:${number} (Xvfb)`, env: { ...rest, DISPLAY: `:${number}` }, close: () => child.kill() };
}
