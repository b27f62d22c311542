import type { Labels } from './labels.ts';

/** Order in which one label can only be bettered by those before it. */
const before = (labels: Labels, a: number, b: number): boolean => {
  const { cost, penalty, changes, purchases, count } = labels;
  if (cost[a] !== cost[b]) return (cost[a] as number) < (cost[b] as number);
  if (penalty[a] !== penalty[b]) return (penalty[a] as number) < (penalty[b] as number);
  if (changes[a] !== changes[b]) return (changes[a] as number) < (changes[b] as number);
  if (purchases[a] !== purchases[b]) return (purchases[a] as number) < (purchases[b] as number);
  return (count[a] as number) < (count[b] as number);
};

/** Sorts `list[from..to]` in place by `before`: quicksort, insertion for short runs. */
export const sortLabels = (labels: Labels, list: Int32Array, from: number, to: number): void => {
  let lo = from;
  let hi = to;
  while (hi - lo > 12) {
    const middle = list[(lo + hi) >> 1] as number;
    let i = lo;
    let j = hi;
    while (i <= j) {
      while (before(labels, list[i] as number, middle)) i++;
      while (before(labels, middle, list[j] as number)) j--;
      if (i <= j) {
        const swap = list[i] as number;
        list[i] = list[j] as number;
        list[j] = swap;
        i++;
        j--;
      }
    }
    if (j - lo < hi - i) {
      sortLabels(labels, list, lo, j);
      lo = i;
    } else {
      sortLabels(labels, list, i, hi);
      hi = j;
    }
  }
  for (let i = lo + 1; i <= hi; i++) {
    const label = list[i] as number;
    let j = i - 1;
    while (j >= lo && before(labels, label, list[j] as number)) {
      list[j + 1] = list[j] as number;
      j--;
    }
    list[j + 1] = label;
  }
};
