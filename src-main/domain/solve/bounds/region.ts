/**
 * Where an answer worth having can still lie: below and left of one of the corners (x cost, y penalty),
 * the corner itself included. Corners rise in x and fall in y.
 */
export type Region = { x: Float64Array; y: Float64Array };

/** Stands for no limit: beyond every sum of an instance (`LARGEST_TOTAL`), and still an exact whole number. */
export const NO_LIMIT = 2 ** 52;

/** A cost and a penalty that some bag reaches. */
export type Reached = { cost: number; penalty: number };

export const everywhere = (): Region => atMost(NO_LIMIT, NO_LIMIT);

export const atMost = (cost: number, penalty: number): Region => ({
  x: Float64Array.of(cost),
  y: Float64Array.of(penalty),
});

/**
 * The points that are as good as, or not bettered by, what has been reached: between two reached points
 * strictly less of both than the corner that they make, and the reached points themselves, for their ties.
 * @param reached nondominated, by rising cost
 */
export const notBettered = (reached: readonly Reached[]): Region => {
  const x: number[] = [];
  const y: number[] = [];
  let above = NO_LIMIT;
  for (const point of reached) {
    const between = above - 1 > point.penalty;
    if (x.length === 0 || (between && (x.at(-1) as number) < point.cost - 1)) {
      x.push(point.cost - 1);
      y.push(x.length === 1 ? NO_LIMIT : above - 1);
    }
    x.push(point.cost);
    y.push(point.penalty);
    above = point.penalty;
  }
  x.push(NO_LIMIT);
  y.push(reached.length === 0 ? NO_LIMIT : above - 1);
  return { x: Float64Array.from(x), y: Float64Array.from(y) };
};

/** The most penalty that the region allows at a cost; -1: none. */
export const penaltyAt =
  ({ x, y }: Region) =>
  (cost: number): number => {
    let lo = 0;
    let hi = x.length;
    while (lo < hi) {
      const middle = (lo + hi) >> 1;
      if ((x[middle] as number) < cost) lo = middle + 1;
      else hi = middle;
    }
    return lo < x.length ? (y[lo] as number) : -1;
  };

/** What lies in both. */
export const meet = (a: Region, b: Region): Region => {
  const [inA, inB] = [penaltyAt(a), penaltyAt(b)];
  const x: number[] = [];
  const y: number[] = [];
  for (const cost of [...new Set([...a.x, ...b.x])].sort((one, other) => one - other)) {
    const penalty = Math.min(inA(cost), inB(cost));
    if (penalty < 0) break;
    // Corners of one height are one corner, the last.
    if (y.at(-1) === penalty) x[x.length - 1] = cost;
    else {
      x.push(cost);
      y.push(penalty);
    }
  }
  return { x: Float64Array.from(x), y: Float64Array.from(y) };
};
