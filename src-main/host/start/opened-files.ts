import { closeSync, constants, createReadStream, fstatSync, openSync, statSync } from 'node:fs';
import { basename } from 'node:path';
import type { CallError, Gate } from '../../contract/gate.ts';
import { MOST_BYTES } from '../../contract/formats/incoming-kinds.ts';
import { showableName } from '../requests.ts';

/** A path that cannot be opened as a file to take in: its words for the terminal, and without the path for the window. */
export class UnfitFile extends Error {
  readonly why: string;
  readonly remedy: string;
  constructor(file: string, why: string, remedy: string) {
    super(`${file}: ${why}`);
    this.name = 'UnfitFile';
    this.why = why;
    this.remedy = remedy;
  }
}

/**
 * At a start with files, before anything else is done. Without waiting: what Electron wants done before it is ready comes
 * after. @throws UnfitFile for the first that cannot be opened.
 */
export function checkFiles(files: readonly string[]): void {
  for (const file of files) closeSync(openRegular(file));
}

/**
 * Gives a file that the user named outside of the window (a start with files, a double click) to the window, which shows
 * what it would bring; or why it cannot be opened. The path stays here: the window gets the file's own name. Never
 * rejects.
 */
export async function openForWindow(gate: Pick<Gate, 'open'>, file: string): Promise<void> {
  const name = showableName(basename(file));
  let fd: number;
  try {
    fd = openRegular(file);
  } catch (error) {
    return gate.open({ name, refused: refusalOf(name, error) }).catch(() => undefined);
  }
  try {
    await gate.open({ name, stream: createReadStream('', { fd, autoClose: false }) });
  } catch {
    // A service that is closing, or did not open, takes nothing more; whoever opened it has the reason.
  } finally {
    closeSync(fd);
  }
}

/** One after the other, in their order. */
export async function openAllForWindow(gate: Pick<Gate, 'open'>, files: readonly string[]): Promise<void> {
  for (const file of files) await openForWindow(gate, file);
}

/**
 * Looked at before it is opened, since opening alone can do something to a device, and after, since it may be another
 * by then. A pipe would be waited for without O_NONBLOCK.
 */
function openRegular(file: string): number {
  try {
    refuseOthers(file, statSync(file));
    // Windows has no O_NONBLOCK.
    const nonBlocking = (constants as { O_NONBLOCK?: number }).O_NONBLOCK ?? 0;
    const fd = openSync(file, constants.O_RDONLY | nonBlocking);
    try {
      refuseOthers(file, fstatSync(fd));
      return fd;
    } catch (error) {
      closeSync(fd);
      throw error;
    }
  } catch (error) {
    if (error instanceof UnfitFile) throw error;
    const code = (error as NodeJS.ErrnoException).code ?? String(error);
    if (code === 'ENOENT' || code === 'ENOTDIR') {
      throw new UnfitFile(file, 'there is no such file', 'Check the path.');
    }
    const why = code === 'EACCES' || code === 'EPERM' ? 'it may not be read' : `it cannot be read (${code})`;
    throw new UnfitFile(file, why, 'Allow reading it, or choose another.');
  }
}

type Found = { isFile(): boolean; isDirectory(): boolean; size: number };

function refuseOthers(file: string, found: Found): void {
  if (found.isDirectory()) {
    throw new UnfitFile(file, 'it is a folder', 'Choose a file in it. A data folder is given with --data.');
  }
  if (!found.isFile()) throw new UnfitFile(file, 'it is no regular file', 'Choose a file.');
  if (found.size <= MOST_BYTES.database) return;
  const most = String(MOST_BYTES.database / 1024 / 1024);
  throw new UnfitFile(file, `it is larger than ${most} MB`, 'Check that it is the right file.');
}

function refusalOf(name: string, error: unknown): CallError {
  const { why, remedy } =
    error instanceof UnfitFile ? error : { why: 'it cannot be read', remedy: 'Choose another.' };
  return {
    kind: 'refused',
    message: 'This file cannot be opened:',
    refusals: [{ path: name, value: '', message: why, remedy }],
  };
}
