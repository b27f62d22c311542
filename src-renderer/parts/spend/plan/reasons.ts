import type { Answer } from '../../../../src-main/contract/calls/answers/answers.ts';
import type { Formats } from '../../../state/format/formats.ts';
import { words } from '../../../words/index.ts';

type Step = NonNullable<Answer['explanation']['nextStep']>;

/** What solving again without a purchase (`buy:<archetype>`) has shown, as sentences; none for what was not reckoned. */
export function reasonsOf(answer: Answer, id: string, formats: Formats): string[] {
  const purchase = answer.explanation.purchases.find((one) => one.id === id);
  if (!purchase) return [];
  const { removes, without } = purchase;
  const text = words.spend;
  return [
    removes === 0 ? text.removesNothing : text.removes(shareOf(answer, removes, formats)),
    ...(without === null ? [] : [text.without(...stepWords(answer, without, formats))]),
  ];
}

/** What the next step up would bring, or, where nothing is bought, what would help at the least cost. */
export function otherSteps(answer: Answer, formats: Formats): { heading: string; text: string }[] {
  const { nextStep, cheapestHelp } = answer.explanation;
  const { plan, todayPenalty } = answer;
  const text = words.spend;
  const steps: { heading: string; text: string }[] = [];
  if (todayPenalty === 0) return steps;
  if (cheapestHelp) {
    const said = text.cheapestHelp(...stepWords(answer, cheapestHelp, formats));
    steps.push({ heading: text.cheapest, text: said });
  }
  // The same step twice would be no news.
  if (nextStep && nextStep.buys.join() !== cheapestHelp?.buys.join()) {
    const now = plan.instance.basis === 'cash' ? plan.plan.cash : plan.plan.net;
    const [, buys, share] = stepWords(answer, nextStep, formats);
    const more = formats.money(nextStep.cost - now, plan.units);
    steps.push({ heading: text.next, text: text.nextStep(more, buys, share) });
  }
  return steps;
}

function stepWords(
  answer: Answer,
  { cost, penalty, buys }: Step,
  formats: Formats,
): [cost: string, buys: string, mended: string] {
  const text = words.spend;
  const names = buys.map((id) => answer.names[id] ?? id);
  return [
    formats.money(cost, answer.plan.units),
    names.length === 0 ? text.buysNothing : text.buys(formats.list(names)),
    shareOf(answer, Math.max(0, answer.todayPenalty - penalty), formats),
  ];
}

function shareOf({ todayPenalty }: Answer, part: number, formats: Formats): string {
  return formats.share(todayPenalty === 0 ? 0 : part / todayPenalty);
}
