import { app, dialog, Menu, session as sessions, shell, type BrowserWindow } from 'electron';
import { tryLock } from '../../db/files/lock.ts';
import type { Gate } from '../contract/gate.ts';
import type { Closers } from '../host/start/closers.ts';
import type { Log } from '../host/faults/log.ts';
import { chooseDataFolder } from '../host/start/data-folder.ts';
import type { StartOptions } from '../host/start/options.ts';
import { openAllForWindow } from '../host/start/opened-files.ts';
import { secondStart } from '../host/start/second-start.ts';
import { listenForOthers } from '../host/start/single-instance.ts';
import { readStaticFiles } from '../host/static-files.ts';
import { createService } from '../service/service.ts';
import { mountIpcGate } from './ipc-gate.ts';
import { lockAllContents, lockSession, PROCESS_SWITCHES } from './policy/lockdown.ts';
import { menuTemplate } from './window/menu.ts';
import type { FileEvents } from './open-files.ts';
import { openPagePrinter } from './page-printer.ts';
import { serveApp } from './policy/protocol.ts';
import { bringToFront, openWindow } from './window/window.ts';
import { watchChildren, watchWindow } from './window/window-health.ts';
import { hostWords } from './words.ts';

/** The steps of the Electron entry, one function each; main.ts has their order. */

export const say = (line: string): void => void process.stderr.write(`${line}\n`);

/** Before Electron is ready. */
export function setupProcess(log: Log): void {
  app.enableSandbox();
  for (const [name, value] of PROCESS_SWITCHES) app.commandLine.appendSwitch(name, value);
  lockAllContents(app, (url) => void shell.openExternal(url));
  watchChildren(app, log);
}

/** @returns null, with the exit code, when another start has the folder. */
export async function setupDataFolder(
  options: StartOptions,
  { log, closers }: { log: Log; closers: Closers },
): Promise<{ dataDir: string } | { exitCode: number }> {
  const dataDir = chooseDataFolder(options, closers);
  const lock = tryLock(dataDir);
  if (lock === null) return { exitCode: await secondStart(options, dataDir, say) };
  closers.add('the lock', () => lock.release());
  log.keepIn(dataDir);
  // Chromium's own files: private as the folder is, and not beside another program's.
  app.setPath('userData', `${dataDir}/window-profile`);
  return { dataDir };
}

export async function setupService(
  { dataDir, workerFile, log }: { dataDir: string; workerFile: URL; log: Log },
  closers: Closers,
): Promise<Gate> {
  const gate = await createService({
    ...{ dataDir, version: app.getVersion(), workerFile },
    openPrinter: openPagePrinter,
    // The folder is ours alone to name: no path comes from the window.
    host: { name: 'electron', openDataFolder: async () => (await shell.openPath(dataDir)) === '' },
    onFault: (error, what) => tellFault(log, error, what),
  });
  closers.add('the service', () => gate.close());
  return gate;
}

export type WindowParts = {
  gate: Gate;
  dataDir: string;
  rendererDir: string;
  preload: string;
  log: Log;
  closers: Closers;
  onPainted: () => void;
};

/** The session in memory: there is nothing of ours that it would have to keep. */
export function setupWindow(parts: WindowParts): { window: BrowserWindow; gaveUp: () => boolean } {
  const { gate, dataDir, rendererDir, preload, log, closers, onPainted } = parts;
  const onFault = (error: unknown) => tellFault(log, error, 'window');
  const session = sessions.fromPartition('loftledger');
  lockSession(session);
  serveApp(session, { gate, files: readStaticFiles(rendererDir), onPainted, onFault });
  const window = openWindow({ dataDir, preload, session });
  closers.add('the gate', mountIpcGate(gate, window.webContents, onFault));
  const words = hostWords(app.getLocale());
  const { gaveUp } = watchWindow(window, {
    ...{ log, words, nowMs: () => performance.now() },
    ask: async ({ signal, ...question }) =>
      (await dialog.showMessageBox(window, { ...question, signal, type: 'warning', noLink: true })).response,
    tell: (text) => dialog.showErrorBox('Loftledger', text),
  });
  return { window, gaveUp };
}

export function setupMenu(window: BrowserWindow): void {
  const isMac = process.platform === 'darwin';
  const press = (keyCode: string, modifiers: ('meta' | 'control' | 'shift')[]) => {
    window.webContents.sendInputEvent({ type: 'keyDown', keyCode, modifiers });
    window.webContents.sendInputEvent({ type: 'keyUp', keyCode, modifiers });
  };
  Menu.setApplicationMenu(
    Menu.buildFromTemplate(menuTemplate({ isMac, words: hostWords(app.getLocale()), press })),
  );
}

/** Shows what files would bring, and has the system list them as opened lately. */
export function openFiles(gate: Gate, files: readonly string[]): void {
  void openAllForWindow(gate, files);
  for (const file of files) app.addRecentDocument(file);
}

/** Later starts, and files that are opened while the program runs. */
export async function setupOthers(
  { gate, dataDir, fileEvents }: { gate: Gate; dataDir: string; fileEvents: FileEvents },
  window: BrowserWindow,
  closers: Closers,
): Promise<void> {
  const show = (files: readonly string[]) => {
    openFiles(gate, files);
    bringToFront(window);
  };
  fileEvents.onFile((file) => show([file]));
  const others = await listenForOthers(dataDir, ({ files }) => {
    show(files);
    return Promise.resolve('brought-to-front');
  });
  closers.add('the control socket', () => others.close());
}

/** Settles when the window has closed, by whatever way, or the system asks the program to end. */
export function untilClosed(window: BrowserWindow): Promise<void> {
  return new Promise((resolve) => {
    window.once('closed', () => resolve());
    for (const signal of ['SIGTERM', 'SIGINT', 'SIGHUP'] as const) process.once(signal, () => resolve());
  });
}

/**
 * Quitting waits until everything is closed.
 * @returns what ends the program, in the end.
 */
export function setupEnd(): (exitCode: number) => void {
  // Without a listener Electron would quit by itself; with it, main.ts does, when all is closed.
  app.on('window-all-closed', () => undefined);
  app.on('will-quit', (event) => event.preventDefault());
  return (exitCode) => app.exit(exitCode);
}

/** To whoever reads the terminal with its words, to the log without them. */
function tellFault(log: Log, error: unknown, what: string): void {
  log.fault(what, error);
  say(error instanceof Error ? (error.stack ?? error.message) : String(error));
}
