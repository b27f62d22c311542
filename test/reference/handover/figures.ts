import { formatMoney, toMinor } from '../../../src-main/contract/money.ts';
import type { PlanFile } from '../../../src-main/contract/formats/plan-file.ts';

/** The figures of a plan file as a reader of that locale sees them, made here with Intl alone. */
export function figuresOf(plan: PlanFile, locale: string) {
  const { currency } = plan.units;
  const carries = new Intl.NumberFormat(locale, { minimumFractionDigits: 1, maximumFractionDigits: 1 });
  const money = (major: number) =>
    plain(formatMoney(toMinor(major, currency) ?? Number.NaN, currency, locale));
  const rows = [
    ...plan.ladder,
    ...plan.plan.afterLadder.filter(({ clubId }) => !plan.ladder.some((row) => row.clubId === clubId)),
  ];
  const buys = plan.plan.swaps.filter(({ action }) => action === 'buy');
  return {
    /** A club a row: carry, low, high. */
    ladder: rows.map(({ carry, low, high }) => [carry, low, high].map((value) => carries.format(value))),
    ladderNumbers: rows.map(({ carry, low, high }) => [carry, low, high]),
    /** Cash, net, what is left, and each price. */
    sums: [plan.plan.cash, plan.plan.net, plan.plan.remaining].filter((sum) => sum !== null).map(money),
    prices: plan.plan.swaps.flatMap(({ price }) => (price === undefined ? [] : [money(price)])),
    walkAways: buys.flatMap(({ walkAway }) =>
      walkAway === undefined || walkAway === null ? [] : [money(walkAway)],
    ),
    reasons: plan.plan.swaps.map(({ why }) => plain(why)),
    cautions: plan.cautions.map(plain),
    questions: plan.questions.map(({ ask }) => plain(ask)),
  };
}

/** Whatever blank: one blank. */
export function plain(text: string): string {
  return text.replace(/[\s\u00a0\u202f]+/gu, ' ').trim();
}

/** Whether a figure stands in the text as a figure of its own, not as part of a longer one. */
export function holds(text: string, figure: string): boolean {
  const escaped = figure.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  return new RegExp(`(?<![\\d.,])${escaped}(?![\\d]|[.,]\\d)`, 'u').test(text);
}
