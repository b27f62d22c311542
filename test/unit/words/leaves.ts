/** A text of a dictionary: where it stands, and what it says with sample figures. */
export type Leaf = { path: string; says: string };

/** What functions are called with that take something else than figures and names ready to print. */
export type Samples = Readonly<Record<string, readonly unknown[][]>>;

/** Prints as a figure, and so does each of its parts: for functions of one text and of several alike. */
export const FIGURE: object = new Proxy(
  {},
  { get: (_target, key) => (key === Symbol.toPrimitive ? () => '7' : '7') },
);

/** The same with some parts of its own. */
export const figures = (own: object): object =>
  new Proxy(own, { get: (target, key) => (Reflect.get(target, key) as unknown) ?? Reflect.get(FIGURE, key) });

/**
 * Every text of a dictionary by the order of its keys, functions called with each of their
 * samples, so that no branch is left out; without samples, with `figure` in every place.
 */
export function leavesOf(dictionary: object, samples: Samples, figure: unknown = '7', path = ''): Leaf[] {
  const entries = Object.entries(dictionary).sort(([a], [b]) => (a < b ? -1 : 1));
  return entries.flatMap(([key, value]: [string, unknown]): Leaf[] => {
    const here = path === '' ? key : `${path}.${key}`;
    if (typeof value === 'string') return [{ path: here, says: value }];
    if (typeof value === 'function') {
      const calls = samples[here] ?? [Array.from({ length: value.length }, () => figure)];
      return calls.map((args) => ({
        path: here,
        says: String((value as (...all: unknown[]) => unknown)(...args)),
      }));
    }
    if (typeof value === 'object' && value !== null) return leavesOf(value, samples, figure, here);
    throw new Error(`${here} is neither a text nor a function of one`);
  });
}

/** The longest sentence's words; a colon or semicolon ends none. */
export function longestSentence(text: string): number {
  return Math.max(...text.split(/(?<=[.!?…])\s+/).map((one) => one.split(/\s+/).filter(Boolean).length));
}

/** Words that English sentences hardly do without and German ones never have. */
export const ENGLISH =
  /\b(the|and|of|is|are|what|this|that|with|you|your|not|no|for|from|than|which|a club|clubs?)\b/i;
