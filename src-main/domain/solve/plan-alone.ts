import type { Found } from './program/found.ts';
import { headlineOf, MENDED, NEEDS_MENDING } from './headline.ts';
import {
  atMost,
  everywhere,
  meet,
  NO_LIMIT,
  notBettered,
  type Reached,
  type Region,
} from './bounds/region.ts';
import type { Question } from './search/search.ts';
import { slopeAt } from './bounds/weights.ts';

/** Steps that the line of equal scores is followed in: more prune better and cost more. */
const STEPS = 16;
/** What the plan hangs on beside the bags: today's penalty, and a budget of 0 or more (null: none). */
export type PlanTerms = { before: number; budget: number | null };

/**
 * What a search must ask for so that the plan (`headlineOf`) is among what it finds, and little else is looked for:
 * the cheapest mended bag while the bag needs mending, else those that score no less than the best found.
 * @param curve of a question like this one: its slopes are where the answer is looked for; may be empty
 */
export const planQuestion = ({ before, budget }: PlanTerms, curve: readonly Reached[]): Question => {
  const needsMending = before >= NEEDS_MENDING;
  const accept = (found: readonly Found[]): Region => {
    const best = bestOf(found, { before, budget });
    if (best === null) return atMost(budget ?? NO_LIMIT, NO_LIMIT);
    if (needsMending && best.penalty <= MENDED) return atMost(best.cost, MENDED);
    // What another bag betters is never the plan: without this, too much of what costs more would be looked at.
    return meet(notBettered(found), wanted(best, { before, budget }));
  };
  if (budget === null && needsMending && curve.length > 1) {
    return { accept, slopes: [slopeAt(curve, MENDED)] };
  }
  if (budget === null || budget === 0) return { accept, slopes: null };
  // Along it all scores are equal: cost for a unit of penalty.
  const scored = (2 * budget) / scaleOf(before);
  const slopes = needsMending ? [slopeAt(curve, MENDED), scored] : [scored];
  return { accept, slopes: slopes.sort((a, b) => a - b) };
};

const scaleOf = (before: number): number => Math.max(before, NEEDS_MENDING);

/** Where something better than `best` lies, which is not mended where that is asked for. */
const wanted = (best: Reached, { before, budget }: PlanTerms): Region => {
  const needsMending = before >= NEEDS_MENDING;
  if (budget === null) return needsMending ? everywhere() : atMost(best.cost, before);
  if (budget === 0) return atMost(0, NO_LIMIT);
  return scoring(best, { budget, scale: scaleOf(before), least: needsMending ? MENDED : 0 });
};

const bestOf = (found: readonly Found[], { before, budget }: PlanTerms): Reached | null =>
  headlineOf(found, { cost: 0, penalty: before }, budget);

/**
 * Bags within budget that score no less than `best`, and a little more: the line of equal scores in steps. Bags of at
 * most `least` penalty stay inside at any cost within budget.
 */
const scoring = (
  best: Reached,
  { budget, scale, least }: { budget: number; scale: number; least: number },
): Region => {
  const paid = Math.max(0, best.cost);
  /** The most penalty at a cost; a unit more than it, so that rounding loses nothing. */
  const most = (cost: number): number =>
    Math.max(least, Math.floor(best.penalty + (scale * (paid - cost)) / (2 * budget)) + 1);
  // From where on `least` alone counts.
  const end = Math.ceil(paid + (2 * budget * Math.max(0, best.penalty + 1 - least)) / scale);
  const costs = Array.from({ length: STEPS + 1 }, (_, step) =>
    Math.floor((Math.min(budget, end) * step) / STEPS),
  );
  const steps = [...new Set([...costs, budget])];
  // The most at the cheap end of each step, so that the step lies whole inside.
  const corners = steps.map((cost, i) => [cost, most(steps[i - 1] ?? 0)] as const);
  // Corners of one height are one corner, the last.
  const kept = corners.filter(([, penalty], i) => corners[i + 1]?.[1] !== penalty);
  return {
    x: Float64Array.from(kept, ([cost]) => cost),
    y: Float64Array.from(kept, ([, penalty]) => penalty),
  };
};
