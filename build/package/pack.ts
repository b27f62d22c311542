import { spawn } from 'node:child_process';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

export const ROOT = join(import.meta.dirname, '..', '..');

export type Finished = { exitCode: number; output: string };

/**
 * Runs electron-builder with our table. Its words are collected, and shown as they come where `show` says so.
 * @param args targets and overrides, as on its command line
 */
export function pack(args: readonly string[], { show = false, env = {} } = {}): Promise<Finished> {
  const cli = join(
    dirname(createRequire(import.meta.url).resolve('electron-builder/package.json')),
    'cli.js',
  );
  const config = join(import.meta.dirname, 'electron-builder.mjs');
  return run([cli, '--config', config, '--publish', 'never', ...args], { show, env });
}

/** Runs Node on a file in the project's folder. */
export function run(
  args: readonly string[],
  { show = false, env = {} as Record<string, string> } = {},
): Promise<Finished> {
  const child = spawn(process.execPath, args, {
    cwd: ROOT,
    env: { ...process.env, ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let output = '';
  for (const stream of [child.stdout, child.stderr]) {
    stream.setEncoding('utf8').on('data', (text: string) => {
      output += text;
      if (show) process.stderr.write(text);
    });
  }
  return new Promise((resolve, reject) => {
    child.once('error', reject);
    child.once('close', (code) => resolve({ exitCode: code ?? 1, output }));
  });
}
