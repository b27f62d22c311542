import type { Log } from './log.ts';

/** As much of Node's process as is listened to. */
type Listens = {
  on(event: 'uncaughtException' | 'unhandledRejection', told: (error: unknown) => void): unknown;
};

/**
 * An error that nobody caught: nothing in this process can be relied on any more. It is noted, and `end` ends the
 * program in good order, once; every edit is saved as it is made. Without this Node ends at once, without a word in the
 * log, and Electron shows a box and goes on.
 */
export function onLastResort(process: Listens, log: Log, end: (error: unknown) => void): void {
  let ended = false;
  const told = (what: string) => (error: unknown) => {
    log.fault(what, error);
    if (ended) return;
    ended = true;
    end(error);
  };
  process.on('uncaughtException', told('uncaught'));
  process.on('unhandledRejection', told('unhandled'));
}
