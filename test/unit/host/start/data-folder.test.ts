import { chmodSync, existsSync, mkdirSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { createClosers } from '../../../../src-main/host/start/closers.ts';
import {
  chooseDataFolder,
  makeDataFolder,
  UnfitFolder,
} from '../../../../src-main/host/start/data-folder.ts';
import { makeTempDir } from '../../browser-host/kit.ts';

let temp: ReturnType<typeof makeTempDir>;
beforeEach(() => (temp = makeTempDir()));
afterEach(() => temp.remove());

const modeOf = (folder: string) => statSync(folder).mode & 0o777;

describe('makeDataFolder', () => {
  it('makes a private folder, with its parents', () => {
    const folder = join(temp.dir, 'a', 'b');
    makeDataFolder(folder);
    expect(modeOf(folder)).toBe(0o700);
  });

  it('closes an empty folder, and one that is ours, to others', () => {
    const folder = join(temp.dir, 'a');
    mkdirSync(folder);
    chmodSync(folder, 0o755);
    makeDataFolder(folder);
    expect(modeOf(folder)).toBe(0o700);
    writeFileSync(join(folder, 'loftledger.db'), '');
    chmodSync(folder, 0o750);
    makeDataFolder(folder);
    expect(modeOf(folder)).toBe(0o700);
  });

  it('refuses an open folder with other things in it, and leaves it as it is', () => {
    writeFileSync(join(temp.dir, 'letters.txt'), '');
    chmodSync(temp.dir, 0o755);
    expect(() => makeDataFolder(temp.dir)).toThrow(UnfitFolder);
    expect(() => makeDataFolder(temp.dir)).toThrow(/--data/);
    expect(modeOf(temp.dir)).toBe(0o755);
  });

  it('takes a private folder with other things in it', () => {
    writeFileSync(join(temp.dir, 'letters.txt'), '');
    chmodSync(temp.dir, 0o700);
    expect(() => makeDataFolder(temp.dir)).not.toThrow();
  });

  it('says which folder cannot be used, and what to do', () => {
    const file = join(temp.dir, 'file');
    writeFileSync(file, '');
    expect(() => makeDataFolder(join(file, 'below'))).toThrow(`${file}/below: cannot be used`);
    expect(() => makeDataFolder(file)).toThrow(UnfitFolder);
  });
});

describe('chooseDataFolder', () => {
  it('gives a check a folder of its own, and takes it away again', async () => {
    const closers = createClosers(() => undefined);
    const folder = chooseDataFolder({ mode: 'check', dataDir: null }, closers);
    expect(modeOf(folder)).toBe(0o700);
    await closers.closeAll();
    expect(existsSync(folder)).toBe(false);
  });

  it('keeps the folder that was asked for, of a check too', async () => {
    const dataDir = join(temp.dir, 'mine');
    const closers = createClosers(() => undefined);
    expect(chooseDataFolder({ mode: 'check', dataDir }, closers)).toBe(dataDir);
    await closers.closeAll();
    expect(existsSync(dataDir)).toBe(true);
  });
});
