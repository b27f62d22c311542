import { chmodSync, existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { DATABASE_NAME, defaultDataFolder } from '../../service/records/data-folder.ts';
import type { Closers } from './closers.ts';
import type { StartOptions } from './options.ts';

/**
 * The folder that this start keeps its data in, made and private. A check leaves nothing behind, and does not touch
 * the user's own.
 * @throws UnfitFolder
 */
export function chooseDataFolder(options: Pick<StartOptions, 'mode' | 'dataDir'>, closers: Closers): string {
  if (options.mode === 'check' && options.dataDir === null) {
    const folder = mkdtempSync(join(tmpdir(), 'loftledger-check-'));
    closers.add('the data folder of the check', () => rmSync(folder, { recursive: true, force: true }));
    return folder;
  }
  const folder = options.dataDir ?? defaultDataFolder();
  makeDataFolder(folder);
  return folder;
}

/** The folder cannot hold the data safely. Its message says what to do. */
export class UnfitFolder extends Error {}

/**
 * Makes the folder, or makes it private (0700): bags carry notes on health. A folder that others can look into and
 * that holds something else is refused rather than closed to them: it may be /tmp.
 * @throws UnfitFolder
 */
export function makeDataFolder(folder: string, platform: NodeJS.Platform = process.platform): void {
  try {
    // Parents only where needed: Node's recursive mkdir never returns where the system refuses with ENOENT (/proc).
    if (!existsSync(folder)) {
      mkdirSync(folder, { recursive: !existsSync(dirname(folder)), mode: 0o700 });
    }
    if (platform === 'win32') return;
    const { mode, uid } = statSync(folder);
    const me = process.getuid?.();
    if (uid !== me && me !== 0) throw new UnfitFolder(`${folder}: this folder belongs to another user.`);
    if ((mode & 0o077) === 0) return;
    const entries = readdirSync(folder);
    if (entries.length > 0 && !entries.some(isOurs)) {
      throw new UnfitFolder(
        `${folder}: others can look into this folder, and it holds other things. ` +
          `Give a new folder with --data, or make it private (chmod 700).`,
      );
    }
    chmodSync(folder, 0o700);
  } catch (error) {
    if (error instanceof UnfitFolder) throw error;
    const code = (error as NodeJS.ErrnoException).code ?? String(error);
    throw new UnfitFolder(
      `${folder}: cannot be used as the data folder (${code}). Give another with --data.`,
    );
  }
}

/** Files that only we make: the lock and the database. */
function isOurs(name: string): boolean {
  return name === 'instance.lock' || name === DATABASE_NAME;
}
