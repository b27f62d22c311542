import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

/** What comes from outside: exact versions, each with its fingerprint, no host, no script of a package ever run. */
const ROOT = resolve(import.meta.dirname, '..', '..', '..');
const read = (name: string) => readFileSync(join(ROOT, name), 'utf8');

type Entry = {
  version?: string;
  integrity?: string;
  resolved?: string;
  link?: boolean;
  hasInstallScript?: boolean;
};
const project = JSON.parse(read('package.json')) as Record<string, Record<string, string> | undefined>;
const lock = JSON.parse(read('package-lock.json')) as {
  lockfileVersion: number;
  packages: Record<string, Entry>;
};
const packages = Object.entries(lock.packages).filter(([place]) => place !== '');

describe('package.json', () => {
  it.each(['dependencies', 'optionalDependencies', 'devDependencies'])('has exact versions in %s', (kind) => {
    for (const [name, version] of Object.entries(project[kind] ?? {})) {
      expect(version, name).toMatch(/^\d+\.\d+\.\d+$/);
      expect(lock.packages[`node_modules/${name}`]?.version, name).toBe(version);
    }
  });

  it('ships one package that is not bundled: the compiled driver of the database', () => {
    expect(Object.keys(project['dependencies'] ?? {})).toEqual(['better-sqlite3']);
  });
});

describe('the lockfile', () => {
  it('has a fingerprint (SHA-512) of every package', () => {
    expect(packages.length).toBeGreaterThan(100);
    for (const [place, { integrity }] of packages) expect(integrity, place).toMatch(/^sha512-/);
  });

  it('names no registry, no address and no link', () => {
    for (const [place, { resolved, link }] of packages)
      expect([resolved, link], place).toEqual([undefined, undefined]);
    expect(read('package-lock.json')).not.toMatch(/"resolved"|git\+|file:/);
  });

  it('knows which packages would run a script at an install: none that the program or its tests need', () => {
    const withScripts = packages
      .filter(([, entry]) => entry.hasInstallScript === true)
      .map(([place]) => place);
    // Makes installers of another kind than ours, on Windows.
    expect(withScripts).toEqual(['node_modules/electron-winstaller']);
  });
});

it('the set-up runs no script of any package', () => {
  expect(read('build/bootstrap.mjs')).toContain("'--ignore-scripts'");
  expect(read('.npmrc')).toMatch(/omit-lockfile-registry-resolved=true/);
});

it('each package whose code is shipped has its reason in the list', () => {
  const list = read('build/package/README.md');
  const shipped = [
    ...['better-sqlite3', 'zod', 'tinypool', 'papaparse', 'fuse.js'],
    ...['svelte', 'bits-ui', 'd3-scale', 'd3-shape', 'svelte-dnd-action'],
  ];
  for (const name of shipped) {
    expect(list, name).toMatch(new RegExp(`^\\| \`${name}\` \\| .{10,} \\|$`, 'm'));
    expect({ ...project['dependencies'], ...project['devDependencies'] }, name).toHaveProperty([name]);
  }
});
