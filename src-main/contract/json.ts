import { RefusedInput } from './refusal.ts';

/**
 * Bytes of a file, or text, to a JSON value.
 * @throws RefusedInput for an empty, binary, oversize, badly encoded or malformed file, with line and column.
 */
export function parseJson(bytes: Uint8Array | string, limits: { what: string; maxBytes: number }): unknown {
  const { what, maxBytes } = limits;
  const refuse = (path: string, value: string, message: string, remedy: string): never => {
    throw new RefusedInput(`This ${what} cannot be read:`, [{ path, value, message, remedy }]);
  };
  const size = bytes.length;
  if (size > maxBytes) {
    refuse(
      '$',
      `${megabytes(size)} MB`,
      `the file is too large (at most ${megabytes(maxBytes)} MB)`,
      `Check that it is a ${what}.`,
    );
  }
  let text: string;
  if (typeof bytes === 'string') text = bytes;
  else {
    try {
      text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: false }).decode(bytes);
    } catch {
      return refuse('$', '(binary)', 'the file is not UTF-8 text', `Give a ${what} in JSON, saved as UTF-8.`);
    }
  }
  if (text.charCodeAt(0) === 0xfeff) text = text.slice(1);
  if (text.includes('\u0000')) {
    return refuse('$', '(binary)', 'the file holds zero bytes and is no text', `Give a ${what} in JSON.`);
  }
  if (text.trim() === '') return refuse('$', '(empty)', 'the file is empty', `Give a ${what} in JSON.`);
  const deep = tooDeep(text, 64);
  if (deep) refuse('$', '(nested)', 'brackets are nested deeper than 64', `Give a ${what} in JSON.`);
  try {
    return JSON.parse(text) as unknown;
  } catch (error) {
    const detail = error instanceof Error ? error.message : String(error);
    const place = placeIn(text, detail);
    return refuse(
      place.path,
      place.value,
      `this is not JSON (${detail.slice(0, 160)})`,
      'Mend it there; NaN and Infinity are no JSON numbers.',
    );
  }
}

function megabytes(bytes: number): string {
  return (bytes / 1024 / 1024).toFixed(1);
}

/** Counts brackets outside strings; a hostile file of a million "[" is refused before anything recurses into it. */
function tooDeep(text: string, most: number): boolean {
  let depth = 0;
  let inText = false;
  for (let i = 0; i < text.length; i++) {
    const c = text.charCodeAt(i);
    if (inText) {
      if (c === 0x5c) i++;
      else if (c === 0x22) inText = false;
    } else if (c === 0x22) inText = true;
    else if (c === 0x5b || c === 0x7b) {
      depth++;
      if (depth > most) return true;
    } else if (c === 0x5d || c === 0x7d) depth--;
  }
  return false;
}

function placeIn(text: string, message: string): { path: string; value: string } {
  const at = positionIn(message) ?? firstBad(text);
  if (at >= text.length) return { path: '$ (end of file)', value: '' };
  const before = text.slice(0, at).split('\n');
  return {
    path: `$ (line ${String(before.length)}, column ${String((before.at(-1)?.length ?? 0) + 1)})`,
    value: JSON.stringify(text.slice(at, at + 20)),
  };
}

function positionIn(message: string): number | null {
  const found = /position (\d+)/.exec(message)?.[1];
  return found === undefined ? null : Number(found);
}

/**
 * Index of the first letter that no JSON text could have there: the engine does not always tell. A beginning of the
 * text fails by ending too early until it holds that letter, so halving finds it.
 */
function firstBad(text: string): number {
  let good = 0;
  let bad = text.length;
  while (bad - good > 1) {
    const middle = (good + bad) >> 1;
    if (endsTooEarly(text.slice(0, middle))) good = middle;
    else bad = middle;
  }
  return good;
}

function endsTooEarly(beginning: string): boolean {
  try {
    JSON.parse(beginning);
    return true;
  } catch (error) {
    const message = error instanceof Error ? error.message : '';
    return /end of JSON|Unterminated/.test(message) || positionIn(message) === beginning.length;
  }
}
