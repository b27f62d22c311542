import { app } from 'electron';
import {
  openFiles,
  say,
  setupDataFolder,
  setupEnd,
  setupMenu,
  setupOthers,
  setupProcess,
  setupService,
  setupWindow,
  untilClosed,
} from './electron-host/host.ts';
import { listenForFiles } from './electron-host/open-files.ts';
import { registerAppScheme } from './electron-host/policy/protocol.ts';
import { createClosers, type Closers } from './host/start/closers.ts';
import { inTime } from './host/in-time.ts';
import { onLastResort } from './host/faults/last-resort.ts';
import { createLog } from './host/faults/log.ts';
import { checkFiles, UnfitFile } from './host/start/opened-files.ts';
import { readStartOptions, USAGE, WrongUse } from './host/start/options.ts';
import { plainText } from './host/plain-text.ts';

/** The Electron entry: what is set up, in this order, and taken down again in the other. */

const BUILT = {
  rendererDir: `${import.meta.dirname}/../renderer`,
  preload: `${import.meta.dirname}/../preload/preload.cjs`,
  workerFile: new URL('./solve-worker.js', import.meta.url),
};

const fileEvents = listenForFiles(app);

async function run(closers: Closers): Promise<number> {
  const given = process.argv.slice(app.isPackaged ? 1 : 2);
  const options = readStartOptions(given, process.env['INIT_CWD'] ?? process.cwd());
  if (options.mode === 'help') {
    process.stdout.write(`${USAGE}\n`);
    return 0;
  }
  if (options.mode === 'no-window') throw new WrongUse('The Electron host has a window always.');
  checkFiles(options.files);
  setupProcess(log);
  registerAppScheme();
  const folder = await setupDataFolder(options, { log, closers });
  if ('exitCode' in folder) return folder.exitCode;
  const { dataDir } = folder;
  await app.whenReady();
  const gate = await setupService({ ...BUILT, dataDir, log }, closers);
  openFiles(gate, options.files);
  const painted = Promise.withResolvers<undefined>();
  const onPainted = () => painted.resolve(undefined);
  const { window, gaveUp } = setupWindow({ ...BUILT, gate, dataDir, log, closers, onPainted });
  setupMenu(window);
  await setupOthers({ gate, dataDir, fileEvents }, window, closers);
  if (options.mode === 'check') {
    await inTime(painted.promise, 60_000, () => new Error('The window did not paint within 60 s.'));
    const display = process.env['WAYLAND_DISPLAY'] ?? process.env['DISPLAY'] ?? 'desktop';
    const readyMs = Math.round(performance.now());
    process.stdout.write(`${JSON.stringify({ host: 'electron', display, readyMs })}\n`);
  } else await untilClosed(window);
  return gaveUp() ? 1 : 0;
}

const log = createLog();
const end = setupEnd();
const closers = createClosers((what, error) => {
  log.fault(`closing ${what}`, error);
  say(`Closing ${what}: ${plainText(error)}`);
});
const broken = new Promise<never>((_resolve, reject) => {
  onLastResort(process, log, (error) => reject(error instanceof Error ? error : new Error(String(error))));
});
log.note('start', {
  host: 'electron',
  program: app.getVersion(),
  platform: process.platform,
  arch: process.arch,
  electron: process.versions['electron'],
});
void Promise.race([run(closers), broken])
  .catch((error: unknown) => {
    say(plainText(error));
    if (error instanceof WrongUse || error instanceof UnfitFile) return 2;
    log.fault('run', error);
    return 1;
  })
  .then(async (exitCode) => {
    await closers.closeAll();
    log.note('end', { exitCode });
    end(exitCode);
  });
