/** Order of ids, of the ladder and of bags. None of it depends on the order of the input. */

/** Code-unit order of two strings, as a sign. */
export const compareIds = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Ladder order: by carry down, ties by id in code-unit order. */
export const compareLadder = (
  a: { carryDy: number; id: string },
  b: { carryDy: number; id: string },
): number => b.carryDy - a.carryDy || compareIds(a.id, b.id);

/** Order of two sorted lists: entry by entry, a list that ends first coming first. */
export const compareLists = <T>(
  a: ArrayLike<T>,
  b: ArrayLike<T>,
  compare: (x: T, y: T) => number,
): number => {
  const shared = Math.min(a.length, b.length);
  for (let i = 0; i < shared; i++) {
    const sign = compare(a[i] as T, b[i] as T);
    if (sign !== 0) return sign;
  }
  return a.length - b.length;
};
