/** How well a word that was typed fits: at the beginning of a word of the text, of another name for it, or within. */
const BEGINS = 0;
const BEGINS_ALSO = 1;
const WITHIN = 2;
/** Fewer letters are within too many words. */
const WITHIN_FROM = 3;

type Named = { text: string; also: string };

/** What has every word that was typed, the better fits first, equal ones in their own order; all when none was typed. */
export function matching<T extends Named>(all: readonly T[], typed: string): T[] {
  const wanted = wordsIn(typed);
  return all
    .flatMap((one) => {
      const score = scoreOf(one, wanted);
      return score === null ? [] : [{ one, score }];
    })
    .sort((a, b) => a.score - b.score)
    .map(({ one }) => one);
}

function scoreOf({ text, also }: Named, wanted: readonly string[]): number | null {
  const own = wordsIn(text);
  const other = wordsIn(also);
  let sum = 0;
  for (const word of wanted) {
    if (own.some((one) => one.startsWith(word))) sum += BEGINS;
    else if (other.some((one) => one.startsWith(word))) sum += BEGINS_ALSO;
    else if (word.length >= WITHIN_FROM && own.some((one) => one.includes(word))) sum += WITHIN;
    else return null;
  }
  return sum;
}

/** Small letters without accents, so that "uber" finds "Über" and "hand over" the Hand-over. */
function wordsIn(text: string): string[] {
  return text
    .normalize('NFD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '');
}
