import type { Context } from '../context.ts';
import { leftOut } from '../context.ts';
import type { Fact, Section } from '../model.ts';
import { purchasesOf } from '../purchases.ts';

/** The verdict in one sentence, what goes beside it, and the money. */
export function verdictSection(context: Context): Section {
  const { words } = context;
  const also = alsoTrue(context);
  return {
    id: 'verdict',
    title: words.sections.verdict,
    blocks: [
      { kind: 'paragraph', text: verdictSentence(context) },
      ...(also === '' ? [] : [{ kind: 'paragraph' as const, text: also }]),
      { kind: 'facts', facts: moneyFacts(context) },
    ],
  };
}

/** What to do, in one sentence. */
export function verdictSentence(context: Context): string {
  const { advice, words } = context;
  const { reader } = advice.view;
  const mended = advice.status === 'ok';
  switch (advice.status) {
    case 'stopped':
      return words.verdict.stopped();
    case 'coach-first':
      return words.verdict.coachFirst();
    case 'ask-first':
      return words.verdict.askFirst();
    case 'nothing-needed':
      return words.verdict.nothingNeeded();
    case 'over-budget':
      return words.verdict.overBudget({
        budget: reader.moneyText(advice.built.instance.budget ?? 0),
        least: leastThatHelps(context),
      });
    default: {
      const buys = purchasesOf(context, advice.view.words.stageNow);
      if (buys.length > 0) {
        return words.verdict.buys({
          clubs: buys.map(({ candidate }) => advice.view.words.archetypeName(candidate.archetype)),
          cash: reader.moneyText(advice.cashMinor),
          mended,
        });
      }
      const out = [...leftOut(context)].map(advice.view.name);
      const later = advice.swaps.find(({ stage }) => stage !== advice.view.words.stageNow);
      if (later && out.length === 0) return words.verdict.later({ stage: later.stage });
      return out.length > 0
        ? words.verdict.leavesOnly({ clubs: words.and(out), mended })
        : words.verdict.nothingHelps();
    }
  }
}

/** The cheapest bag that beats today's, when the budget does not reach it. */
function leastThatHelps({ advice }: Context): string | null {
  const { frontier, today } = advice.solution;
  const penalty = (today ?? frontier[0])?.penalty ?? 0;
  const better = frontier.find((point) => point.penalty < penalty);
  return better ? advice.view.reader.moneyText(better.cost) : null;
}

function alsoTrue(context: Context): string {
  const { advice, words } = context;
  const holdsBack = advice.status === 'ask-first' || advice.status === 'coach-first';
  const out = [...leftOut(context)].map(advice.view.name);
  const now = advice.view.words.stageNow;
  const later =
    advice.swaps.some(({ stage }) => stage === now) && advice.swaps.some(({ stage }) => stage !== now);
  return [
    ...((holdsBack || advice.status === 'over-budget') && out.length > 0
      ? [words.verdict.freeMeanwhile({ clubs: words.and(out) })]
      : []),
    ...(later ? [words.verdict.staged()] : []),
  ].join(' ');
}

function moneyFacts({ advice, words, figures }: Context): Fact[] {
  const { reader } = advice.view;
  const money = (label: string, minor: number): Fact => ({
    label,
    text: reader.moneyText(minor),
    data: { amount: reader.money(minor) },
  });
  const clean = advice.solution.cheapestClean;
  const open = advice.status === 'partly' || advice.status === 'over-budget';
  return [
    money(words.verdict.cash, advice.cashMinor),
    money(words.verdict.net, advice.netMinor),
    ...(advice.remainingMinor === null ? [] : [money(words.verdict.remaining, advice.remainingMinor)]),
    ...(advice.chanceInBudget === null || advice.cashMinor === 0
      ? []
      : [
          {
            label: words.verdict.chance,
            text: figures.percent(advice.chanceInBudget),
            data: { amount: advice.chanceInBudget },
          },
        ]),
    ...(open && clean ? [money(words.verdict.completeMend, clean.cost)] : []),
  ];
}
