import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

/** What `npm start` can be asked. Both hosts take the same. */
export type StartOptions = {
  mode: 'window' | 'no-window' | 'check' | 'help';
  /** As an absolute path; null for the user's own data folder. */
  dataDir: string | null;
  /** Files to show what they would bring, as absolute paths. */
  files: readonly string[];
};

export const USAGE = `npm start -- [--no-window | --check] [--data DIR] [FILE ...]
  (nothing)     opens the window
  FILE          shows in the window what a file would bring: records (.loftledger), a bag file
                (.json), or a table (.csv); nothing comes in before you say so
  --no-window   serves without a window and prints one JSON line {host, url}; ends on SIGTERM
  --check       opens the window on an empty data folder, waits for its first paint, prints one
                JSON line {host, display, readyMs} and closes
  --data DIR    keeps the data in DIR instead of the user's own data folder
  --help        prints this`;

/** A command line that is not understood: exit code 2. */
export class WrongUse extends Error {
  constructor(message: string) {
    super(`${message}\n${USAGE}`);
    this.name = 'WrongUse';
  }
}

/**
 * @param standsIn the folder that the user is in; a relative DIR or FILE is taken from there.
 * @throws WrongUse
 */
export function readStartOptions(argv: readonly string[], standsIn: string): StartOptions {
  let mode: StartOptions['mode'] = 'window';
  let dataDir: string | null = null;
  const files: string[] = [];
  const setMode = (wanted: StartOptions['mode'], flag: string) => {
    if (mode !== 'window' && mode !== wanted) throw new WrongUse(`${flag} and --${mode} exclude each other.`);
    mode = wanted;
  };
  for (let i = 0; i < argv.length; i++) {
    const flag = argv[i] ?? '';
    if (flag === '--no-window') setMode('no-window', flag);
    else if (flag === '--check') setMode('check', flag);
    else if (flag === '--help' || flag === '-h') return { mode: 'help', dataDir: null, files: [] };
    else if (flag === '--data' || flag.startsWith('--data=')) {
      const folder = flag === '--data' ? argv[++i] : flag.slice('--data='.length);
      if (folder === undefined || folder === '' || folder.startsWith('-')) {
        throw new WrongUse('--data needs a folder.');
      }
      if (dataDir !== null) throw new WrongUse('--data was given twice.');
      dataDir = resolve(standsIn, folder);
    } else if (flag === '' || flag.startsWith('-')) throw new WrongUse(`"${flag}" is not understood.`);
    else files.push(fileOf(flag, standsIn));
  }
  const options: StartOptions = { mode, dataDir, files };
  if (options.mode === 'check' && files.length > 0) throw new WrongUse('--check opens no files.');
  return options;
}

/** A path, or the address of a file: what desktops on Linux start a program with. @throws WrongUse */
function fileOf(given: string, standsIn: string): string {
  if (!/^file:/i.test(given)) return resolve(standsIn, given);
  try {
    const url = new URL(given);
    if (url.host === '' || url.host === 'localhost') return fileURLToPath(url);
  } catch {
    // Said below.
  }
  throw new WrongUse(`"${given}" is no file of this machine.`);
}
