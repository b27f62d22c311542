import { german } from './de.ts';
import { english } from './en.ts';
import type { SeenOneWords } from './words.ts';

/** Why one that was seen is bought or left, in the language of the advice. */
export const seenOneWords = (language: string): SeenOneWords => (language === 'de' ? german : english);
