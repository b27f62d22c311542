import type { Point } from './instance.ts';

/** A penalty within which a bag counts as mended: a yard in ten at the usual weight of 2 (DESIGN §8). */
export const MENDED = 20;

/** From this penalty on, today's bag needs mending; smaller ones are not magnified (DESIGN §8). */
export const NEEDS_MENDING = 100;

type Worth = Pick<Point, 'cost' | 'penalty'>;

const firstMended = <P extends Worth>(points: readonly P[]): P | undefined =>
  points.find((p) => p.penalty <= MENDED);

/**
 * The plan (DESIGN §8): with P0 today's penalty and S = max(P0, 100), the cheapest mended point within budget
 * when P0 ≥ 100, else the point within budget with the largest (P0 − P)/S − ½·max(0, cost)/budget, ties to
 * the cheaper. Fractions are compared exactly.
 * @param frontier by rising cost
 */
export const headlineOf = <P extends Worth>(
  frontier: readonly P[],
  today: Worth | null,
  budget: number | null,
): P | null => {
  const start = today ?? frontier[0];
  if (start === undefined) return null;
  const before = start.penalty;
  const needsMending = before >= NEEDS_MENDING;
  if (budget === null) {
    const enough = needsMending ? firstMended(frontier) : frontier.find((p) => p.penalty <= before);
    return enough ?? frontier.at(-1) ?? null;
  }
  const within = frontier.filter((point) => point.cost <= budget);
  const mended = needsMending ? firstMended(within) : undefined;
  return mended ?? bestScore(within, before, budget);
};

/** Scores times 2·S·budget, as whole numbers; without money times S. */
const bestScore = <P extends Worth>(within: readonly P[], before: number, budget: number): P | null => {
  const scale = BigInt(Math.max(before, NEEDS_MENDING));
  const score = (point: Worth): bigint => {
    const gain = BigInt(before) - BigInt(point.penalty);
    if (budget === 0) return gain;
    return 2n * BigInt(budget) * gain - scale * BigInt(Math.max(0, point.cost));
  };
  let best: P | null = null;
  let most = 0n;
  for (const point of within) {
    const value = score(point);
    if (best === null || value > most) [best, most] = [point, value];
  }
  return best;
};
