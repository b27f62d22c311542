import { Worker } from 'node:worker_threads';

/** After so long a case does not come back, and the whole run is ended with its name. */
const GIVEN_UP_MS = 30_000;

/**
 * A thread that ends the process when one case does not come back: nothing in this thread could.
 * @returns to be told before each case.
 */
export function watchdog(): { onCase: (target: string, number: number) => void; end: () => Promise<number> } {
  const code = `
    const { parentPort } = require('node:worker_threads');
    const { writeSync } = require('node:fs');
    let last = null;
    let since = Date.now();
    parentPort.on('message', (message) => { last = message; since = Date.now(); });
    setInterval(() => {
      if (last === null || Date.now() - since < ${String(GIVEN_UP_MS)}) return;
      writeSync(2, 'hangs: ' + last + '\\n');
      process.kill(process.pid, 'SIGKILL');
    }, 500);`;
  const worker = new Worker(code, { eval: true });
  worker.unref();
  let told = 0;
  return {
    onCase(target, number) {
      // Not each of the fast ones: the name of the last told is near enough to find it by.
      const now = performance.now();
      if (now - told < 5) return;
      told = now;
      worker.postMessage(`${target} ${String(number)} or soon after`);
    },
    end: () => worker.terminate(),
  };
}
