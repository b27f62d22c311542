import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Project } from '../project.ts';

/** What must hold of the files beside the archive. They return what is wrong, a line each. */

/** Licences: ours, the packages', Electron's, Chromium's. */
export function licenceProblems(folder: string, { shipped }: Pick<Project, 'shipped'>): string[] {
  const files = [
    'resources/LICENSE.txt',
    'resources/NOTICE.txt',
    'LICENSE.electron.txt',
    'LICENSES.chromium.html',
  ];
  const missing = files.filter((file) => !existsSync(join(folder, file)));
  if (missing.length > 0) return missing.map((file) => `${file} is missing`);
  const notice = readFileSync(join(folder, 'resources/NOTICE.txt'), 'utf8');
  if (shipped.length === 0) return ['no package is known to be shipped'];
  return (
    shipped
      .map(({ name, version }) => `${name}@${version} (`)
      // Once in the list, once over its terms.
      .filter((title) => notice.split(title).length < 3)
      .map((title) => `NOTICE.txt lacks ${title.slice(0, -2)}`)
  );
}

/** It must not look for updates: nothing says where they would be. */
export function updateProblems(folder: string): string[] {
  const files = ['resources/app-update.yml', 'resources/default_app.asar'];
  return files.filter((file) => existsSync(join(folder, file))).map((file) => `${file} is there`);
}
