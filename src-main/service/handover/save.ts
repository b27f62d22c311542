import { closeSync, fsyncSync, openSync, renameSync, rmSync, writeFileSync } from 'node:fs';

/** A document could not be written; names the file, the reason and the way out. */
export class SaveError extends Error {
  /** The system's own, such as ENOSPC. */
  readonly code: string;
  constructor(message: string, code: string, options?: ErrorOptions) {
    super(message, options);
    this.code = code;
    this.name = 'SaveError';
  }
}

/**
 * Writes a whole file or none: to a neighbour name, to the disk, then over.
 * @throws SaveError
 */
export function saveWhole(path: string, content: string | Uint8Array): void {
  const draft = `${path}.${String(process.pid)}.part`;
  try {
    const handle = openSync(draft, 'w');
    try {
      writeFileSync(handle, content);
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
    renameSync(draft, path);
  } catch (error) {
    rmSync(draft, { force: true });
    const code = error instanceof Error && 'code' in error ? String(error.code) : String(error);
    throw new SaveError(`${path} cannot be written (${code}). Choose another place.`, code, {
      cause: error,
    });
  }
}
