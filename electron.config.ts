import { readdirSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'electron-vite';
import type { Plugin } from 'vite';

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

export default defineConfig({
  main: {
    build: {
      outDir: 'out/main',
      // It starts threads from files of its own, which a bundle would lose.
      externalizeDeps: { include: ['tinypool'] },
      rolldownOptions: {
        input: {
          main: resolve('src-main/main.ts'),
          'solve-worker': resolve('src-main/worker/solve-worker.ts'),
        },
        output: { entryFileNames: '[name].js', chunkFileNames: '[name]-[hash].js' },
      },
    },
    plugins: [shipMigrations()],
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
  },
  renderer: {
    root: 'src-renderer',
    plugins: [svelte({ configFile: resolve('svelte.config.js') })],
    build: {
      outDir: 'out/renderer',
      rolldownOptions: {
        input: { index: resolve('src-renderer/index.html') },
        checks: { pluginTimings: false },
      },
      // The window's content security policy allows no data: addresses.
      assetsInlineLimit: 0,
      modulePreload: { polyfill: false },
    },
  },
});
