import { readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** Where the window was, in screen pixels. Kept by us: the browser keeps it by address, and the port changes. */
export type WindowPlace = { left: number; top: number; width: number; height: number; maximized: boolean };

const FILE = 'window-place.json';

/** @returns null when there is none, or none that makes sense: a lost place is no reason not to start. */
export function readWindowPlace(dataDir: string): WindowPlace | null {
  try {
    return asWindowPlace(JSON.parse(readFileSync(join(dataDir, FILE), 'utf8')));
  } catch {
    return null;
  }
}

/** Beside it and renamed, so that a cut never leaves half a file. Not being able to is no reason to stop either. */
export function writeWindowPlace(dataDir: string, place: WindowPlace): void {
  try {
    const file = join(dataDir, FILE);
    writeFileSync(`${file}.new`, JSON.stringify(place), { mode: 0o600 });
    renameSync(`${file}.new`, file);
  } catch {
    // A full or read-only disk: the window opens where the system puts it.
  }
}

/** Whole numbers, at least 320 × 240 and at most 16,384 wide or high, not off into nowhere. */
export function asWindowPlace(value: unknown): WindowPlace | null {
  if (typeof value !== 'object' || value === null) return null;
  const { left, top, width, height, maximized } = value as Record<string, unknown>;
  const within = (number: unknown, least: number, most: number): number is number =>
    typeof number === 'number' && Number.isInteger(number) && number >= least && number <= most;
  if (!within(left, -16_384, 16_384) || !within(top, -16_384, 16_384)) return null;
  if (!within(width, 320, 16_384) || !within(height, 240, 16_384)) return null;
  return { left, top, width, height, maximized: maximized === true };
}
