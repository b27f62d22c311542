import type { Archetype, Bag } from '../bag/types.ts';
import type { Rung } from '../player/ladder/ladder.ts';
import type { Built } from '../solve/build/instance.ts';
import { alternatives, type Alternative } from '../solve/alternatives.ts';
import { headline as headlineOf, planOn } from '../solve/index.ts';
import { solveLimited, type Limited } from '../solve/limited.ts';
import type { Instance, Point, Solution } from '../solve/instance.ts';
import { evaluate } from '../solve/model/penalty.ts';
import { cautionsOf } from './cautions.ts';
import { planCost, type CostSpread } from './unknowns/chance.ts';
import { changesOf, laterChanges, type Changes } from './plan/changes.ts';
import { explain, type Explanation } from './plan/explain.ts';
import { Effort, type Watcher } from './effort.ts';
import type { Finding, Question } from './finding.ts';
import { answersOfPicked } from './plan/picked.ts';
import { prepare } from './question/prepare.ts';
import { questionsOf, type Weigh } from './unknowns/questions.ts';
import { pathsOf, type Path, type When } from './plan/paths.ts';
import type { Reader } from './reader.ts';
import { worthOfKnowing, type Worth } from './unknowns/robustness.ts';
import type { Varied } from './unknowns/sampled.ts';
import { settleFindings } from './plan/settle.ts';
import { ASK_SHARE, MENDED, statusOf, type Status } from './plan/status.ts';
import { swapsOf, type Swap } from './plan/swaps.ts';
import type { Reckoning } from './bag-view/reckoning.ts';
import type { BagView } from './bag-view/view.ts';
import type { Words } from './words/words.ts';

export type AdviseInput = {
  bag: Bag;
  catalogue: readonly Archetype[];
  reader: Reader;
  words: Words;
  /** ISO date; the domain has no clock. */
  today: string;
  /** The usual one when left out. */
  reckoning?: Reckoning | undefined;
  watcher?: Watcher;
  /** Item ids of a bag that was picked by hand: the answer is told of it instead of the plan, unless pain stops all. */
  picked?: readonly string[];
  /** Without walk-away prices, paths (and so later swaps), reasons, alternatives and questions; all else is the same. */
  isBrief?: boolean;
};

/** One whole answer. Money in minor units. */
export type Advice = {
  view: BagView;
  built: Built;
  solution: Solution;
  findings: Finding[];
  status: Status;
  swaps: Swap[];
  /** The bag after the plan's "now" stage, by item id. */
  items: string[];
  afterLadder: Rung[];
  cashMinor: number;
  netMinor: number;
  remainingMinor: number | null;
  /** Null without a budget. */
  chanceInBudget: number | null;
  /** What the "now" stage may cost; null where no price of a club has any part in it. */
  costSpread: CostSpread | null;
  /** Reasons found by solving again; empty while the plan holds back. */
  explanation: Explanation;
  /** A: the plan; B: half the budget now, the rest later. Empty while the plan holds back. */
  paths: Path[];
  /** Other ways to mend the bag as well, the cheapest first. */
  alternatives: Alternative[];
  questions: Question[];
  cautions: string[];
};

/** Steps (of 100) that the parts of an answer count for. */
const STEPS = { plan: 15, question: 8, reasons: 12, alternatives: 25 };

/**
 * Bag and prices → ladder, findings, the cheapest mend and what to ask. Straight through, no state.
 * @throws SolveStopped when the watcher ended it.
 */
export function advise({ watcher, picked, isBrief = false, ...asked }: AdviseInput): Advice {
  const { words } = asked;
  const effort = new Effort(watcher);
  const { view, found, built, limited } = prepare(asked, effort.hooks);
  const answers: Limited = isBrief
    ? { ...limited, solution: planOn(limited.instance, limited.curve) }
    : solveLimited(built.instance, effort.hooks, limited);
  const { instance, unproven } = answers;
  const solved = picked ? answersOfPicked(built.instance, answers, picked, effort.hooks) : answers.solution;
  effort.step(STEPS.plan);
  const owned = built.instance.items.filter((item) => item.origin === 'owned').map((item) => item.id);
  const headline = solved.headline;
  const planned = changesOf(view, built, headline?.items ?? owned);
  const todayPenalty = (solved.today ?? solved.frontier[0])?.penalty ?? 0;
  // All that follows is asked of the question that was answered.
  const answered = { ...built, instance };
  const weigh = (varied: Varied, untilShare: number | null = null): Worth | null => {
    const worth = effort.within(null, (hooks) =>
      worthOfKnowing(
        view,
        answered,
        answers.solution.headline,
        varied,
        (sampled) => headlineOf(sampled, hooks, solved.frontier),
        untilShare,
      ),
    );
    effort.step(STEPS.question);
    return worth;
  };
  const asks = !found.some(({ verdict }) => verdict === 'stop' || (isBrief && verdict === 'coach-first'));
  const questions = asks ? questionsOf(view, isBrief ? onlyShare(weigh) : weigh) : [];
  const status = statusOf({
    findings: found,
    todayPenalty,
    headline,
    frontier: solved.frontier,
    budget: built.instance.budget,
    swaps: planned.purchases.length + planned.leftOut.length,
    openShare: Math.max(0, ...questions.map((question) => question.share)),
  });
  const stopped = status === 'stopped';
  const solution = stopped ? { ...solved, frontier: [], walkAway: {} } : solved;
  const holdsBack = picked === undefined && (status === 'coach-first' || status === 'ask-first');
  const { changes, items } = held(view, built, planned, headline, owned, { stopped, holdsBack });
  const acts = !stopped && !holdsBack;
  const paths = acts && !isBrief ? pathsOf(view, answered, solved, effort) : [];
  const now = swapsOf(view, changes, solution.walkAway, words.stageNow);
  const swaps = [...now, ...laterSwaps(view, built, changes, paths[0])];
  const explanation =
    acts && !isBrief
      ? effort.within(NOTHING_EXPLAINED, (hooks) => explain(instance, solved, hooks))
      : NOTHING_EXPLAINED;
  effort.step(STEPS.reasons);
  const others =
    stopped || isBrief || headline === null ? [] : alternativesOf(instance, headline, solved, effort);
  effort.step(STEPS.alternatives);
  const cost = stopped ? { chanceInBudget: null, spread: null } : planCost(view, built, items);
  return {
    view,
    built,
    solution,
    findings: settleFindings(view, found, changes, status),
    status,
    swaps,
    items,
    afterLadder: changes.after,
    ...moneyOf(built, items),
    chanceInBudget: cost.chanceInBudget,
    costSpread: cost.spread,
    explanation,
    paths,
    alternatives: others,
    questions: (isBrief ? [] : questions).map(({ ask, about, worth }) => ({ ask, about, worth })),
    cautions: [
      ...(unproven ? [words.cautions.unproven({ least: String(unproven.penaltyAtLeast) })] : []),
      ...(effort.isShort ? [words.cautions.leftOut()] : []),
      ...cautionsOf(view, swaps),
    ],
  };
}

/** Whether one is open enough to ask first is all that a status needs: the first such question settles it. */
function onlyShare(weigh: (varied: Varied, untilShare: number) => Worth | null): Weigh {
  let isAsked = false;
  return (varied) => {
    if (isAsked) return null;
    const worth = weigh(varied, ASK_SHARE);
    isAsked = (worth?.share ?? 0) >= ASK_SHARE;
    return worth;
  };
}

/** Stopped plans change nothing; what was picked by hand stays; coach-first and ask-first plans hold back what costs money and keep what is free. */
function held(
  view: BagView,
  built: Built,
  planned: Changes,
  headline: Point | null,
  owned: string[],
  { stopped, holdsBack }: { stopped: boolean; holdsBack: boolean },
): { changes: Changes; items: string[] } {
  if (!stopped && !(holdsBack && planned.purchases.length > 0)) {
    return { changes: planned, items: headline?.items ?? [...owned].sort() };
  }
  const free = stopped ? null : headlineOf(ownedOnly(built.instance));
  const items = free?.items ?? [...owned].sort();
  return { changes: changesOf(view, built, items), items };
}

function laterSwaps(view: BagView, built: Built, now: Changes, path: Path | undefined): Swap[] {
  const later = path?.stages[1];
  if (!later) return [];
  const changes = laterChanges(now, changesOf(view, built, later.items));
  return swapsOf(view, changes, {}, stageName(view, later.when));
}

/** A stage's condition in the reader's words. */
export function stageName({ reader, words }: Pick<BagView, 'reader' | 'words'>, when: When): string {
  switch (when.kind) {
    case 'now':
      return words.stageNow;
    case 'handicap':
      return words.stageHandicap(reader.numberText(when.atMost));
    case 'sale':
      return words.stageSale;
    case 'season':
      return words.stageSeason;
  }
}

const MOST_ALTERNATIVES = 5;

const NOTHING_EXPLAINED: Explanation = { purchases: [], nextStep: null, cheapestHelp: null };

function alternativesOf(
  instance: Instance,
  plan: Point,
  { frontier }: Solution,
  effort: Effort,
): Alternative[] {
  const asked = { most: MOST_ALTERNATIVES, penalty: Math.max(plan.penalty, MENDED), curve: frontier };
  return effort.within([], (hooks) => alternatives(instance, plan, { ...asked, hooks }));
}

function ownedOnly(instance: Instance): Instance {
  return {
    ...instance,
    items: instance.items.filter((item) => item.origin === 'owned'),
    lots: instance.lots.filter((lot) => lot.origin === 'owned'),
  };
}

function moneyOf(
  { instance }: Built,
  items: readonly string[],
): { cashMinor: number; netMinor: number; remainingMinor: number | null } {
  const cashMinor = evaluate({ ...instance, basis: 'cash' }, items).cost;
  const netMinor = evaluate({ ...instance, basis: 'net' }, items).cost;
  const spent = instance.basis === 'cash' ? cashMinor : netMinor;
  return { cashMinor, netMinor, remainingMinor: instance.budget === null ? null : instance.budget - spent };
}
