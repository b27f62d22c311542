import { homedir } from 'node:os';
import path from 'node:path';

/** Where the records live unless `--data` says otherwise: the platform's own folder for a user's data. */
export function defaultDataFolder(env: NodeJS.ProcessEnv = process.env, platform = process.platform): string {
  const home = homedir();
  if (platform === 'darwin') return path.join(home, 'Library', 'Application Support', 'Loftledger');
  if (platform === 'win32')
    return path.join(env['APPDATA'] ?? path.join(home, 'AppData', 'Roaming'), 'Loftledger');
  const data = env['XDG_DATA_HOME'];
  // The XDG specification says to ignore a relative path.
  const base = data !== undefined && path.isAbsolute(data) ? data : path.join(home, '.local', 'share');
  return path.join(base, 'loftledger');
}

export const DATABASE_NAME = 'loftledger.db';
