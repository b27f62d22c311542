import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { tryLock } from '../../db/lock.ts';
import { runHost } from './host.ts';

const ROOT = resolve(import.meta.dirname, '..', '..');

/**
 * The browser host with the real service, in this process.
 * @param chromium its binary, or null where there is none.
 * @param startedMs on performance.now()'s clock, where a start that had to build first begins to count.
 * @returns the exit code.
 */
export async function main(
  argv: readonly string[],
  { chromium, startedMs = 0 }: { chromium: string | null; startedMs?: number },
): Promise<number> {
  const packageFile = readFileSync(resolve(ROOT, 'package.json'), 'utf8');
  const { version } = JSON.parse(packageFile) as { version: string };
  const code = await runHost({
    argv,
    env: process.env,
    standsIn: process.env['INIT_CWD'] ?? process.cwd(),
    rendererDir: resolve(ROOT, 'out', 'renderer'),
    version,
    chromium,
    // Loaded while the window comes up: it is most of the program.
    createGate: async (options) => (await import('../service/service.ts')).createService(options),
    tryLock,
    print: (line) => void process.stdout.write(`${line}\n`),
    say: (line) => void process.stderr.write(`${line}\n`),
    askedToEnd: new Promise((end) => {
      for (const signal of ['SIGTERM', 'SIGINT', 'SIGHUP'] as const) process.once(signal, () => end());
    }),
    sinceStartMs: () => performance.now() - startedMs,
  });
  endSoon();
  return code;
}

const END_WITHIN_MS = 5_000;

/** Everything is closed now. Should something hold the process all the same, it says so rather than hang. */
function endSoon(): void {
  setTimeout(() => {
    process.stderr.write(`Ended by force; still open: ${process.getActiveResourcesInfo().join(', ')}.\n`);
    process.exit();
  }, END_WITHIN_MS).unref();
}

if (import.meta.main) {
  process.exitCode = await main(process.argv.slice(2), {
    chromium: process.env['LOFTLEDGER_CHROMIUM'] ?? null,
  });
}
