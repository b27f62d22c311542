import { type Arcs, barArcs, tabulateArcs } from '../program/arcs.ts';
import { boundsOf } from '../bounds/bounds.ts';
import { explore, type Quest } from './branch.ts';
import { pickCore } from './core.ts';
import { fixArcs } from '../bounds/fix.ts';
import type { Found } from '../program/found.ts';
import type { Watch } from '../hooks.ts';
import { Labels } from '../program/labels.ts';
import type { Ladder } from '../model/ladder.ts';
import { plausible } from '../bounds/plausible.ts';
import { Prune } from '../bounds/prune.ts';
import type { Region } from '../bounds/region.ts';
import { type Decisions, type Scenario, scenarioOf, undecided } from './scenario.ts';
import { TUNING, type Tuning } from './tuning.ts';
import { weightsFor } from '../bounds/tune.ts';
import { firstWeights, hullSlopes, pureWeights } from '../bounds/weights.ts';

/** What a search asks for. */
export type Question = {
  /** The region that can still better what is found; it must hold all that is asked for. */
  accept: (found: readonly Found[]) => Region;
  /** Slopes of cost by penalty to weigh with; null: those of the curve as it is found. */
  slopes: readonly number[] | null;
  /** Legal bags to begin with, as `merge` orders them; what betters none of them is not looked for. */
  known?: readonly Found[];
};

/**
 * Every nondominated (cost, penalty) of the region by rising cost, each the first of its ties.
 * Owned clubs come first, then more and more of the candidates that are bought singly, then the lots: what
 * each stage finds shrinks the region, so that most candidates are ruled out by bounds alone.
 */
export const search = (
  ladder: Ladder,
  question: Question,
  watch: Watch,
  tuning: Tuning = TUNING,
): Found[] => {
  const quest: Quest = {
    ladder,
    ...question,
    weights: pureWeights(),
    found: [...(question.known ?? [])],
    tunedFor: null,
    labels: new Labels(),
    watch,
    tuning,
  };
  searchSingles(quest);
  searchLots(quest);
  return quest.found;
};

const isCandidateLot = (ladder: Ladder, l: number): boolean => ladder.lots[l]?.candidate === true;

/** No candidate lot is bought. */
const noLots = (ladder: Ladder): Decisions => {
  const all = undecided(ladder);
  return {
    ...all,
    open: all.open.filter((l) => !isCandidateLot(ladder, l)),
    barred: all.open.filter((l) => isCandidateLot(ladder, l)),
  };
};

/** Where weights are tuned: the arcs that some bags may use, under decisions about lots. */
type Ground = { scenario: Scenario; arcs: Arcs };

/**
 * New weights for what was found, unless they were made for the same slopes. A curve's are tuned on the part of
 * the arcs that it was found on, which is quick; for one answer all arcs are few, and tell more.
 */
const retune = (quest: Quest, part: Ground, whole: Ground): void => {
  const { found, ladder } = quest;
  const slopes = quest.slopes ?? hullSlopes(found);
  const { scenario, arcs } = quest.slopes === null && found.length > 0 ? part : whole;
  const key = slopes.join();
  if (quest.slopes === null && key === quest.tunedFor) return;
  quest.weights = weightsFor(slopes, ladder, scenario, arcs);
  quest.tunedFor = key;
};

/** Where bags were known to begin with, parts of the arcs have little to add to them. */
const isKnownAbout = ({ slopes, known }: Quest): boolean =>
  slopes !== null && known !== undefined && known.length > 0;

const searchSingles = (quest: Quest): void => {
  const { ladder } = quest;
  const decisions = noLots(ladder);
  const scenario = scenarioOf(ladder, decisions);
  const singles = scenario.allowed;
  let part = tabulateArcs(
    ladder,
    singles.map((s, i) => (ladder.clubs[i]?.origin === 'owned' ? s : 0)),
    null,
  );
  explore(quest, part, decisions);
  if (ladder.clubs.every((club, i) => club.origin === 'owned' || singles[i] === 0)) return;

  let arcs = tabulateArcs(ladder, singles, plausible(ladder, scenario, quest.accept(quest.found)));
  if (isKnownAbout(quest)) {
    retune(quest, { scenario, arcs }, { scenario, arcs });
    explore(quest, arcs, decisions);
    return;
  }
  const first = boundsOf(ladder, scenario, arcs, firstWeights());
  retune(quest, { scenario, arcs: part }, { scenario, arcs });
  part = barArcs(arcs, pickCore(ladder, first, quest.tuning.firstPart));
  explore(quest, part, decisions);

  retune(quest, { scenario, arcs: part }, { scenario, arcs });
  const bounds = boundsOf(ladder, scenario, arcs, quest.weights);
  const prune = new Prune(ladder, quest.accept(quest.found), quest.weights);
  arcs = fixArcs(ladder, scenario, arcs, bounds, prune);
  if (arcs.to.length > quest.tuning.manyForSecond) {
    part = barArcs(arcs, pickCore(ladder, bounds, quest.tuning.secondPart));
    explore(quest, part, decisions);
    retune(quest, { scenario, arcs: part }, { scenario, arcs });
  }
  explore(quest, arcs, decisions);
};

/** Bags that buy at least one lot: first with the singles that served so far, then with all. */
const searchLots = (quest: Quest): void => {
  const { ladder } = quest;
  if (!ladder.lots.some((lot) => lot.candidate)) return;
  const decisions = { ...undecided(ladder), more: true };
  const scenario = scenarioOf(ladder, decisions);
  const singles = scenarioOf(ladder, noLots(ladder));
  const inBags = new Set(quest.found.flatMap(({ ranks }) => [...ranks]));
  const served = new Uint8Array(
    ladder.clubs.map((club, i) =>
      club.origin === 'owned' || (scenario.lotAt[i] as number) >= 0 || inBags.has(ladder.rank[i] as number)
        ? 1
        : 0,
    ),
  );
  const all = served.map(() => 1);
  for (const some of isKnownAbout(quest) ? [all] : [served, all]) {
    const arcs = tabulateArcs(ladder, some, plausible(ladder, scenario, quest.accept(quest.found)));
    const part = barArcs(barArcs(arcs, singles.allowed), served);
    retune(quest, { scenario: singles, arcs: part }, { scenario, arcs });
    explore(quest, arcs, decisions);
  }
};
