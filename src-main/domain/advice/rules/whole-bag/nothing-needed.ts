import { asksForMoney, type Finding } from '../../finding.ts';
import type { BagView } from '../../bag-view/view.ts';

const RETEST_MONTHS = 6; // common practice, no source

/** Said when no other finding asks for money: looks at what the other rules found. */
export function nothingNeeded(view: BagView, found: readonly Finding[]): Finding[] {
  if (found.some((finding) => asksForMoney(finding) || finding.verdict === 'stop')) return [];
  // What sends the player to a coach or a measuring mat first is not "keep it as it is".
  if (found.some(({ verdict, severity }) => verdict === 'coach-first' || (verdict === 'ask' && severity > 1)))
    return [];
  return [
    {
      kind: 'nothing-needed',
      clubs: [],
      severity: 1,
      verdict: 'keep',
      text: view.words.nothingNeeded({ retest: monthsLater(view.today, RETEST_MONTHS) }),
      evidence: [],
    },
  ];
}

/** "2027-05" for an ISO day and a number of months. */
export function monthsLater(isoDay: string, months: number): string {
  const [year = 0, month = 1] = isoDay.split('-').map(Number);
  const index = year * 12 + (month - 1) + months;
  return `${String(Math.floor(index / 12))}-${String((index % 12) + 1).padStart(2, '0')}`;
}
