import type { Gate } from '../contract/gate.ts';
import type { Asked } from '../host/start/asked.ts';
import { inTime } from '../host/in-time.ts';
import { plainText } from '../host/plain-text.ts';
import { openChromiumPrinter } from '../host/print/chromium-printer.ts';
import type { OpenPrinter } from '../service/handover/printer.ts';
import { createClosers, type Closers } from '../host/start/closers.ts';
import type { Log } from '../host/faults/log.ts';
import { chooseDataFolder } from '../host/start/data-folder.ts';
import { checkFiles, openAllForWindow, UnfitFile } from '../host/start/opened-files.ts';
import { secondStart } from '../host/start/second-start.ts';
import { deferredGate } from './deferred-gate.ts';
import { folderOpener } from './window/open-folder.ts';
import type { HostServices } from '../service/handler.ts';
import { presentDisplay, startVirtualDisplay, type Display } from './window/display.ts';
import { readStartOptions, USAGE, WrongUse, type StartOptions } from '../host/start/options.ts';
import { startLoopback } from './http/server.ts';
import { listenForOthers, type FirstSays } from '../host/start/single-instance.ts';
import { Unready, openWindow, whyItEnded } from './window/window.ts';

/** What the host is given, so that tests can give it something else. */
export type HostParts = {
  argv: readonly string[];
  env: NodeJS.ProcessEnv;
  /** The folder that the user stands in. */
  standsIn: string;
  /** The built window. */
  rendererDir: string;
  version: string;
  /** Chromium's binary, or null where there is none. */
  chromium: string | null;
  createGate: (options: {
    dataDir: string;
    version: string;
    openPrinter: OpenPrinter;
    host: HostServices;
    onFault: (error: unknown, what: string) => void;
  }) => Promise<Gate>;
  tryLock: (dataDir: string) => { release: () => void } | null;
  /** Standard output: only the answer of --check, --no-window and --help. */
  print: (line: string) => void;
  /** Everything else. */
  say: (line: string) => void;
  log: Log;
  /** Settles when the system asks the program to end; rejects with an error that nobody caught. */
  askedToEnd: Promise<void>;
  /** Milliseconds since the start of the process. */
  sinceStartMs: () => number;
};

const PAINT_WITHIN_MS = 60_000;

/** Runs the program to its end. @returns the exit code: 0 well, 1 not, 2 not understood. */
export async function runHost(parts: HostParts): Promise<number> {
  const { log, say } = parts;
  const closers = createClosers((what, error) => {
    log.fault(`closing ${what}`, error);
    say(`Closing ${what}: ${plainText(error)}`);
  });
  try {
    const options = readStartOptions(parts.argv, parts.standsIn);
    if (options.mode === 'help') {
      parts.print(USAGE);
      return 0;
    }
    return await run(parts, options, closers);
  } catch (error) {
    say(plainText(error));
    if (error instanceof WrongUse || error instanceof UnfitFile) return 2;
    log.fault('run', error);
    return 1;
  } finally {
    await closers.closeAll();
  }
}

async function run(parts: HostParts, options: StartOptions, closers: Closers): Promise<number> {
  const { say, print, log } = parts;
  const { files } = options;
  checkFiles(files);
  const display = await chooseDisplay(parts, options, closers);
  const mode = options.mode === 'window' && display === null ? 'no-window' : options.mode;

  const dataDir = chooseDataFolder(options, closers);
  const lock = parts.tryLock(dataDir);
  // Files are shown by the first, wherever its window is.
  if (lock === null) {
    return secondStart({ mode: files.length > 0 ? options.mode : mode, files }, dataDir, say);
  }
  closers.add('the lock', () => lock.release());
  log.keepIn(dataDir);
  log.note('mode', { mode });

  // To whoever reads the terminal with its words, to the log without them.
  const tellFault = (error: unknown, what: string) => {
    log.fault(what, error);
    say(error instanceof Error ? (error.stack ?? error.message) : String(error));
  };
  // Not awaited yet: the window comes up while the database opens.
  const opening = parts.createGate({
    ...{ dataDir, version: parts.version },
    openPrinter: () => openChromiumPrinter({ chromium: parts.chromium }),
    host: {
      name: 'browser',
      openDataFolder: folderOpener(dataDir, { env: parts.env, hasDisplay: mode === 'window' }),
    },
    onFault: tellFault,
  });
  closers.add('the service', async () => (await opening.catch(() => null))?.close());
  const gate = deferredGate(opening);
  void openAllForWindow(gate, files);

  // Set once there is a window; a second start may come before.
  let showWindow: (() => Promise<void>) | null = null;
  const onAsked = async (asked: Asked): Promise<FirstSays> => {
    // Not waited for: a large file takes longer than the second start waits.
    void openAllForWindow(gate, asked.files);
    await showWindow?.();
    return mode === 'no-window' ? 'has-no-window' : 'brought-to-front';
  };
  try {
    const others = await listenForOthers(dataDir, onAsked);
    closers.add('the control socket', () => others.close());
  } catch (error) {
    say(`A second start will not find this one (${plainText(error)}).`);
  }

  const painted = Promise.withResolvers<undefined>();
  const opened = Promise.withResolvers<undefined>();
  const loopback = await startLoopback({
    gate,
    rendererDir: parts.rendererDir,
    onPainted: () => painted.resolve(undefined),
    onOpened: () => opened.resolve(undefined),
    onFault: (error) => tellFault(error, 'window'),
  });
  closers.add('the server', () => loopback.close());

  if (mode === 'no-window' || display === null) {
    await opening;
    print(JSON.stringify({ host: 'browser', url: loopback.openUrl }));
    await parts.askedToEnd;
    return 0;
  }

  const window = openWindow({
    ...parts,
    display,
    dataDir,
    openUrl: loopback.openUrl,
    opened: opened.promise,
  });
  closers.add('the window', () => window.close());
  showWindow = () => window.bringToFront();
  await opening;
  if (mode === 'check') {
    const stopped = parts.askedToEnd.then(() => {
      throw new Unready('Asked to end before the window had painted.');
    });
    const first = Promise.race([painted.promise, window.failed, stopped]);
    await inTime(first, PAINT_WITHIN_MS, () => new Unready('The window did not paint within 60 s.'));
    const readyMs = Math.round(parts.sinceStartMs());
    print(JSON.stringify({ host: 'browser', display: display.name, readyMs }));
    return 0;
  }
  const end = await Promise.race([window.ended, parts.askedToEnd]);
  if (end) log.note('window-ended', { code: end.code, signal: end.signal });
  if (end && end.code !== 0) throw new Unready(whyItEnded(end));
  return 0;
}

/** @returns null where the program has to do without a window. */
async function chooseDisplay(
  parts: HostParts,
  options: StartOptions,
  closers: Closers,
): Promise<Display | null> {
  if (options.mode === 'no-window') return null;
  const present = presentDisplay(parts.env);
  if (present !== null || options.mode !== 'check') {
    if (present === null) {
      parts.say(
        'There is no display here (DISPLAY and WAYLAND_DISPLAY are not set): serving without a window.',
      );
    }
    return present;
  }
  const virtual = await startVirtualDisplay(parts.env);
  closers.add('the virtual display', () => virtual.close());
  return virtual;
}
