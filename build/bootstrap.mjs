// Set-up on a fresh machine, before any npm script of this project: packages, Node, and where asked the browser.
// Plain JavaScript for the Node that happens to be installed. All chatter goes to stderr.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { findChromium } from './find/find-chromium.mjs';

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '..');
const LEAST_NODE = [22, 18];

const say = (text) => process.stderr.write(`${text}\n`);

function fail(text) {
  say(`loftledger: ${text}`);
  process.exit(1);
}

function wait(ms) {
  Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, ms);
}

/** One set-up at a time: two commands started together in a fresh clone must not both run `npm ci`. */
function withLock(work) {
  const lock = path.join(root, '.bootstrap-lock');
  const patience = Date.now() + 10 * 60_000;
  for (;;) {
    try {
      mkdirSync(lock);
      break;
    } catch (error) {
      if (error.code !== 'EEXIST')
        fail(`cannot write to ${root} (${error.code}). Clone into a folder of yours.`);
      const age = Date.now() - (statSync(lock, { throwIfNoEntry: false })?.mtimeMs ?? Date.now());
      if (age > 5 * 60_000 || Date.now() > patience) rmSync(lock, { recursive: true, force: true });
      else wait(250);
    }
  }
  try {
    work();
  } finally {
    rmSync(lock, { recursive: true, force: true });
  }
}

const stampFile = path.join(root, 'node_modules', '.loftledger-stamp');

function wanted() {
  const lockfile = readFileSync(path.join(root, 'package-lock.json'));
  return `${createHash('sha256').update(lockfile).digest('hex')} ${process.platform} ${process.arch}\n`;
}

function packagesAreFresh() {
  return existsSync(stampFile) && readFileSync(stampFile, 'utf8') === wanted();
}

function installPackages() {
  say('loftledger: installing packages (npm ci); this happens once.');
  // No package needs an install script: the one native brings its binaries, and would be built from source otherwise.
  const npm = process.env.npm_execpath;
  const command = npm ? [process.execPath, [npm, 'ci']] : ['npm', ['ci']];
  const done = spawnSync(
    command[0],
    [...command[1], '--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error'],
    {
      cwd: root,
      stdio: ['ignore', 2, 2],
      shell: !npm && process.platform === 'win32',
    },
  );
  if (done.status !== 0) {
    fail(
      'npm ci failed. It needs the npm registry once; look at the lines above, then run the command again.',
    );
  }
  writeFileSync(stampFile, wanted());
}

/** Scripts run the Node that the packages brought, where there is one for this platform. */
function checkNode() {
  const bundled = path.join(root, 'node_modules', '.bin', process.platform === 'win32' ? 'node.cmd' : 'node');
  if (existsSync(bundled)) return;
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  if (major > LEAST_NODE[0] || (major === LEAST_NODE[0] && minor >= LEAST_NODE[1])) return;
  fail(
    `Node ${process.versions.node} is too old: ${LEAST_NODE.join('.')} or newer is needed, and there is no Node ` +
      `package for ${process.platform}-${process.arch}. Install Node 24 and run the command again.`,
  );
}

function has(program) {
  return spawnSync('sh', ['-c', `command -v ${program}`], { stdio: 'ignore' }).status === 0;
}

/** Debian as root may install; anyone else is told what to do. */
function aptInstall(packages, why) {
  const mayInstall = process.platform === 'linux' && process.getuid?.() === 0 && has('apt-get');
  if (!mayInstall) {
    fail(
      `${why}. Install ${packages.join(' and ')} (Debian: apt-get install ${packages.join(' ')}) and run again.`,
    );
  }
  say(`loftledger: installing ${packages.join(', ')} with apt-get; this happens once.`);
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const apt = (...words) => spawnSync('apt-get', words, { env, stdio: ['ignore', 2, 2] }).status === 0;
  const install = () => apt('-qq', '-y', 'install', '--no-install-recommends', ...packages);
  if (!install() && !(apt('-qq', 'update') && install())) {
    fail(`apt-get could not install ${packages.join(', ')}. Look at the lines above, then run again.`);
  }
}

function electronIsThere() {
  return existsSync(path.join(root, 'node_modules', 'electron', 'path.txt'));
}

function bringBrowser() {
  if (findChromium() !== null) return;
  aptInstall(['chromium', 'fonts-dejavu-core'], 'No Chromium was found for the window');
  if (findChromium() === null)
    fail('Chromium was installed and still is not found. Set LOFTLEDGER_CHROMIUM to its path.');
}

const flags = new Set(process.argv.slice(2));
if (!packagesAreFresh()) {
  withLock(() => {
    if (!packagesAreFresh()) installPackages();
  });
}
checkNode();
if (flags.has('--browser') || (flags.has('--window') && !electronIsThere())) withLock(bringBrowser);
// Tests, and the start script for `--check`, ask for a display.
if (
  (flags.has('--browser') || flags.has('--display')) &&
  process.platform === 'linux' &&
  !process.env.DISPLAY &&
  !has('Xvfb')
) {
  withLock(() => aptInstall(['xvfb', 'xauth'], 'No display and no Xvfb were found for the window tests'));
}
