import type { Rung } from './ladder.ts';
import { normalCdf } from '../statistics.ts';

/** A ladder neighbour pair: the longer club, the shorter one, their gap and its standard deviation in yards. */
export type Gap = { longer: Rung; shorter: Rung; gapYd: number; sdYd: number };

const MEASURED_LEAST_YD = 1.5;
const INTERPOLATED_YD = 2;
const MODELLED_YD = 4;
const ACROSS_FAMILIES_YD = 8;

/**
 * Standard deviation of the gap of two rungs, yards. Neighbours share most of their error (weather, ball, swing),
 * so a gap is known better than either level: own reckoning from CHECKVALUES §7 and §9.
 */
export function gapSdYd(longer: Rung, shorter: Rung): number {
  const a = ownFigure(longer, longer, shorter);
  const b = ownFigure(shorter, longer, shorter);
  if (longer.source === shorter.source) {
    if (longer.source !== 'measured') return a;
    return Math.max(MEASURED_LEAST_YD, Math.hypot(longer.standardErrorYd ?? 0, shorter.standardErrorYd ?? 0));
  }
  return Math.sqrt((a * a + b * b) / 2);
}

/** The figure that a pair of this one's source would have. */
function ownFigure(rung: Rung, longer: Rung, shorter: Rung): number {
  const across = longer.family !== shorter.family;
  switch (rung.source) {
    case 'stated':
      return Math.max(3, 0.02 * longer.carryYd);
    case 'measured':
      return Math.max(MEASURED_LEAST_YD, Math.SQRT2 * (rung.standardErrorYd ?? 0));
    case 'interpolated':
      return across ? ACROSS_FAMILIES_YD : INTERPOLATED_YD;
    case 'modelled':
      return across ? ACROSS_FAMILIES_YD : MODELLED_YD;
  }
}

export function gapBetween(longer: Rung, shorter: Rung): Gap {
  return { longer, shorter, gapYd: longer.carryYd - shorter.carryYd, sdYd: gapSdYd(longer, shorter) };
}

/** Neighbour gaps of a ladder that stands in ladder order. */
export function neighbourGaps(ladder: readonly Rung[]): Gap[] {
  const gaps: Gap[] = [];
  let longer: Rung | undefined;
  for (const shorter of ladder) {
    if (longer) gaps.push(gapBetween(longer, shorter));
    longer = shorter;
  }
  return gaps;
}

/** How sure it is that the true gap lies above the limit, 0..1. */
export function chanceAbove(gap: Gap, limitYd: number): number {
  return normalCdf((gap.gapYd - limitYd) / gap.sdYd);
}

/** How sure it is that the true gap lies below the limit, 0..1. */
export function chanceBelow(gap: Gap, limitYd: number): number {
  return 1 - chanceAbove(gap, limitYd);
}
