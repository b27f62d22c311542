import { german } from './de.ts';
import { english } from './en.ts';
import type { ReportWords } from './words.ts';

const LANGUAGES: ReadonlyMap<string, ReportWords> = new Map([
  ['en', english],
  ['de', german],
]);

/** Languages that the hand-over is written in. */
export const REPORT_LANGUAGES: readonly string[] = [...LANGUAGES.keys()];

/** The texts for a locale ("de-AT" → German); English where there are none. */
export function reportWords(locale: string): ReportWords {
  return LANGUAGES.get(locale.split('-')[0]?.toLowerCase() ?? '') ?? english;
}
