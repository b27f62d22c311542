import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'electron-vite';
import { normalizePath, type Plugin } from 'vite';

const ROOT = normalizePath(resolve('.'));

/** The SQL files are read at run time from beside the code that reads them. */
function shipMigrations(): Plugin {
  const folder = resolve('db/migrations');
  return {
    name: 'ship-migrations',
    generateBundle() {
      for (const file of readdirSync(folder).filter((name) => name.endsWith('.sql'))) {
        const source = readFileSync(resolve(folder, file));
        this.emitFile({ type: 'asset', fileName: `migrations/${file}`, source });
      }
    },
  };
}

/** Writes out/bundled/<part>.json: the folders of the packages that the part is made of, for the licences in NOTICE. */
function listPackages(part: string): Plugin {
  return {
    name: 'list-packages',
    writeBundle(_options, bundle) {
      const ids = Object.values(bundle).flatMap((file) => (file.type === 'chunk' ? file.moduleIds : []));
      const folders = ids.flatMap((id) => {
        // The builder's own helpers have no file: a NUL and its name.
        const helper = /^\0(vite|rolldown)\//.exec(id)?.[1];
        if (helper !== undefined) return [`node_modules/${helper}`];
        return /^.*(?<=\/)node_modules\/(?:@[^/]+\/)?[^/?]+/.exec(id)?.[0].slice(ROOT.length + 1) ?? [];
      });
      mkdirSync(resolve('out/bundled'), { recursive: true });
      const list = JSON.stringify([...new Set(folders)].sort(), null, 2);
      writeFileSync(resolve('out/bundled', `${part}.json`), `${list}\n`);
    },
  };
}

export default defineConfig({
  main: {
    build: {
      outDir: 'out/main',
      rolldownOptions: {
        input: {
          main: resolve('src-main/main.ts'),
          'solve-worker': resolve('src-main/worker/solve-worker.ts'),
          // The pool starts its threads from this file of its own, and looks for it at this place beside itself.
          'entry/worker': resolve('node_modules/tinypool/dist/entry/worker.js'),
        },
        output: { entryFileNames: '[name].js', chunkFileNames: '[name]-[hash].js' },
      },
    },
    plugins: [shipMigrations(), listPackages('main')],
  },
  preload: {
    build: {
      outDir: 'out/preload',
      // A sandboxed preload can load nothing from node_modules, and only CommonJS.
      externalizeDeps: false,
      rolldownOptions: {
        input: { preload: resolve('src-main/preload.ts') },
        output: { format: 'cjs', entryFileNames: '[name].cjs' },
      },
    },
    plugins: [listPackages('preload')],
  },
  renderer: {
    root: 'src-renderer',
    plugins: [svelte({ configFile: resolve('svelte.config.js') }), listPackages('renderer')],
    build: {
      outDir: 'out/renderer',
      minify: true,
      rolldownOptions: {
        input: { index: resolve('src-renderer/index.html') },
        checks: { pluginTimings: false },
      },
      // The window's content security policy allows no data: addresses.
      assetsInlineLimit: 0,
      modulePreload: { polyfill: false },
      // Read from this machine's disk: nobody waits for it over a wire.
      chunkSizeWarningLimit: 2_000,
    },
  },
});
