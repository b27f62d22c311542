import { spawnSync } from 'node:child_process';
import path from 'node:path';

const root = path.resolve(import.meta.dirname, '../..');

export type CliResult = { status: number | null; stdout: string; stderr: string };

/** Runs a command as `npm run` does: this Node, the source itself, paths from where the user stands. */
export function cli(
  words: readonly string[],
  options: { cwd?: string; input?: string | Buffer; env?: Record<string, string> } = {},
): CliResult {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['src-main/cli/main.ts', ...words], {
    cwd: root,
    env: { ...process.env, INIT_CWD: options.cwd ?? root, ...options.env },
    input: options.input ?? '',
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
  });
  return { status, stdout, stderr };
}
