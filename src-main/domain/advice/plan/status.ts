import type { Point } from '../../solve/instance.ts';
import { asksForMoney, type Finding } from '../finding.ts';

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
  /** The largest share of sampled ladders in which an open question would change what is bought. */
  openShare: number;
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

/** An open question would change the purchase this often: ask before acting. */
export const ASK_SHARE = 0.3;

/** Nothing is known at all, or what is open would change the purchase. */
function mustAsk({ findings, headline, openShare }: StatusInput): boolean {
  if (headline === null && findings.some((finding) => finding.kind === 'too-little-data')) return true;
  if (findings.some((finding) => finding.kind === 'too-little-data' && finding.severity === 3)) return true;
  return openShare >= ASK_SHARE;
}

function beatenOnlyAboveBudget({ frontier, todayPenalty, budget }: StatusInput): boolean {
  const better = frontier.filter((point) => point.penalty < todayPenalty);
  return better.length > 0 && budget !== null && better.every((point) => point.cost > budget);
}
