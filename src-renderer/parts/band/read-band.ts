import type { Band } from '../../state/service/edits.ts';
import { words } from '../../words/index.ts';

export const BAND_PARTS = ['low', 'likely', 'high'] as const;
export type BandPart = (typeof BAND_PARTS)[number];
export type BandTexts = Record<BandPart, string>;

/** Null for three blanks. `unfinished`: nothing is wrong but that some are still blank. */
export function readBand(
  texts: BandTexts,
  parse: (text: string) => number | null,
): { band: Band | null } | { message: string; unfinished: boolean } {
  const numbers = BAND_PARTS.map((part) => (texts[part].trim() === '' ? undefined : parse(texts[part])));
  const wrong = BAND_PARTS.find((_part, i) => numbers[i] === null);
  if (wrong !== undefined) return { message: words.errors.notNumber(texts[wrong].trim()), unfinished: false };
  const [low, likely, high] = numbers;
  if (low === undefined && likely === undefined && high === undefined) return { band: null };
  if (typeof low !== 'number' || typeof likely !== 'number' || typeof high !== 'number') {
    return { message: words.errors.bandNeedsThree, unfinished: true };
  }
  return { band: { low, likely, high } };
}
