import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmdirSync, rmSync, writeSync, openSync, closeSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';

/** A disk of its own for one test, so that it can be filled or made read-only. */
export type SmallDisk = {
  folder: string;
  /** Takes all space but about so many bytes. @returns the way to give it back. */
  fill(leaveBytes?: number): () => void;
  /** The kernel refuses every write from now on, or no more. */
  setReadOnly(on: boolean): void;
};

const run = (...words: [string, ...string[]]) => spawnSync(words[0], words.slice(1), { encoding: 'utf8' });

/** Why there can be no such disk here, or null where there can. */
export function whyNoSmallDisk(): string | null {
  if (process.platform !== 'linux') return `no tmpfs on ${process.platform}`;
  if (process.getuid?.() !== 0) return 'mounting takes root';
  const folder = mkdtempSync(join(tmpdir(), 'loftledger-disk-'));
  const mounted = run('mount', '-t', 'tmpfs', '-o', 'size=1m', 'tmpfs', folder);
  if (mounted.status === 0) run('umount', folder);
  rmdirSync(folder);
  return mounted.status === 0 ? null : `mount says: ${mounted.stderr.trim()}`;
}

/** @param kib its size, in KiB. Goes when the test ends. */
export function smallDisk(kib: number): SmallDisk {
  const folder = mkdtempSync(join(tmpdir(), 'loftledger-disk-'));
  const mounted = run('mount', '-t', 'tmpfs', '-o', `size=${String(kib)}k`, 'tmpfs', folder);
  if (mounted.status !== 0) throw new Error(mounted.stderr);
  onTestFinished(() => {
    run('umount', '--lazy', folder);
    rmdirSync(folder);
  });
  const filler = join(folder, 'somebody-elses-large-file');
  return {
    folder,
    fill(leaveBytes = 0) {
      const handle = openSync(filler, 'w');
      const block = Buffer.alloc(4096, 'x');
      try {
        for (;;) writeSync(handle, block);
      } catch (error) {
        if ((error as NodeJS.ErrnoException).code !== 'ENOSPC') throw error;
      } finally {
        closeSync(handle);
      }
      if (leaveBytes > 0) run('truncate', `--size=-${String(leaveBytes)}`, filler);
      return () => {
        rmSync(filler, { force: true });
      };
    },
    setReadOnly(on) {
      const done = run('mount', '-o', `remount,${on ? 'ro' : 'rw'}`, folder);
      if (done.status !== 0) throw new Error(done.stderr);
    },
  };
}
