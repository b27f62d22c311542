import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** A package whose code we hand on, with the terms that let us. */
export type Shipped = { name: string; version: string; licence: string; text: string };

/** What may be shipped with an MIT program when its text goes along. */
const FREE = ['0BSD', 'Apache-2.0', 'BSD-2-Clause', 'BSD-3-Clause', 'BlueOak-1.0.0', 'ISC', 'MIT', 'Zlib'];

const LICENCE_FILE = /^(?:licen[cs]e|copying)(?:[.-].*)?$/i;
const NOTICE_FILE = /^notice(?:\..*)?$/i;

/**
 * A package's name, version, licence and its whole text, of every licence and notice file in it.
 * @param folder of the installed package
 * @throws Error for a package without a licence text, or with terms that nobody has looked at
 */
export function readShipped(folder: string): Shipped {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as {
    name: string;
    version: string;
    license?: unknown;
  };
  const files = readdirSync(folder).sort();
  const texts = (pattern: RegExp) =>
    files.filter((file) => pattern.test(file)).map((file) => readFileSync(join(folder, file), 'utf8').trim());
  const terms = texts(LICENCE_FILE);
  if (terms.length === 0) throw new Error(`${folder}: no licence file, so it cannot be shipped.`);
  const licence = typeof license === 'string' ? license : licenceOf(terms[0] ?? '');
  if (!FREE.includes(licence)) {
    throw new Error(
      `${folder}: licence "${licence}" is not one of ${FREE.join(', ')}. Read it; then add it here or drop the package.`,
    );
  }
  return { name, version, licence, text: [...terms, ...texts(NOTICE_FILE)].join('\n\n') };
}

/** For a package.json that does not say: only what is certain by its wording. */
function licenceOf(text: string): string {
  const isMit = /permission is hereby granted, free of charge[\s\S]*the software is provided .as is./i.test(
    text,
  );
  return isMit ? 'MIT' : 'unknown';
}
