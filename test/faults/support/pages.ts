import { closeSync, openSync, readFileSync, writeSync } from 'node:fs';

/** Kinds of page in a database file: https://www.sqlite.org/fileformat2.html, 1.5 and 1.6. */
export type PageKind =
  | 'schema' // page 1: the file's header and the beginning of the schema
  | 'table leaf'
  | 'table interior'
  | 'index leaf'
  | 'index interior'
  | 'overflow'
  | 'free list trunk'
  | 'free list leaf';

const TYPES: ReadonlyMap<number, PageKind> = new Map([
  [2, 'index interior'],
  [5, 'table interior'],
  [10, 'index leaf'],
  [13, 'table leaf'],
]);

export const PAGE_BYTES = 4096;

/** The kind of each page of a file, by its number from 1; a page that no rule here reaches is left out. */
export function pageKinds(file: string): Map<number, PageKind> {
  const bytes = readFileSync(file);
  const count = bytes.length / PAGE_BYTES;
  const kinds = new Map<number, PageKind>([[1, 'schema']]);
  for (let trunk = bytes.readUInt32BE(32); trunk !== 0;) {
    kinds.set(trunk, 'free list trunk');
    const at = (trunk - 1) * PAGE_BYTES;
    for (let i = 0; i < bytes.readUInt32BE(at + 4); i += 1)
      kinds.set(bytes.readUInt32BE(at + 8 + 4 * i), 'free list leaf');
    trunk = bytes.readUInt32BE(at);
  }
  for (let page = 2; page <= count; page += 1) {
    const kind = TYPES.get(bytes[(page - 1) * PAGE_BYTES] ?? 0);
    if (kind !== undefined && !kinds.has(page)) kinds.set(page, kind);
    // An overflow page begins with the number of the next one, of which the first byte is 0 in any small file.
    else if (!kinds.has(page)) kinds.set(page, 'overflow');
  }
  return kinds;
}

export function overwrite(file: string, at: number, bytes: Uint8Array): void {
  const handle = openSync(file, 'r+');
  try {
    writeSync(handle, bytes, 0, bytes.length, at);
  } finally {
    closeSync(handle);
  }
}
