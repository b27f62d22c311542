import type { Built } from '../../solve/build/instance.ts';
import type { Instance, Point } from '../../solve/instance.ts';
import { purchasesOf } from '../../solve/model/purchases.ts';
import { seeded } from './random.ts';
import { lastingExcuses, sampledInstance, type Varied } from './sampled.ts';
import type { BagView } from '../bag-view/view.ts';

/** How often, and by how much money, the best plan would change if some carries were known better. */
export type Worth = {
  /** Share of the samples in which something else is bought, 0..1. */
  share: number;
  /** Mean of how much more or less that would cost, minor units. */
  stakeMinor: number;
};

export const SAMPLES = 10;
const SEED = 20261126;
/** Purchases whose lofts lie this close (degrees) do the same job. Common practice, no source. */
const ALIKE_DEG = 3;

export type Headline = (instance: Instance) => Point | null;

/**
 * Re-plans `SAMPLES` sampled ladders (fixed seed) in which the given clubs are uncertain.
 * @param untilShare ends as soon as it is settled whether the share is at least this; of the worth only that holds then
 */
export function worthOfKnowing(
  view: BagView,
  built: Built,
  plan: Point | null,
  varied: Varied,
  headline: Headline,
  untilShare: number | null = null,
): Worth {
  const random = seeded(SEED);
  const planned = jobsOf(built, plan);
  const excused = lastingExcuses(view, varied);
  let changed = 0;
  let stakeMinor = 0;
  for (let i = 0; i < SAMPLES; i++) {
    if (untilShare !== null && isSettled(changed, i, untilShare)) break;
    const point = headline(sampledInstance(view, built, varied, random, excused));
    if (sameJobs(planned, jobsOf(built, point))) continue;
    changed++;
    stakeMinor += Math.abs((point?.cost ?? 0) - (plan?.cost ?? 0));
  }
  return { share: changed / SAMPLES, stakeMinor: changed === 0 ? 0 : Math.round(stakeMinor / changed) };
}

/** Whether `changed` of the first `tried` samples tell that the share is, or cannot be, as large. */
function isSettled(changed: number, tried: number, share: number): boolean {
  return changed / SAMPLES >= share || (changed + SAMPLES - tried) / SAMPLES < share;
}

type Job = { kind: string; loftDeg: number };

/** What is bought, by kind and loft: one hybrid for another of nearly its loft is the same answer. */
function jobsOf(built: Built, point: Point | null): Job[] {
  if (!point) return [];
  return purchasesOf(built.instance, point.items)
    .map((id) => built.candidates.get(id)?.archetype)
    .filter((archetype) => archetype !== undefined)
    .map(({ kind, loftDeg }) => ({ kind, loftDeg }))
    .sort((a, b) => (a.kind < b.kind ? -1 : a.kind > b.kind ? 1 : a.loftDeg - b.loftDeg));
}

function sameJobs(a: readonly Job[], b: readonly Job[]): boolean {
  if (a.length !== b.length) return false;
  return a.every(
    (job, i) => job.kind === b[i]?.kind && Math.abs(job.loftDeg - (b[i]?.loftDeg ?? 0)) <= ALIKE_DEG,
  );
}
