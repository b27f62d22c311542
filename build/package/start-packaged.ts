import { spawn } from 'node:child_process';

const PATIENCE_MS = 120_000;

/**
 * Starts a packed program, which opens its window on an empty data folder, waits for the first paint and ends.
 * @returns its line {host, display, readyMs}
 * @throws Error when it does not end well in two minutes, or was not Electron's
 */
export async function startPackaged(program: string, patienceMs = PATIENCE_MS): Promise<{ readyMs: number }> {
  const child = spawn(program, ['--check'], { stdio: ['ignore', 'pipe', 'inherit'] });
  let stdout = '';
  child.stdout.setEncoding('utf8').on('data', (text: string) => (stdout += text));
  const timer = setTimeout(() => child.kill('SIGKILL'), patienceMs);
  const code = await new Promise((resolve, reject) => {
    child.once('error', reject);
    child.once('close', (exitCode, signal) => resolve(exitCode ?? signal));
  }).finally(() => clearTimeout(timer));
  if (code !== 0) throw new Error(`${program} --check ended with ${String(code)} and said: ${stdout}`);
  const line = stdout.trim().split('\n').at(-1) ?? '';
  const said: unknown = line.startsWith('{') ? JSON.parse(line) : null;
  if (!isReady(said))
    throw new Error(`${program} --check ended well but did not say that it was ready: ${stdout}`);
  return said;
}

function isReady(said: unknown): said is { host: 'electron'; readyMs: number } {
  if (typeof said !== 'object' || said === null) return false;
  return 'host' in said && said.host === 'electron' && 'readyMs' in said && typeof said.readyMs === 'number';
}

if (import.meta.main) {
  const program = process.argv[2];
  if (program === undefined) throw new Error('Usage: node build/package/start-packaged.ts PROGRAM');
  const { readyMs } = await startPackaged(program);
  console.log(`${program}: first paint after ${String(readyMs)} ms`);
}
