import type { App, BrowserWindow } from 'electron';
import type { Log } from '../../host/faults/log.ts';
import type { HostWords } from '../words.ts';

export type HealthParts = {
  log: Log;
  words: HostWords;
  /** Asks in a box of the window. @returns the button's number; rejects when `signal` withdraws the question. */
  ask: (question: {
    message: string;
    detail: string;
    buttons: string[];
    signal: AbortSignal;
  }) => Promise<number>;
  /** Tells in a box, and returns when it is closed. */
  tell: (text: string) => void;
  nowMs: () => number;
};

/** More crashes than this within a minute will not stop by loading anew. */
const MOST_RELOADS = 3;
const WITHIN_MS = 60_000;

/**
 * What is done when the window crashes or does not answer. Everything is saved as it is entered, so a crashed page is
 * loaded anew, but not for ever; of one that hangs the user decides.
 * @returns whether it was given up, for the exit code.
 */
export function watchWindow(window: BrowserWindow, parts: HealthParts): { gaveUp: () => boolean } {
  const { log, words, ask, tell, nowMs } = parts;
  let crashes: number[] = [];
  let gaveUp = false;
  let question: AbortController | null = null;

  const withdraw = () => {
    question?.abort();
    question = null;
  };
  window.webContents.on('render-process-gone', (_event, { reason, exitCode }) => {
    withdraw();
    log.note('window-gone', { reason, exitCode });
    if (reason === 'clean-exit' || gaveUp) return;
    const now = nowMs();
    crashes = [...crashes.filter((at) => now - at < WITHIN_MS), now];
    if (crashes.length <= MOST_RELOADS) {
      window.reload();
      return;
    }
    gaveUp = true;
    tell(words.crashed);
    window.destroy();
  });

  window.on('unresponsive', () => {
    if (question !== null) return;
    log.note('window-unresponsive');
    const asked = new AbortController();
    question = asked;
    const { unresponsive: message, unresponsiveDetail: detail, wait, reload } = words;
    ask({ message, detail, buttons: [wait, reload], signal: asked.signal }).then(
      (button) => {
        if (question !== asked) return;
        question = null;
        log.note('window-asked', { answer: button === 1 ? 'reload' : 'wait' });
        // A page that hangs does not reload: its process is ended, which loads it anew (above).
        if (button === 1) window.webContents.forcefullyCrashRenderer();
      },
      () => undefined,
    );
  });
  window.on('responsive', () => {
    log.note('window-responsive');
    withdraw();
  });
  return { gaveUp: () => gaveUp };
}

/** Chromium's other processes start again by themselves; that they fell over is worth a line. */
export function watchChildren(app: Pick<App, 'on'>, log: Log): void {
  app.on('child-process-gone', (_event, { type, reason, exitCode, name, serviceName }) => {
    log.note('child-gone', { type: type.replaceAll(' ', '-'), reason, exitCode, name: serviceName ?? name });
  });
}
