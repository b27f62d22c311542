import type { Answer } from '../../../../src-main/contract/calls/answers/answers.ts';
import type { Formats } from '../../../state/format/formats.ts';
import { words } from '../../../words/index.ts';

/** The plan in plain words: one sentence, and what goes with it. */
export function statusText(
  { plan, todayPenalty }: Answer,
  formats: Formats,
): { head: string; more: string[] } {
  const { status, swaps, cash, net, remaining, items, chanceInBudget } = plan.plan;
  // What counts against the budget: all that is paid, or what is left to pay after sales.
  const cost = plan.instance.basis === 'cash' ? cash : net;
  const buys = swaps.filter((swap) => swap.action === 'buy').length;
  const money = (major: number) => formats.money(major, plan.units);
  const more: string[] = [];
  if (status === 'stopped') return { head: words.spend.status.stopped(), more };

  const chosen =
    items === undefined ? undefined : plan.frontier.find((point) => sameItems(point.items, items));
  if (chosen && todayPenalty > 0 && chosen.penalty < todayPenalty) {
    const mended = 1 - chosen.penalty / todayPenalty;
    more.push(mended === 1 ? words.spend.allMended : words.spend.fromToday(formats.share(mended)));
  }
  if (remaining !== null && buys > 0) {
    more.push(remaining < 0 ? words.spend.over(money(-remaining)) : words.spend.left(money(remaining)));
  }
  if (remaining === null && buys > 0) more.push(words.spend.noBudget);
  const whole = plan.frontier.find((point) => point.penalty === 0);
  if (whole && chosen && whole.cost > chosen.cost) more.push(words.spend.completeMend(money(whole.cost)));
  if (chanceInBudget !== undefined && buys > 0) more.push(words.spend.chance(formats.share(chanceInBudget)));
  return { head: words.spend.status[status]({ buys, swaps: swaps.length, cost: money(cost) }), more };
}

function sameItems(one: readonly string[], other: readonly string[]): boolean {
  const wanted = new Set(one);
  return other.length === wanted.size && other.every((id) => wanted.has(id));
}
