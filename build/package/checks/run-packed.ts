import { join } from 'node:path';
import { extractAll } from '@electron/asar';
import Database from 'better-sqlite3';
import { loadCatalogue } from '../../../db/catalogue/index.ts';
import { DATABASE_NAME } from '../../../src-main/service/records/data-folder.ts';
import { ROOT, run } from '../pack.ts';
import type { Project } from '../project.ts';

/**
 * Runs the packed program's own files, taken out of the archive to where the project is out of reach, with the tests'
 * fake in Electron's place. It shows that the bundle finds its driver, its SQL, its catalogue, its demo and its
 * threads; that Electron reads them inside the archive is shown where there is one.
 * @param folder an empty one for the files and the records
 * @returns what is wrong, a line each
 */
export async function runProblems(
  resources: string,
  folder: string,
  { migrations }: Pick<Project, 'migrations'>,
): Promise<string[]> {
  const program = join(folder, 'program');
  const records = join(folder, 'records');
  extractAll(join(resources, 'app.asar'), program);
  const fake = join(ROOT, 'test', 'faults', 'host', 'host-electron-hooks.ts');
  const entry = join(program, 'out', 'main', 'main.js');
  const { exitCode, output } = await run(['--import', fake, entry, '--check', '--data', records]);
  if (exitCode !== 0 || !output.includes('"host":"electron"')) {
    return [`--check ended with ${String(exitCode)}: ${output.trim().slice(-600)}`];
  }
  if (!output.includes('"plan answered"')) return [`the demo was not planned: ${output.trim().slice(-600)}`];
  return recordsProblems(join(records, DATABASE_NAME), {
    user_version: migrations.size,
    archetypes: loadCatalogue().length,
    players: 1,
  });
}

/** The records that a first run leaves: all migrations done, the whole catalogue in, the demo's player. */
function recordsProblems(file: string, wanted: Readonly<Record<string, number>>): string[] {
  const db = new Database(file, { readonly: true, fileMustExist: true });
  try {
    const found = {
      user_version: db.pragma('user_version', { simple: true }),
      archetypes: db.prepare('SELECT count(*) FROM archetype').pluck().get(),
      players: db.prepare('SELECT count(*) FROM player').pluck().get(),
    };
    return Object.entries(found)
      .filter(([what, count]) => count !== wanted[what])
      .map(([what, count]) => `${what}: ${String(count)}, not ${String(wanted[what])}`);
  } finally {
    db.close();
  }
}
