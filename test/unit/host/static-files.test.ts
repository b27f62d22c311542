import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { readStaticFiles } from '../../../src-main/host/static-files.ts';
import { makeRenderer, makeTempDir } from '../browser-host/kit.ts';

let temp: ReturnType<typeof makeTempDir>;
beforeEach(() => (temp = makeTempDir()));
afterEach(() => temp.remove());

describe('readStaticFiles', () => {
  it('holds the files of the folder by their paths, with their types, and nothing else', () => {
    const folder = makeRenderer(temp.dir);
    mkdirSync(join(folder, 'fonts'));
    for (const name of ['a.woff2', 'b.svg', 'c.wasm', '.hidden', 'noending', 'd.ts']) {
      writeFileSync(join(folder, 'fonts', name), '');
    }
    const types = [...readStaticFiles(folder)].map(([path, file]) => [path, file.type.split(';')[0]]);
    expect(Object.fromEntries(types)).toEqual({
      '/': 'text/html',
      '/index.html': 'text/html',
      '/assets/app.js': 'text/javascript',
      '/fonts/a.woff2': 'font/woff2',
      '/fonts/b.svg': 'image/svg+xml',
      '/fonts/c.wasm': 'application/wasm',
    });
  });

  it('says what to do when the window has not been built', () => {
    expect(() => readStaticFiles(temp.dir)).toThrow('npm run build');
  });
});
