import { resolve } from 'node:path';

/** What `npm start` can be asked. Both hosts take the same. */
export type StartOptions = {
  mode: 'window' | 'no-window' | 'check' | 'help';
  /** As an absolute path; null for the user's own data folder. */
  dataDir: string | null;
};

export const USAGE = `npm start -- [--no-window | --check] [--data DIR]
  (nothing)     opens the window
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
 * @param standsIn the folder that the user is in; a relative DIR is taken from there.
 * @throws WrongUse
 */
export function readStartOptions(argv: readonly string[], standsIn: string): StartOptions {
  let mode: StartOptions['mode'] = 'window';
  let dataDir: string | null = null;
  const setMode = (wanted: StartOptions['mode'], flag: string) => {
    if (mode !== 'window' && mode !== wanted) throw new WrongUse(`${flag} and --${mode} exclude each other.`);
    mode = wanted;
  };
  for (let i = 0; i < argv.length; i++) {
    const flag = argv[i] ?? '';
    if (flag === '--no-window') setMode('no-window', flag);
    else if (flag === '--check') setMode('check', flag);
    else if (flag === '--help' || flag === '-h') return { mode: 'help', dataDir: null };
    else if (flag === '--data' || flag.startsWith('--data=')) {
      const folder = flag === '--data' ? argv[++i] : flag.slice('--data='.length);
      if (folder === undefined || folder === '' || folder.startsWith('-')) {
        throw new WrongUse('--data needs a folder.');
      }
      if (dataDir !== null) throw new WrongUse('--data was given twice.');
      dataDir = resolve(standsIn, folder);
    } else throw new WrongUse(`"${flag}" is not understood.`);
  }
  return { mode, dataDir };
}
