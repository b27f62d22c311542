// `npm start`: picks the host, builds what has changed, and runs it. Standard output is the host's alone.
import { spawn, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import module from 'node:module';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { ensureBuilt } from './ensure-built.mjs';
import { findChromium } from './find/find-chromium.mjs';
import { findElectron } from './find/find-electron.mjs';

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '..');
const argv = process.argv.slice(2);
const say = (line) => process.stderr.write(`${line}\n`);

/** The host is TypeScript, which Node runs as it is from 22.18 on. */
function nodeRunsTypeScript() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  return major > 22 || (major === 22 && minor >= 18);
}

/** Runs a program in our place: its output is ours, our signals are its, and so is the exit code. */
function become(program, args) {
  const child = spawn(program, args, { cwd: root, stdio: 'inherit' });
  for (const signal of ['SIGTERM', 'SIGINT', 'SIGHUP']) process.on(signal, () => child.kill(signal));
  return new Promise((resolve) => {
    child.once('error', (error) => {
      say(`loftledger: ${program} cannot be run (${error.message}).`);
      resolve(1);
    });
    child.once('exit', (code) => resolve(code ?? 1));
  });
}

/** @returns the exit code of a start that ends before anything is built: 2 when not understood, 0 for help; else null. */
async function endsEarly() {
  const { readStartOptions, USAGE } = await import('../src-main/host/start/options.ts');
  try {
    if (readStartOptions(argv, root).mode !== 'help') return null;
    process.stdout.write(`${USAGE}\n`);
    return 0;
  } catch (error) {
    say(error.message);
    return 2;
  }
}

function hostAndWhy(electron, onElectron) {
  if (onElectron) return 'the Electron host';
  return electron === null
    ? 'the browser host (a Chromium window on 127.0.0.1), since Electron’s binary is not here: its download is outside ' +
        'the package registry'
    : 'the browser host, since the Electron host has a window always';
}

async function start() {
  if (!nodeRunsTypeScript()) {
    const bundled = path.join(root, 'node_modules', '.bin', 'node');
    if (existsSync(bundled)) return become(bundled, [fileURLToPath(import.meta.url), ...argv]);
    say(`loftledger: Node ${process.versions.node} is too old: 22.18 or newer is needed.`);
    return 1;
  }
  // The host's TypeScript is stripped and compiled once, not at every start. In our own folder: what is in there is run.
  module.enableCompileCache?.(path.join(root, 'out', 'compiled'));
  const early = await endsEarly();
  if (early !== null) return early;
  const electron = findElectron(path.join(root, 'node_modules', 'electron'));
  const onElectron = electron !== null && !argv.includes('--no-window');
  say(`loftledger: running on ${hostAndWhy(electron, onElectron)}.`);
  if (argv.includes('--check') && process.platform === 'linux') {
    // A check needs a display; the set-up brings Xvfb where there is none.
    const bootstrap = path.join(root, 'build', 'bootstrap.mjs');
    const done = spawnSync(process.execPath, [bootstrap, '--display'], { stdio: ['ignore', 2, 2] });
    if (done.status !== 0) return 1;
  }
  const built = await ensureBuilt(say);
  if (onElectron) return become(electron, [root, ...argv]);
  const { main } = await import('../src-main/browser-host/main.ts');
  return main(argv, { chromium: findChromium(), startedMs: built ? performance.now() : 0 });
}

process.exitCode = await start().catch((error) => {
  say(`loftledger: ${error.message}`);
  return 1;
});
