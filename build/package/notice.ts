import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { readShipped, type Shipped } from './licences.ts';

/** NOTICE.txt of a packed program: what of others is in it, and on which terms. */

/**
 * The folders of all packages that are shipped, from the project's: those whose code the builder put into out/ (it
 * writes the lists), the natives that go beside it, and what those were compiled from.
 */
export function shippedFolders(root: string): string[] {
  const lists = join(root, 'out', 'bundled');
  const bundled = readdirSync(lists).flatMap(
    (file) => JSON.parse(readFileSync(join(lists, file), 'utf8')) as string[],
  );
  const { dependencies } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
    dependencies: Record<string, string>;
  };
  const natives = [...Object.keys(dependencies), 'node-addon-api'].map((name) => `node_modules/${name}`);
  return [...new Set([...bundled, ...natives])].sort();
}

/** What is no package, and still in it. `terms` in full. */
type Part = { what: string; terms: string };

function otherParts(root: string): Part[] {
  return [
    {
      what: 'Electron, with Chromium, Node.js and what they are made of',
      terms: 'In LICENSE.electron.txt and LICENSES.chromium.html, which lie with the program.',
    },
    {
      what: 'SQLite, inside better-sqlite3',
      terms: 'Its authors have given it to the public domain (sqlite.org/copyright.html).',
    },
    {
      what: 'The demo "range-bag": means of shots that someone measured and gave to others',
      terms: readFileSync(join(root, 'db', 'demo', 'shots-one-bag.LICENCE.txt'), 'utf8').trim(),
    },
  ];
}

const RULE = '-'.repeat(78);

/** The whole text: a list first, then the terms of each. */
export function noticeText(packages: readonly Shipped[], parts: readonly Part[]): string {
  const list = packages.map(({ name, version, licence }) => `${name}@${version} (${licence})`);
  const chapter = (title: string, terms: string) => `${RULE}\n${title}\n${RULE}\n${terms}\n`;
  return [
    'Loftledger is under the MIT licence (LICENSE.txt). It contains work of others:\n',
    `${[...list, ...parts.map(({ what }) => what)].map((line) => `- ${line}`).join('\n')}\n`,
    ...packages.map(({ text }, i) => chapter(list[i] ?? '', text)),
    ...parts.map(({ what, terms }) => chapter(what, terms)),
  ].join('\n');
}

/**
 * Writes out/NOTICE.txt for what is built in out/.
 * @returns the packages in it
 * @throws Error for a package that cannot be shipped
 */
export function writeNotice(root: string): Shipped[] {
  const packages = shippedFolders(root).map((folder) => readShipped(join(root, folder)));
  writeFileSync(join(root, 'out', 'NOTICE.txt'), noticeText(packages, otherParts(root)));
  return packages;
}
