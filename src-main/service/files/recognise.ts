import Papa from 'papaparse';
import type { IncomingKind } from '../../contract/formats/incoming-kinds.ts';
import { RefusedInput } from '../../contract/refusal.ts';
import { namesNeeded } from './csv.ts';
import { delimiterOf, FIRST_ROWS, likelyHeader } from './delimiter.ts';
import { PRICES_SPEC } from './prices-csv.ts';
import { ROSTER_SPEC } from './roster-csv.ts';

/** How much of a file is looked at to tell what it is. */
export const HEAD_BYTES = 64 * 1024;

/** The first bytes of every SQLite database: https://www.sqlite.org/fileformat.html, 1.3. */
const SQLITE = 'SQLite format 3\u0000';
const ZIP = 'PK\u0003\u0004';

const ACCEPTED =
  'What is taken in: bag files (.json), price lists, rosters and shots (.csv, .tsv, .txt), and whole records (.loftledger).';

/**
 * What a file is, by what it holds before what it is called.
 * @param head its first HEAD_BYTES, or all of it.
 * @throws RefusedInput for what is none of the kinds, saying which there are.
 */
export function recognise(name: string, head: Uint8Array): IncomingKind {
  const refuse = (value: string, message: string, remedy: string): never => {
    throw new RefusedInput('This file is not taken in:', [{ path: name, value, message, remedy }]);
  };
  if (head.length === 0) refuse('0 bytes', 'the file is empty', 'Choose another, or save it again.');
  const start = Buffer.from(head.subarray(0, 16)).toString('latin1');
  // One that only says that it is one is told by the check what it lacks.
  if (start.startsWith(SQLITE) || /\.loftledger$/i.test(name)) return 'database';
  if (start.startsWith(ZIP)) {
    refuse('(packed)', 'it is a packed file, as spreadsheets keep their own', 'Export the sheet as CSV.');
  }
  const isTable = /\.(?:csv|tsv|txt)$/i.test(name);
  const text = textOf(head);
  if (text === null) {
    const utf16 = /^(?:\u00ff\u00fe|\u00fe\u00ff)/.test(start);
    if (utf16) refuse('(UTF-16)', 'it is text of another kind, UTF-16', 'Save it as CSV in UTF-8.');
    if (isTable) refuse('(binary)', 'it is not UTF-8 text', 'Save it as CSV in UTF-8.');
    if (/\.json$/i.test(name)) refuse('(binary)', 'it is not UTF-8 text', 'Choose a bag file in JSON.');
    return refuse('(binary)', 'it is none of the kinds of files that are known here', ACCEPTED);
  }
  if (/^\s*[{[]/.test(text) || /\.json$/i.test(name)) {
    if (/"format"\s*:\s*"loftledger-plan"/.test(text)) {
      refuse(
        'loftledger-plan',
        'this is a plan, which is worked out and not taken in',
        'Choose the bag file.',
      );
    }
    return 'bag';
  }
  const header = headerOf(text);
  if (namesNeeded(header, PRICES_SPEC)) return 'prices';
  if (namesNeeded(header, ROSTER_SPEC)) return 'roster';
  if (!isTable) return refuse(shown(text), 'it is none of the kinds of files that are known here', ACCEPTED);
  if (header.length < 2) {
    refuse(shown(text), 'no row names two columns, so it is no table', 'Export it as CSV with a header.');
  }
  return 'shots';
}

/** @returns null for what is no text in UTF-8. A letter that the end cuts in two is none to mind. */
function textOf(head: Uint8Array): string | null {
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(head, { stream: true });
    return text.includes('\u0000') ? null : text;
  } catch {
    return null;
  }
}

/** The first row with two names in it. */
function headerOf(text: string): string[] {
  const { data } = Papa.parse<string[]>(text, { delimiter: delimiterOf(text), preview: FIRST_ROWS });
  return data[likelyHeader(data)] ?? [];
}

function shown(text: string): string {
  const line = text.trimStart().split(/[\r\n]/, 1)[0] ?? '';
  return line.length > 60 ? `${line.slice(0, 57)}...` : line;
}
