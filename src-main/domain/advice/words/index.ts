import { german } from './de.ts';
import { english } from './en.ts';
import type { Words } from './words.ts';

const LANGUAGES: ReadonlyMap<string, Words> = new Map([
  ['en', english],
  ['de', german],
]);

/** What advice says in a locale's language ("de-AT" → German); English where there is none, and where none is asked for. */
export function adviceWords(locale = 'en'): Words {
  return LANGUAGES.get(locale.split('-')[0]?.toLowerCase() ?? '') ?? english;
}
