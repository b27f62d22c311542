import { appendFileSync, mkdirSync, renameSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { faultFacts, type Facts } from './fault-facts.ts';

/**
 * What happened to the program, for whoever has to find out why it fell over: starts, ends, crashes, faults. Nothing of
 * the people in the records, nor of the machine's: no message of an error (it may name a player), no path, no address.
 * Stays in the data folder and is sent nowhere.
 */
export type Log = {
  note(what: string, facts?: Facts): void;
  /** A fault of the program: its kind and where in the program it came from. */
  fault(what: string, error: unknown): void;
  /** From now on in this folder; what was noted before is written first. */
  keepIn(dataDir: string): void;
};

export const LOG_FOLDER = 'logs';
export const LOG_FILE = 'loftledger.log';
/** A file of so many bytes is put by, and the one before that goes. */
export const LOG_BYTES = 256 * 1024;
const MOST_WAITING = 100;

/** @param now ISO time. */
export function createLog(now: () => string = () => new Date().toISOString()): Log {
  const waiting: string[] = [];
  let folder: string | null = null;
  const write = (what: string, facts: Facts) => {
    const words = Object.entries(facts).flatMap(([name, value]) =>
      value === undefined ? [] : [`${name}=${shown(value)}`],
    );
    const line = [now(), shown(what.replaceAll(' ', '-')), ...words].join(' ');
    if (folder !== null) append(folder, `${line}\n`);
    else if (waiting.length < MOST_WAITING) waiting.push(`${line}\n`);
  };
  return {
    note: (what, facts = {}) => write(what, facts),
    fault: (what, error) => write('fault', { in: what, ...faultFacts(error) }),
    keepIn(dataDir) {
      folder = join(dataDir, LOG_FOLDER);
      for (const line of waiting.splice(0)) append(folder, line);
    },
  };
}

/** Names of things of ours, versions, codes, places in the program; whatever else slipped in is not written. */
function shown(value: string | number | boolean | null): string {
  const text = String(value);
  return /^[\w.:+<>#,|-]{1,600}$/.test(text) ? text : '(left-out)';
}

/** A log that cannot be written is no reason to stop. */
function append(folder: string, text: string): void {
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    const file = join(folder, LOG_FILE);
    const size = statSync(file, { throwIfNoEntry: false })?.size ?? 0;
    if (size + text.length > LOG_BYTES) renameSync(file, `${file}.1`);
    appendFileSync(file, text, { mode: 0o600 });
  } catch {
    // A full or read-only disk.
  }
}
