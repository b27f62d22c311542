// Builds main, preload and window into out/ when what they are made of has changed since the last build.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '..');
const out = path.join(root, 'out');
const stampFile = path.join(out, 'built-from');
const lockFile = path.join(out, 'building.pid');

const SOURCES = [
  'src-main',
  'src-renderer',
  'db',
  'electron.config.ts',
  'svelte.config.js',
  'tsconfig.json',
  'package-lock.json',
];
const PATIENCE_MS = 120_000;

/**
 * Two starts at the same time build once: the second waits for the first.
 * @param {(line: string) => void} say told before a build, which takes a second or two
 * @returns {Promise<boolean>} whether it had to build
 * @throws {Error} when the build fails; the builder's own lines are on stderr
 */
export async function ensureBuilt(say) {
  if (isFresh()) return false;
  mkdirSync(out, { recursive: true });
  await takeLock();
  try {
    if (isFresh()) return false;
    say('loftledger: building the window.');
    const stamp = sourcesStamp();
    build();
    writeFileSync(stampFile, stamp);
    return true;
  } finally {
    rmSync(lockFile, { force: true });
  }
}

function isFresh() {
  if (!existsSync(path.join(out, 'renderer', 'index.html')) || !existsSync(stampFile)) return false;
  return readFileSync(stampFile, 'utf8') === sourcesStamp();
}

/** By content, not by time: a checkout changes times, and a copy keeps them. */
export function sourcesStamp() {
  const hash = createHash('sha256');
  for (const source of SOURCES) addTo(hash, source);
  return `${hash.digest('hex')}\n`;
}

function addTo(hash, name) {
  const file = path.join(root, name);
  let entries;
  try {
    entries = readdirSync(file).sort();
  } catch (error) {
    if (error.code !== 'ENOTDIR' && error.code !== 'ENOENT') throw error;
  }
  if (entries) for (const entry of entries) addTo(hash, `${name}/${entry}`);
  else if (existsSync(file)) hash.update(`${name}\0`).update(readFileSync(file)).update('\0');
}

function build() {
  const cli = path.join(root, 'node_modules', 'electron-vite', 'bin', 'electron-vite.js');
  const args = [cli, 'build', '--config', 'electron.config.ts', '--logLevel', 'warn'];
  // The builder's chatter does not belong on our standard output.
  const done = spawnSync(process.execPath, args, { cwd: root, stdio: ['ignore', 2, 2] });
  if (done.status !== 0) throw new Error('The window could not be built. The lines above say why.');
}

async function takeLock() {
  for (let waitedMs = 0; ; waitedMs += 100) {
    try {
      writeFileSync(lockFile, String(process.pid), { flag: 'wx' });
      return;
    } catch (error) {
      if (error.code !== 'EEXIST') throw error;
      if (waitedMs > PATIENCE_MS || !builderLives()) rmSync(lockFile, { force: true });
      else await wait(100);
    }
  }
}

function builderLives() {
  try {
    // 0, before its number is written, asks about ourselves: it has only just begun.
    process.kill(Number(readFileSync(lockFile, 'utf8')), 0);
    return true;
  } catch (error) {
    // Gone meanwhile (no file), or its process is (ESRCH); one of another user (EPERM) lives.
    return error.code === 'EPERM';
  }
}
