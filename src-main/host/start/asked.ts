import { isAbsolute } from 'node:path';

/** What a later start asks of the first: to show its window, with these files opened in it. */
export type Asked = { files: readonly string[] };

/** More than a person opens at once. */
const MOST_FILES = 100;
const LONGEST_PATH = 4096;
/** All of them at their longest, escaped. */
export const LONGEST_ASK = 1024 * 1024;

/** One line: "front", or "open" and the paths as JSON. */
export function askLine({ files }: Asked): string {
  return files.length === 0 ? 'front\n' : `open ${JSON.stringify(files.slice(0, MOST_FILES))}\n`;
}

/** @returns null for what is no line of ours. */
export function readAsk(line: string): Asked | null {
  if (line === 'front\n') return { files: [] };
  const list = /^open (\[.*\])\n$/.exec(line)?.[1];
  if (list === undefined) return null;
  let files: unknown;
  try {
    files = JSON.parse(list);
  } catch {
    return null;
  }
  if (!Array.isArray(files) || files.length === 0 || files.length > MOST_FILES) return null;
  return files.every(isPath) ? { files } : null;
}

function isPath(value: unknown): value is string {
  return (
    typeof value === 'string' &&
    value.length <= LONGEST_PATH &&
    value.isWellFormed() &&
    !value.includes('\u0000') &&
    isAbsolute(value)
  );
}
