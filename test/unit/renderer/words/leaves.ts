/** A text of a dictionary: where it stands, and what it says with sample figures. */
export type Leaf = { path: string; says: string };

/** What functions are called with that take something else than figures and names ready to print. */
export type Samples = Readonly<Record<string, readonly unknown[][]>>;

const FIGURE = '7';

/** Every text of a dictionary, functions called with each of their samples, so that no branch is left out. */
export function leavesOf(dictionary: object, samples: Samples, path = ''): Leaf[] {
  return Object.entries(dictionary).flatMap(([key, value]: [string, unknown]): Leaf[] => {
    const here = path === '' ? key : `${path}.${key}`;
    if (typeof value === 'string') return [{ path: here, says: value }];
    if (typeof value === 'function') {
      const calls = samples[here] ?? [Array.from({ length: value.length }, () => FIGURE)];
      return calls.map((args) => ({
        path: here,
        says: (value as (...all: unknown[]) => string)(...args),
      }));
    }
    if (typeof value === 'object' && value !== null) return leavesOf(value, samples, here);
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
