import type { Settings } from '../../src-main/contract/calls/program/program.ts';
import { de } from './de/index.ts';
import { en, type Words } from './en/index.ts';

/** The languages of the window. A further one is a folder beside `en`, and a line here. */
export const DICTIONARIES = { en, de } satisfies Record<Language, Words>;
export type Language = Exclude<Settings['language'], 'system'>;
export const LANGUAGES = Object.keys(DICTIONARIES) as Language[];

/** Each by its own name, so that everybody finds theirs. */
export const LANGUAGE_NAMES: Record<Language, string> = { en: 'English', de: 'Deutsch' };
