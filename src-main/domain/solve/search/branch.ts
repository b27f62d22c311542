import { type Arcs, barArcs } from '../program/arcs.ts';
import { type Bounds, boundToGo, boundUpTo, leastSums } from '../bounds/bounds.ts';
import { pickCore } from './core.ts';
import { childrenOf, decidable } from './decide.ts';
import { fixArcs } from '../bounds/fix.ts';
import { type Found, merge } from '../program/found.ts';
import type { Watch } from '../hooks.ts';
import type { Labels } from '../program/labels.ts';
import type { Ladder } from '../model/ladder.ts';
import { Prune } from '../bounds/prune.ts';
import type { Region } from '../bounds/region.ts';
import { run } from '../program/run.ts';
import { type Decisions, type Scenario, scenarioOf } from './scenario.ts';
import type { Tuning } from './tuning.ts';
import { weightsFor } from '../bounds/tune.ts';
import { coarse, hullSlopes, type Weights } from '../bounds/weights.ts';

/** What one search asks, and what it has found so far. */
export type Quest = {
  ladder: Ladder;
  /** As in `Question`. */
  accept: (found: readonly Found[]) => Region;
  slopes: readonly number[] | null;
  known?: readonly Found[];
  weights: Weights;
  found: Found[];
  /** The slopes that `weights` were made for, as text; null: none yet. */
  tunedFor: string | null;
  labels: Labels;
  watch: Watch;
  tuning: Tuning;
};

/** A part of the search: decisions about lots, and the arcs that its bags may use. */
type Branch = { arcs: Arcs; decisions: Decisions };

/**
 * Finds all of the region that the arcs allow and adds it to `quest.found`. Branches with fewer lots bought
 * come first, and of these the more decided: what they find rules out most of the others.
 */
export const explore = (quest: Quest, arcs: Arcs, decisions: Decisions): void => {
  // By the number of lots bought.
  const waiting: Branch[][] = [];
  const push = (next: Branch): void => {
    while (waiting.length <= next.decisions.paid.length) waiting.push([]);
    const list = waiting[next.decisions.paid.length] as Branch[];
    const place = list.findIndex((other) => other.decisions.open.length > next.decisions.open.length);
    list.splice(place < 0 ? list.length : place, 0, next);
  };
  push({ arcs, decisions });
  let left = quest.tuning.mostBranches;
  const take = (): Branch | undefined => waiting.find((list) => list.length > 0)?.shift();
  for (let next = take(); next !== undefined; next = take()) branch(quest, next, left-- > 0).forEach(push);
};

/** Runs one branch, or returns the branches that it divides into. */
const branch = (quest: Quest, { arcs, decisions }: Branch, mayDivide: boolean): Branch[] => {
  const { ladder, weights, tuning } = quest;
  const region = quest.accept(quest.found);
  const scenario = scenarioOf(ladder, decisions);
  let fixed: Arcs | null = arcs;
  if (arcs.to.length > tuning.manyArcs)
    fixed = narrow(quest, scenario, arcs, region, coarse(weights))?.arcs ?? null;
  const narrowed = fixed === null ? null : narrow(quest, scenario, fixed, region, weights);
  if (narrowed === null) return [];
  const open =
    narrowed.arcs.to.length < tuning.fewArcs || !mayDivide ? [] : decidable(ladder, decisions, narrowed.arcs);
  if (open.length > 0) {
    return childrenOf(ladder, decisions, open).map((child) => ({ arcs: narrowed.arcs, decisions: child }));
  }
  // A run takes no notice of `more`, so that its bounds must not either.
  if (decisions.more) return [{ arcs: narrowed.arcs, decisions: { ...decisions, more: false } }];
  let tuned: Narrowed | null = narrowed;
  if (narrowed.arcs.to.length >= tuning.manyToRun) {
    // Bounds tuned for this branch before much is run; the next branches are much like it.
    quest.weights = weightsFor(quest.slopes ?? hullSlopes(quest.found), ladder, scenario, narrowed.arcs);
    tuned = narrow(quest, scenario, narrowed.arcs, region, quest.weights);
  }
  if (tuned !== null) runParts(quest, scenario, tuned);
  return [];
};

type Narrowed = { arcs: Arcs; bounds: Bounds; prune: Prune };

/** The arcs that some bag in the region may use; null when there is none. */
const narrow = (
  { ladder }: Quest,
  scenario: Scenario,
  arcs: Arcs,
  region: Region,
  weights: Weights,
): Narrowed | null => {
  const prune = new Prune(ladder, region, weights);
  const toGo = boundToGo(ladder, scenario, arcs, weights);
  leastSums(ladder, scenario, arcs, weights, toGo, prune.least);
  if (prune.empty()) return null;
  const bounds = { weights, toGo, upTo: boundUpTo(ladder, scenario, arcs, weights) };
  return { arcs: fixArcs(ladder, scenario, arcs, bounds, prune), bounds, prune };
};

/** Runs over growing parts of the arcs, and over all that are then left. */
const runParts = (quest: Quest, scenario: Scenario, { arcs, bounds, prune }: Narrowed): void => {
  const { ladder, labels, watch, tuning } = quest;
  let left = arcs;
  let now = prune;
  for (const size of tuning.parts) {
    if (left.to.length < tuning.manyToRun) break;
    const part = barArcs(left, pickCore(ladder, bounds, size));
    if (part.to.length * 2 > left.to.length) break;
    quest.found = merge(quest.found, run(ladder, scenario, part, bounds, now, labels, watch));
    now = new Prune(ladder, quest.accept(quest.found), bounds.weights);
    left = fixArcs(ladder, scenario, left, bounds, now);
  }
  quest.found = merge(quest.found, run(ladder, scenario, left, bounds, now, labels, watch));
};
