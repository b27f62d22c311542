import { KEPT } from './kept.ts';
import { RECORD_FILES } from './record-files.ts';
import { STORED } from './stored.ts';
import { TABLES } from './tables.ts';
import { TERMS, type Sentence } from './terms.ts';
import { VALUES } from './values.ts';

const SENTENCES: readonly Sentence[] = [...VALUES, ...TABLES, ...KEPT, ...STORED, ...RECORD_FILES];

/** More pieces than any refusal has; a longer text is somebody's own. */
const MOST_PIECES = 60;

/**
 * What the service says of a refusal, in German. One text may be several sentences, a head and what follows it: each is
 * looked up. What no sentence of the tables is stays as it was: a name, or a text that is not known here.
 */
export function said(text: string): string {
  // Pieces and the blanks between them by turns. Values may hold a full stop, so a sentence is one piece or more.
  const parts = text.split(/((?<=[.:!?])\s+|\n\s*)/);
  if (parts.length > MOST_PIECES * 2) return text;
  return whole(parts) ?? inParts(parts);
}

/** The first way to part the text that leaves nothing untranslated; null for none. */
function whole(parts: readonly string[], from = 0, failed = new Set<number>()): string | null {
  if (from >= parts.length) return '';
  if (failed.has(from)) return null;
  for (let to = from + 1; to <= parts.length; to += 2) {
    const first = sentence(parts.slice(from, to).join(''));
    const rest = first === null ? null : whole(parts, to + 1, failed);
    if (rest !== null) return `${first ?? ''}${parts[to] ?? ''}${rest}`;
  }
  failed.add(from);
  return null;
}

function inParts(parts: readonly string[]): string {
  let text = '';
  for (let from = 0; from < parts.length;) {
    let to = from + 1;
    let found = sentence(parts[from] ?? '');
    while (found === null && to + 2 <= parts.length) {
      to += 2;
      found = sentence(parts.slice(from, to).join(''));
    }
    if (found === null) to = from + 1;
    text += `${found ?? parts[from] ?? ''}${parts[to] ?? ''}`;
    from = to + 1;
  }
  return text;
}

/** One sentence, with or without its full stop; null for one that the tables do not have. */
function sentence(text: string): string | null {
  const end = text.endsWith('.') ? '.' : '';
  const plain = end === '' ? text : text.slice(0, -1);
  for (const [english, german] of SENTENCES) {
    const found = english.exec(plain);
    if (found === null) continue;
    const filled = german.replace(/([$#@])(\d)/g, (_, as: string, at: string) =>
      shown(as, found[Number(at)] ?? ''),
    );
    const isUpper = /^\p{Lu}/u.test(plain);
    return `${isUpper ? filled.charAt(0).toLocaleUpperCase('de') + filled.slice(1) : filled}${end}`;
  }
  return null;
}

function shown(as: string, value: string): string {
  if (as === '#') return germanNumber(value);
  return as === '@' ? term(value) : value;
}

/** 10.5 and 100,000 as they are written in German. */
function germanNumber(value: string): string {
  if (/^-?\d{1,3}(?:,\d{3})+$/.test(value)) return value.replaceAll(',', '.');
  return /^-?\d+\.\d+$/.test(value) ? value.replace('.', ',') : value;
}

/** A word of the tables, or a list of them. */
function term(text: string): string {
  if (Object.hasOwn(TERMS, text)) return TERMS[text] ?? text;
  if (text.includes(' or ')) return text.split(' or ').map(term).join(' oder ');
  if (text.includes(', ')) return text.split(', ').map(term).join(', ');
  return text.replace(/^sale of /, 'Verkauf von ').replace(/^price of /, 'Preis von ');
}
