import type { Settings } from '../../../src-main/contract/calls/program/program.ts';
import { setLanguage } from '../../words/index.ts';
import { LANGUAGES, type Language } from '../../words/languages.ts';

export type LanguageChoice = Settings['language'];

/** The language to show: the chosen one, else the first that the machine's owner reads and we speak, else English. */
export function languageFor(choice: LanguageChoice, locales: readonly string[]): Language {
  if (choice !== 'system') return choice;
  const spoken = locales.map((locale) => LANGUAGES.find((language) => language === languageOf(locale)));
  return spoken.find((language) => language !== undefined) ?? 'en';
}

/**
 * Where figures and days are printed as the texts' readers write them: the machine's own locale of that language;
 * where it has none, the language as it is written in the machine's region.
 */
export function localeFor(language: Language, locales: readonly string[]): string {
  const own = locales.find((locale) => languageOf(locale) === language && regionOf(locale) !== undefined);
  if (own !== undefined) return own;
  const region = locales.map(regionOf).find((one) => one !== undefined);
  return region === undefined ? (USUAL[language] ?? language) : `${language}-${region}`;
}

/** For machines that name a language and no country. */
const USUAL: Record<Language, string> = { en: 'en-GB', de: 'de-DE' };

function languageOf(locale: string): string {
  return locale.split('-')[0]?.toLowerCase() ?? '';
}

function regionOf(locale: string): string | undefined {
  try {
    return new Intl.Locale(locale).region;
  } catch {
    return undefined;
  }
}

/** Turns the page to the language: its texts, and what a screen reader and hyphenation go by. */
export function applyLanguage(choice: LanguageChoice): void {
  const language = languageFor(choice, navigator.languages);
  setLanguage(language);
  document.documentElement.lang = language;
}
