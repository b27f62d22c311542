import {
  closeSync,
  fstatSync,
  fsyncSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import path from 'node:path';
import { UsageError } from './exit.ts';

/** Paths are taken from where the user stands; npm changes the working folder and keeps the old one in INIT_CWD. */
export function userPath(name: string): string {
  return path.resolve(process.env['INIT_CWD'] ?? process.cwd(), name);
}

/**
 * Reads a file, or standard input for `-`; refuses one above `maxBytes` before reading it all.
 * @throws UsageError naming the path and what to do.
 */
export function readInput(name: string, what: string, maxBytes: number): Uint8Array {
  const shown = name === '-' ? 'standard input' : name;
  let handle: number | undefined;
  try {
    handle = name === '-' ? 0 : openSync(userPath(name), 'r');
    const stat = fstatSync(handle);
    if (stat.isDirectory()) throw new UsageError(`${shown} is a folder. Give the path of a ${what}.`);
    if (stat.isFile() && stat.size > maxBytes) throw tooLarge(shown, what, stat.size, maxBytes);
    const bytes = readFileSync(handle);
    if (bytes.length > maxBytes) throw tooLarge(shown, what, bytes.length, maxBytes);
    return bytes;
  } catch (error) {
    if (error instanceof UsageError) throw error;
    const code = error instanceof Error && 'code' in error ? String(error.code) : String(error);
    const why = code === 'ENOENT' ? 'there is no such file' : code === 'EACCES' ? 'it may not be read' : code;
    throw new UsageError(
      `${shown} cannot be read: ${why}. Give the path of a ${what}, or - for standard input.`,
    );
  } finally {
    if (handle !== undefined && handle !== 0) closeSync(handle);
  }
}

function tooLarge(shown: string, what: string, bytes: number, maxBytes: number): UsageError {
  const mb = (size: number) => (size / 1024 / 1024).toFixed(1);
  return new UsageError(
    `${shown} is ${mb(bytes)} MB; a ${what} has at most ${mb(maxBytes)} MB. Check that it is the right file.`,
  );
}

/** Writes a whole file or none: to a neighbour name, to the disk, then over. */
export function writeWhole(name: string, text: string): void {
  const target = userPath(name);
  const draft = `${target}.${String(process.pid)}.part`;
  try {
    const handle = openSync(draft, 'w');
    try {
      // Not writeSync: that may write a part only, and say so in its result alone.
      writeFileSync(handle, text);
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
    renameSync(draft, target);
  } catch (error) {
    rmSync(draft, { force: true });
    const code = error instanceof Error && 'code' in error ? String(error.code) : String(error);
    throw new UsageError(`${name} cannot be written (${code}). Choose another place with --out.`);
  }
}
