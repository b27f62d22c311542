import type { BesideClub } from '../../../src-main/contract/calls/answers/beside.ts';
import type { Page } from '../side/overlay-view.ts';

/** Wedges stand among the irons: a pitching wedge may be either. */
const GROUPS = ['driver', 'fairway', 'hybrid', 'irons', 'putter'] as const;
export type SlotGroup = (typeof GROUPS)[number];

/** What two bags have for the same job; a page without a club has nothing for it. */
export type Slot = { group: SlotGroup } & Record<Page, BesideClub | null>;

/** Degrees of loft within which two clubs do the same job. Own choice: half of what lies between two irons, and less than a wedge. */
const NEAR_DEG = 2.5;
/** Clubs whose names differ do the same job only where nothing nearer does. */
const OTHER_NAME = 1;
/** That a club stands alone: dearer than any pair, so that pairs are made wherever they can be. */
const ALONE = 2;

/** The clubs of two bags side by side: by kind, then by the name that the trade gives them, else by loft. */
export function slotsOf(left: readonly BesideClub[], right: readonly BesideClub[]): Slot[] {
  return GROUPS.flatMap((group) => {
    const of = (clubs: readonly BesideClub[]) =>
      clubs.filter(({ kind }) => groupOf(kind) === group).sort(byLoft);
    return aligned(of(left), of(right)).map((pair): Slot => ({ group, ...pair }));
  });
}

function groupOf(kind: BesideClub['kind']): SlotGroup {
  return kind === 'iron' || kind === 'wedge' ? 'irons' : kind;
}

/** The strongest first; of unknown loft last, in the order of their bag. */
function byLoft(a: BesideClub, b: BesideClub): number {
  return (a.loftDeg ?? 90) - (b.loftDeg ?? 90);
}

/** How unlike two clubs are, degrees; null where they do not do the same job. */
function unlike(a: BesideClub, b: BesideClub): number | null {
  if (a.kind === b.kind && (a.kind === 'driver' || a.kind === 'putter')) return 0;
  if (a.short !== null && a.short === b.short) return 0;
  const name = (club: BesideClub) => club.name.trim().toLocaleLowerCase();
  if (name(a) === name(b)) return 0;
  if (a.loftDeg === null || b.loftDeg === null) return null;
  const apart = Math.abs(a.loftDeg - b.loftDeg);
  if (apart > NEAR_DEG) return null;
  return apart + (a.short !== null && b.short !== null ? OTHER_NAME : 0);
}

type Pair = Record<Page, BesideClub | null>;
type Best = { cost: number; step: 'both' | Page };

/** Least unlikeness over all ways to go through both lists once, neither out of its order; a pair wins a tie. */
function aligned(left: readonly BesideClub[], right: readonly BesideClub[]): Pair[] {
  // best[i][j]: of the clubs from i and from j on.
  const best: Best[][] = Array.from({ length: left.length + 1 }, () => []);
  const costAt = (i: number, j: number) => best[i]?.[j]?.cost ?? 0;
  for (let i = left.length; i >= 0; i--) {
    for (let j = right.length; j >= 0; j--) {
      const [a, b] = [left[i], right[j]];
      const ways: Best[] = [];
      const apart = a && b ? unlike(a, b) : null;
      if (apart !== null) ways.push({ cost: apart + costAt(i + 1, j + 1), step: 'both' });
      if (a) ways.push({ cost: ALONE + costAt(i + 1, j), step: 'left' });
      if (b) ways.push({ cost: ALONE + costAt(i, j + 1), step: 'right' });
      // The stronger of two that stand alone comes first.
      if (a && b && byLoft(a, b) > 0) ways.reverse();
      const row = best[i];
      const least = ways.reduce<Best | null>(
        (one, way) => (one === null || way.cost < one.cost ? way : one),
        null,
      );
      if (row && least) row[j] = least;
    }
  }
  const pairs: Pair[] = [];
  for (let i = 0, j = 0; i < left.length || j < right.length;) {
    const step = best[i]?.[j]?.step ?? (i < left.length ? 'left' : 'right');
    pairs.push({
      left: step === 'right' ? null : (left[i] ?? null),
      right: step === 'left' ? null : (right[j] ?? null),
    });
    if (step !== 'right') i += 1;
    if (step !== 'left') j += 1;
  }
  return pairs;
}
