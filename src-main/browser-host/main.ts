import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { tryLock } from '../../db/files/lock.ts';
import { onLastResort } from '../host/faults/last-resort.ts';
import { createLog } from '../host/faults/log.ts';
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
  const log = createLog();
  log.note('start', {
    host: 'browser',
    program: version,
    platform: process.platform,
    arch: process.arch,
    node: process.versions.node,
  });
  const askedToEnd = new Promise<void>((end, fail) => {
    for (const signal of ['SIGTERM', 'SIGINT', 'SIGHUP'] as const) process.once(signal, () => end());
    onLastResort(process, log, (error) => fail(error instanceof Error ? error : new Error(String(error))));
  });
  // Heard of where the host waits for it; a start that is over by then does not mind.
  askedToEnd.catch(() => undefined);
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
    log,
    askedToEnd,
    sinceStartMs: () => performance.now() - startedMs,
  });
  log.note('end', { exitCode: code });
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
