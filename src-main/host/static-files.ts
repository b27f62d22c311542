import { readdirSync, readFileSync } from 'node:fs';
import { extname, join } from 'node:path';

export type StaticFile = { bytes: Buffer; type: string };

/** Kinds of file that a built window has. Others are not served. */
const TYPES: ReadonlyMap<string, string> = new Map([
  ['.html', 'text/html; charset=utf-8'],
  ['.js', 'text/javascript; charset=utf-8'],
  ['.css', 'text/css; charset=utf-8'],
  ['.json', 'application/json; charset=utf-8'],
  ['.svg', 'image/svg+xml'],
  ['.png', 'image/png'],
  ['.ico', 'image/x-icon'],
  ['.woff2', 'font/woff2'],
  ['.wasm', 'application/wasm'],
  ['.txt', 'text/plain; charset=utf-8'],
]);

/**
 * The built window, read once into a table from path to bytes. A request's path is only ever a key of this table and
 * never a part of a file's name, so that no spelling of it can reach another file. Symbolic links are left out.
 * @param folder with index.html, which is also served as `/`.
 * @throws when the folder or its index.html is missing.
 */
export function readStaticFiles(folder: string): ReadonlyMap<string, StaticFile> {
  const files = new Map<string, StaticFile>();
  addFolder(files, folder, '');
  const index = files.get('/index.html');
  if (index === undefined) {
    throw new Error(`${folder}: the window has not been built (no index.html). Run "npm run build".`);
  }
  files.set('/', index);
  return files;
}

function addFolder(files: Map<string, StaticFile>, folder: string, prefix: string): void {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = `${prefix}/${entry.name}`;
    if (entry.isDirectory()) addFolder(files, join(folder, entry.name), path);
    const type = TYPES.get(extname(entry.name).toLowerCase());
    if (entry.isFile() && type !== undefined) {
      files.set(path, { bytes: readFileSync(join(folder, entry.name)), type });
    }
  }
}
