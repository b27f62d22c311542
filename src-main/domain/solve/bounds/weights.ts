import type { Reached } from './region.ts';

/** Weights of cost, penalty and count, by column: each row makes one number of a bag, to be made least. */
export type Weights = { size: number; cost: Float64Array; penalty: Float64Array; count: Float64Array };

/** One row. */
export type Weight = { cost: number; penalty: number; count: number };

/** Pure cost and pure penalty: the first two rows of all weights. */
export const PURE: readonly Weight[] = [
  { cost: 1, penalty: 0, count: 0 },
  { cost: 0, penalty: 1, count: 0 },
];

/** Number of rows that weigh one thing alone. */
export const PURES = PURE.length;

/** Rows are padded to a multiple of this, by repeating the last: bounds are made four at a time. */
export const BLOCK = 4;

export const weightsOf = (rows: readonly Weight[]): Weights => {
  const padded = [...rows];
  while (padded.length % BLOCK !== 0) padded.push(rows.at(-1) as Weight);
  return {
    size: padded.length,
    cost: Float64Array.from(padded, (row) => row.cost),
    penalty: Float64Array.from(padded, (row) => row.penalty),
    count: Float64Array.from(padded, (row) => row.count),
  };
};

export const pureWeights = (): Weights => weightsOf(PURE);

/** Costs of one unit of penalty to look at when nothing is known yet, in minor units. */
export const FIRST_SLOPES = [4, 10, 25, 60, 150, 400];

export const firstWeights = (): Weights =>
  weightsOf([...PURE, ...FIRST_SLOPES.map((penalty) => ({ cost: 1, penalty, count: 0 }))]);

/** A few of the weights, for a first coarse look: a middle slope, and the last. */
export const coarse = (weights: Weights): Weights => {
  const row = (t: number): Weight => ({
    cost: weights.cost[t] as number,
    penalty: weights.penalty[t] as number,
    count: weights.count[t] as number,
  });
  return weightsOf([...PURE, row((PURES + weights.size) >> 1), row(weights.size - 1)]);
};

const slope = (a: Reached, b: Reached): number => (b.cost - a.cost) / (a.penalty - b.penalty);

/** Cost per unit of penalty along the lower hull, rising. */
export const hullSlopes = (found: readonly Reached[]): number[] => {
  const hull = hullOf(found);
  return hull.slice(1).map((point, i) => slope(hull[i] as Reached, point));
};

/** A slope to begin with where a curve has none, in minor units. */
const USUAL_SLOPE = 16;
/** Past its last point a curve is taken to rise so many times as steeply. */
const STEEPER = 4;

/** The slope of a curve's hull about a penalty: the mean, in ratio, of those before and after it. */
export const slopeAt = (found: readonly Reached[], penalty: number): number => {
  const hull = hullOf(found);
  const at = hull.findIndex((point) => point.penalty <= penalty);
  const edge = (from: number): number | null => {
    const [a, b] = [hull[from], hull[from + 1]];
    return at < 0 || a === undefined || b === undefined ? null : slope(a, b);
  };
  const [before, after] = [edge(at - 1), edge(at)];
  const low = before ?? after ?? USUAL_SLOPE;
  return Math.sqrt(low * (after ?? STEEPER * low));
};

const hullOf = (found: readonly Reached[]): Reached[] => {
  const hull: Reached[] = [];
  for (const point of found) {
    while (hull.length > 1) {
      const [a, b] = hull.slice(-2) as [Reached, Reached];
      if (slope(a, b) < slope(b, point)) break;
      hull.pop();
    }
    hull.push(point);
  }
  return hull;
};
