import type { WatchItem } from '../../contract/calls/money/prices.ts';
import type { Prepared } from '../../domain/advice/question/prepare.ts';
import { extrasMinor } from '../../domain/prices/cost.ts';
import type { Candidate } from '../../domain/solve/build/candidates.ts';
import { SolveStopped, type Hooks, type Instance } from '../../domain/solve/index.ts';
import { compareIds } from '../../domain/solve/model/order.ts';
import { JobCells } from '../job-cells.ts';
import { inPlaceOf } from './seen-one.ts';
import { entryPrice, headlineAt, type PricedCurve } from './seen-one-entry.ts';
import type { BagTask } from '../bag-task.ts';
import { curveOf, watchedBag, type WatchedBag } from './watch-list-bag.ts';

export type WatchTask = BagTask & {
  /** Of `JobCells`. */
  cells?: SharedArrayBuffer;
};

export type WatchOutcome = { cancelled: boolean; items: WatchItem[] };

/** Groups shown. */
const MOST_ITEMS = 12;
/** Clubs of one kind this close in carry (yards) do the same job. Common practice, no source; as in alternatives. */
const ALIKE_YD = 4;
/** What stands for any price, in the order of the list. */
const NO_CEILING = Infinity;

type Entry = {
  candidate: Candidate;
  /** The club alone, minor units; NO_CEILING where the budget is the only limit. */
  belowMinor: number;
  penalty: number;
  inPlaceOf: string[];
};

/**
 * Archetypes without a price that this player can use, by the price below which looking one up is worth the while:
 * the price at which each, alone beside what is priced already, first enters the plan, less its delivery and grips.
 * Near duplicates stand behind the best of them. Nothing for a player in pain.
 */
export function watchList({ cells, ...task }: WatchTask): WatchOutcome {
  const job = new JobCells(cells);
  const hooks: Hooks = { shouldStop: () => job.isStopped };
  try {
    const bag = watchedBag(task, hooks);
    const stopped = bag.prepared.found.some((finding) => finding.verdict === 'stop');
    return { cancelled: false, items: stopped ? [] : itemsOf(bag, entriesOf(bag, hooks, job)) };
  } catch (error) {
    if (error instanceof SolveStopped) return { cancelled: true, items: [] };
    throw error;
  }
}

function itemsOf({ prepared }: WatchedBag, entries: readonly Entry[]): WatchItem[] {
  const { reader, words } = prepared.view;
  const money = (minor: number) => (minor === NO_CEILING ? null : reader.money(minor));
  return grouped(entries)
    .slice(0, MOST_ITEMS)
    .map(([best, alike]) => ({
      archetype: best.candidate.archetype.id,
      name: words.archetypeName(best.candidate.archetype),
      below: money(best.belowMinor),
      inPlaceOf: best.inPlaceOf,
      penalty: best.penalty,
      alike: alike.map(({ candidate, belowMinor }) => ({
        archetype: candidate.archetype.id,
        below: money(belowMinor),
      })),
    }));
}

function entriesOf(watched: WatchedBag, hooks: Hooks, job: JobCells): Entry[] {
  const { instance, candidates } = watched.prepared.built;
  const solved = new Map<string, Omit<Entry, 'candidate'> | null>();
  return watched.unpriced.flatMap((id, i) => {
    job.report(i, watched.unpriced.length);
    const candidate = candidates.get(id);
    if (!candidate) return [];
    const kind = jobOf(instance, id);
    let entry = solved.get(kind);
    if (entry === undefined) {
      const extras = extrasMinor(candidate.archetype, watched.bag.costs);
      entry = entryOf(watched.prepared, curveOf(watched, id, hooks), extras);
      solved.set(kind, entry);
    }
    return entry === null ? [] : [{ candidate, ...entry }];
  });
}

function entryOf(prepared: Prepared, curve: PricedCurve, extras: number): Omit<Entry, 'candidate'> | null {
  const entry = entryPrice(curve);
  if (entry === undefined) return null;
  const belowMinor = entry === null ? NO_CEILING : entry - extras;
  const there = headlineAt(curve, entry ?? 0);
  if (belowMinor <= 0 || there === null) return null;
  const { penalty, items } = there.point;
  return { belowMinor, penalty, inPlaceOf: inPlaceOf(prepared, curve.id, items) };
}

/** All that the solver sees of a purchase but its id: what does the same job is reckoned once. */
function jobOf({ items, leastTier }: Instance, id: string): string {
  return items
    .filter((item) => item.id === id || item.lot === id)
    .map(({ kind, carryDy, tier, misfit }) => {
      const least = Object.hasOwn(leastTier, kind) ? (leastTier[kind] ?? 0) : 0;
      return [kind, carryDy, tier === null ? 0 : Math.max(0, least - tier), misfit].join(' ');
    })
    .join('\n');
}

/** Dearest first, then what mends most, then by id; each with the near duplicates that come after it. */
function grouped(entries: readonly Entry[]): [Entry, Entry[]][] {
  const sorted = [...entries].sort(
    (a, b) =>
      (a.belowMinor === b.belowMinor ? 0 : b.belowMinor - a.belowMinor) ||
      a.penalty - b.penalty ||
      compareIds(a.candidate.archetype.id, b.candidate.archetype.id),
  );
  const groups: [Entry, Entry[]][] = [];
  for (const entry of sorted) {
    const group = groups.find(([best]) => alike(best.candidate, entry.candidate));
    if (group) group[1].push(entry);
    else groups.push([entry, []]);
  }
  return groups;
}

/** Club for club of one kind and nearly one carry; putters are all alike here. */
function alike(a: Candidate, b: Candidate): boolean {
  if (a.archetype.kind !== b.archetype.kind || a.clubs.length !== b.clubs.length) return false;
  return a.clubs.every((club, i) => {
    const other = b.clubs[i];
    return other !== undefined && Math.abs(other.carryYd - club.carryYd) <= ALIKE_YD;
  });
}
