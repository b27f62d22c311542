import type { Answer } from '../../../../src-main/contract/calls/answers/answers.ts';
import type { SpendView } from '../../../state/spend/spend-view.ts';
import { words } from '../../../words/index.ts';

/** What to say in place of the curve; null where there is one to show. */
export function whyNoCurve({ plan, todayPenalty }: Answer, { points }: SpendView): string | null {
  if (plan.ladder.length === 0) return words.spend.nothingPlaced;
  // With nothing wrong a curve shows something only where leaving clubs out brings money.
  if (todayPenalty === 0 && points.every((point) => point.cost >= 0)) return words.spend.nothingWrong;
  return points.length === 0 ? words.spend.noCurve : null;
}
