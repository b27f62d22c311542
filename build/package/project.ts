import { readdirSync, readFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';
import type { Shipped } from './licences.ts';

/** What the project says that its package should be. */
export type Project = {
  version: string;
  /** What is shipped as packages, by name. */
  dependencies: string[];
  /** Name → text of db/migrations. */
  migrations: ReadonlyMap<string, string>;
  /** Every package that has code in the program. */
  shipped: readonly Pick<Shipped, 'name' | 'version'>[];
  /** As Node spells it: x64, arm64. */
  arch: string;
  /** Folders of this machine, which no packed file may name. */
  machineFolders: string[];
};

export function readProject(root: string, shipped: Project['shipped']): Project {
  const { version, dependencies } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
    version: string;
    dependencies: Record<string, string>;
  };
  const sql = join(root, 'db', 'migrations');
  const names = readdirSync(sql).filter((name) => name.endsWith('.sql'));
  return {
    version,
    dependencies: Object.keys(dependencies).sort(),
    migrations: new Map(names.map((name) => [name, readFileSync(join(sql, name), 'utf8')])),
    shipped,
    arch: process.arch,
    machineFolders: [root, homedir()].filter((folder) => folder.length > 1),
  };
}
