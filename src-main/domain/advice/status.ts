import type { Point } from '../solve/instance.ts';
import { asksForMoney, type Finding } from './finding.ts';

export type Status =
  'nothing-needed' | 'ok' | 'partly' | 'over-budget' | 'ask-first' | 'coach-first' | 'stopped';

/** Penalty up to which a bag counts as mended: within a yard in all. */
export const MENDED = 20;
/** Penalty from which a bag is worth mending. */
export const WORTH_MENDING = 100;

export type StatusInput = {
  findings: readonly Finding[];
  /** Today's penalty: of the bag as owned, or of the curve's first point where the owned bag is not legal. */
  todayPenalty: number;
  headline: Point | null;
  frontier: readonly Point[];
  budget: number | null;
  swaps: number;
  purchases: number;
};

/** The first that holds of: stopped, coach first, ask first, nothing needed, ok, over budget, partly. */
export function statusOf(input: StatusInput): Status {
  const { findings, todayPenalty, headline, swaps } = input;
  if (findings.some((finding) => finding.verdict === 'stop')) return 'stopped';
  if (findings.some((finding) => finding.verdict === 'coach-first')) return 'coach-first';
  if (mustAsk(input)) return 'ask-first';
  const money = findings.some(asksForMoney);
  if (swaps === 0 && todayPenalty < WORTH_MENDING && !money) return 'nothing-needed';
  if (headline && (headline.penalty <= MENDED || (headline.penalty < WORTH_MENDING && swaps > 0)))
    return 'ok';
  return beatenOnlyAboveBudget(input) ? 'over-budget' : 'partly';
}

/** Nothing is known at all, or nothing but gaps that nobody can be sure of is wrong. */
function mustAsk({ findings, headline, purchases, todayPenalty }: StatusInput): boolean {
  if (headline === null && findings.some((finding) => finding.kind === 'too-little-data')) return true;
  if (findings.some((finding) => finding.kind === 'too-little-data' && finding.severity === 3)) return true;
  const unsure = findings.some((finding) => finding.kind === 'unsure-gap');
  const wrong = findings.some((finding) => asksForMoney(finding) || finding.verdict === 'drop');
  return unsure && !wrong && purchases === 0 && todayPenalty < WORTH_MENDING;
}

function beatenOnlyAboveBudget({ frontier, todayPenalty, budget }: StatusInput): boolean {
  const better = frontier.filter((point) => point.penalty < todayPenalty);
  return better.length > 0 && budget !== null && better.every((point) => point.cost > budget);
}
