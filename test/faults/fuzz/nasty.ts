import type { Draw } from './draw.ts';

/** Values and bytes that programs have tripped over. */

export const NASTY_TEXTS: readonly string[] = [
  '',
  ' ',
  '\u0000',
  '\ud800',
  'a\udc00b',
  '\ufeff',
  '\u202egnp.exe',
  '__proto__',
  'constructor',
  'toString',
  '=1+1',
  '@SUM(A1)',
  "'); DROP TABLE player;--",
  '<img src=x onerror=alert(1)>',
  '../../../../etc/passwd',
  'C:\\Windows\\System32',
  '%00%0a',
  '\r\n\r\nHTTP/1.1 200 OK',
  'NaN',
  'Infinity',
  '1e999',
  '-0',
  '0x10',
  '１２',
  '9'.repeat(400),
  '2026-02-30',
  '9999-12-31',
  '0000-00-00',
  '👩‍👩‍👧‍👦'.repeat(30),
  'ﷺ',
  'e\u0301'.repeat(50),
  'x'.repeat(201),
  'x'.repeat(100_000),
  '"',
  '""',
  ',;\t|',
  '[['.repeat(2000),
  '{"a":'.repeat(2000),
  'GBP',
  'XXX',
  'hybrid-22-t3',
  'buy:hybrid-22-t3',
];

export const NASTY_NUMBERS: readonly number[] = [
  0,
  -0,
  1,
  -1,
  0.1,
  -0.5,
  1e-320,
  5e-324,
  1e21,
  1e308,
  -1e308,
  2 ** 31,
  2 ** 32,
  2 ** 53,
  2 ** 53 + 2,
  -(2 ** 53),
  Number.NaN,
  Infinity,
  -Infinity,
  4.35,
  54.00000000000001,
  99999999.999,
];

/** What IPC could bring and JSON could not. */
const STRANGE: readonly (() => unknown)[] = [
  () => undefined,
  () => 12n,
  () => new Date(Number.NaN),
  () => new Map([['bagId', 1]]),
  () => new Set([1]),
  () => /x/,
  () => new Uint8Array(3),
  () => new Error('x'),
  () => {
    const circle: Record<string, unknown> = {};
    circle['circle'] = circle;
    return circle;
  },
  () => JSON.parse('{"__proto__":{"bagId":1}}') as unknown,
  () => Object.create(null) as unknown,
  () => Array.from({ length: 3 }),
  () => new Array(5),
];

const LIST_LENGTHS = [0, 1, 2, 61, 2001, 20_000];

/** Anything but what was asked for. @param strange also what JSON cannot hold. */
export function nastyValue(draw: Draw, strange: boolean, depth = 0): unknown {
  const kind = draw.below(strange ? 9 : 7);
  switch (kind) {
    case 0:
    case 1:
      // Long ones at the top alone: what comes by HTTP has a megabyte at most.
      return draw.pick(NASTY_TEXTS).slice(0, depth > 0 ? 40 : undefined);
    case 2:
    case 3:
      return draw.pick(NASTY_NUMBERS);
    case 4:
      return draw.pick([null, true, false]);
    case 5: {
      if (depth > 3) return [];
      const value = nastyValue(draw, strange, depth + 2);
      return Array.from({ length: draw.pick(LIST_LENGTHS.slice(0, depth > 0 ? 3 : 6)) }, () => value);
    }
    case 6:
      if (depth > 3) return {};
      return {
        [draw.pick(NASTY_TEXTS).slice(0, depth > 0 ? 40 : undefined)]: nastyValue(draw, strange, depth + 1),
      };
    default:
      return draw.pick(STRANGE)();
  }
}

type Holder = Record<string, unknown> | unknown[];

/** Every place in a value that can be changed: the object or list that holds it, and its key there. */
function placesIn(
  value: unknown,
  places: [Holder, string | number][] = [],
  seen = new Set<unknown>(),
): [Holder, string | number][] {
  if (value === null || typeof value !== 'object' || ArrayBuffer.isView(value) || seen.has(value))
    return places;
  seen.add(value);
  if (Array.isArray(value)) {
    value.forEach((item, i) => {
      places.push([value, i]);
      placesIn(item, places, seen);
    });
  } else {
    for (const [key, item] of Object.entries(value)) {
      places.push([value as Record<string, unknown>, key]);
      placesIn(item, places, seen);
    }
  }
  return places;
}

/** The value (of plain JSON), broken in one to three places. */
export function broken(draw: Draw, whole: unknown, strange = false): unknown {
  if (draw.chance(0.04)) return nastyValue(draw, strange);
  const value: unknown = structuredClone(whole);
  for (let n = draw.between(1, 3); n > 0; n -= 1) {
    const places = placesIn(value);
    if (places.length === 0) return nastyValue(draw, strange);
    const [holder, key] = draw.pick(places);
    const how = draw.below(6);
    if (Array.isArray(holder)) {
      if (how === 0) holder.splice(Number(key), 1);
      else if (how === 1) holder.push(...holder.slice(0, 50));
      else holder[Number(key)] = nastyValue(draw, strange, 1);
    } else if (how === 0) Reflect.deleteProperty(holder, key);
    else if (how === 1) holder[draw.pick(['extra', 'bagid', ' bagId', 'constructor', 'id'])] = 1;
    else if (how === 2 && typeof holder[key] === 'number') {
      holder[key] = Number(holder[key]) * draw.pick([-1, 0, 10, 1e9, 1 + 1e-9]);
    } else holder[key] = nastyValue(draw, strange, draw.chance(0.1) ? 0 : 1);
  }
  return value;
}

/** A text with one to eight of its parts changed. */
export function brokenText(draw: Draw, whole: string): string {
  let text = whole;
  for (let n = draw.between(1, 8); n > 0; n -= 1) {
    const at = draw.below(text.length + 1);
    const to = Math.min(text.length, at + draw.size(40));
    const how = draw.below(7);
    if (how === 0) text = text.slice(0, at) + text.slice(to);
    else if (how === 1) text = text.slice(0, at);
    else if (how === 2) text = text.slice(0, at) + text.slice(at, to).repeat(3) + text.slice(to);
    else if (how === 3)
      text = text.slice(0, at) + draw.pick([',', '"', '\n', '\r', ';', '\t', ':', '{', '}']) + text.slice(at);
    else if (how === 4) text = text.slice(0, at) + String(draw.pick(NASTY_NUMBERS)) + text.slice(to);
    else text = text.slice(0, at) + draw.pick(NASTY_TEXTS).slice(0, 3000) + text.slice(to);
  }
  return text;
}

/** Bytes with some flipped, cut, doubled or put in. */
export function brokenBytes(draw: Draw, whole: Uint8Array): Uint8Array {
  let bytes = Buffer.from(whole);
  for (let n = draw.between(1, 6); n > 0 && bytes.length > 0; n -= 1) {
    const at = draw.below(bytes.length);
    const how = draw.below(5);
    if (how === 0) bytes = bytes.subarray(0, at);
    else if (how === 1) bytes = Buffer.concat([bytes.subarray(0, at), bytes.subarray(Math.max(0, at - 64))]);
    else if (how === 2) bytes.fill(draw.below(256), at, Math.min(bytes.length, at + draw.size(64) + 1));
    else bytes[at] = (bytes[at] ?? 0) ^ (1 << draw.below(8));
  }
  return bytes;
}
