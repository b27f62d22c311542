import { plain, type Term } from './words.ts';

/** Letters of a text that are shown, and those before the first word that was found. Own choice, for two lines. */
const MOST_LETTERS = 160;
const BEFORE = 40;

/** A text on one line, cut to where the first word of those looked for stands; its beginning where none does. */
export function excerpt(text: string, ways: readonly (readonly Term[])[]): string {
  const words = text.trim().split(/\s+/);
  const wanted = ways.flat().flatMap((term) => ('word' in term ? [term.word] : []));
  const found = words.findIndex((word) => {
    const said = plain(word);
    return wanted.some((one) => said.includes(one));
  });
  let from = Math.max(0, found);
  for (let letters = 0; from > 0; from -= 1) {
    letters += (words[from - 1] ?? '').length + 1;
    if (letters > BEFORE) break;
  }
  const rest = [...words.slice(from).join(' ')];
  const cut = rest.length > MOST_LETTERS ? `${rest.slice(0, MOST_LETTERS - 1).join('')}…` : rest.join('');
  return from === 0 ? cut : `… ${cut}`;
}
