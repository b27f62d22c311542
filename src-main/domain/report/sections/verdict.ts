import { MENDED } from '../../advice/plan/status.ts';
import type { Context } from '../context.ts';
import { leftOut } from '../context.ts';
import type { Fact, Section } from '../model.ts';
import { purchasesOf } from '../purchases.ts';

/** The verdict in one sentence, what goes beside it, and the money. */
export function verdictSection(context: Context): Section {
  const { words } = context;
  const also = alsoTrue(context);
  const picked = pickedText(context);
  return {
    id: 'verdict',
    title: words.sections.verdict,
    blocks: [
      { kind: 'paragraph', text: verdictSentence(context) },
      ...[also, picked].filter((text) => text !== '').map((text) => ({ kind: 'paragraph' as const, text })),
      { kind: 'facts', facts: moneyFacts(context) },
    ],
  };
}

/** What to do, in one sentence. */
export function verdictSentence(context: Context): string {
  const { advice, words } = context;
  const { reader } = advice.view;
  // What was picked by hand is told as it is; what the figures say to it stands below.
  if (context.picked && advice.status !== 'stopped') return changesSentence(context);
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
    default:
      return changesSentence(context);
  }
}

function changesSentence(context: Context): string {
  const { advice, words } = context;
  const { reader, words: said, name } = advice.view;
  const mended = context.picked ? isMended(context) : advice.status === 'ok';
  const buys = purchasesOf(context, said.stageNow);
  if (buys.length > 0) {
    return words.verdict.buys({
      clubs: buys.map(({ candidate }) => said.archetypeName(candidate.archetype)),
      cash: reader.moneyText(advice.cashMinor),
      mended,
    });
  }
  const out = [...leftOut(context)].map(name);
  const later = advice.swaps.find(({ stage }) => stage !== said.stageNow);
  if (later && out.length === 0) return words.verdict.later({ stage: later.stage });
  if (out.length > 0) {
    return words.verdict.leavesOnly({ clubs: words.and(out), mended });
  }
  return context.picked ? words.verdict.pickedNothing() : words.verdict.nothingHelps();
}

function isMended({ advice }: Context): boolean {
  const { headline } = advice.solution;
  return headline !== null && headline.penalty <= MENDED;
}

/** What was picked, when and why, and what the figures alone would say first. */
function pickedText({ advice, words, figures, picked }: Context): string {
  if (!picked || advice.status === 'stopped') return '';
  const against =
    advice.status === 'ask-first' || advice.status === 'coach-first'
      ? words.verdict.pickedAgainst[advice.status]
      : null;
  return [
    words.verdict.picked({ name: picked.name, day: figures.day(picked.day) }),
    ...(picked.why === '' ? [] : [words.verdict.pickedWhy({ why: picked.why })]),
    ...(against === null ? [] : [against]),
  ].join(' ');
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
  const holdsBack = !context.picked && ['ask-first', 'coach-first', 'over-budget'].includes(advice.status);
  const out = [...leftOut(context)].map(advice.view.name);
  const now = advice.view.words.stageNow;
  const later =
    advice.swaps.some(({ stage }) => stage === now) && advice.swaps.some(({ stage }) => stage !== now);
  return [
    ...(holdsBack && out.length > 0 ? [words.verdict.freeMeanwhile({ clubs: words.and(out) })] : []),
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
