import type { PriceBand } from '../bag/types.ts';
import { pertCdf } from './pert.ts';

/**
 * One part of a sum of money: a PERT band times a factor (−.87 for a sale less 13 %), or listed amounts with their
 * chances. Parts are independent.
 */
export type Part =
  | { kind: 'band'; band: PriceBand; factor: number }
  | { kind: 'points'; points: readonly { minor: number; chance: number }[] };

/** Cells of the narrowest band; and a bound for the widest sum, so that one tiny band cannot fill the memory. */
const CELLS = 200;
const MOST_CELLS = 40_000;

type Grid = { startMinor: number; mass: Float64Array };

/** How a sum of money is spread: its ends, and the chance of staying at or under any amount. */
export type Spread = { lowMinor: number; highMinor: number; atMost: (limitMinor: number) => number };

/**
 * The distribution of the sum of the parts, by convolution. Bands stand on a grid of 1/200 of the narrowest (coarser
 * only where the sum would span more than 40,000 cells), points are kept exact.
 */
export function spreadOf(parts: readonly Part[]): Spread {
  const bands = parts.flatMap((part) => (part.kind === 'band' ? [part] : []));
  const wide = bands.filter(({ band, factor }) => widthOf(band, factor) > 0);
  const sure = bands.filter(({ band, factor }) => widthOf(band, factor) === 0);
  let points = new Map([[sure.reduce((sum, { band, factor }) => sum + factor * band.lowMinor, 0), 1]]);
  for (const part of parts) if (part.kind === 'points') points = addPoints(points, part.points);
  const below = gridAtMost(sumOf(wide));
  const ends = wide.map(({ band, factor }) => [factor * band.lowMinor, factor * band.highMinor]);
  const sums = [...points.keys()];
  return {
    lowMinor: Math.min(...sums) + ends.reduce((sum, pair) => sum + Math.min(...pair), 0),
    highMinor: Math.max(...sums) + ends.reduce((sum, pair) => sum + Math.max(...pair), 0),
    atMost(limitMinor) {
      let chance = 0;
      for (const [minor, share] of points) chance += share * below(limitMinor - minor);
      return Math.min(1, Math.max(0, chance));
    },
  };
}

/** Chance that the sum of the parts is at most `limitMinor`. */
export function chanceAtMost(parts: readonly Part[], limitMinor: number): number {
  return spreadOf(parts).atMost(limitMinor);
}

/** The least whole amount that the sum stays at or under with this chance (0 to 1). */
export function amountAtChance({ lowMinor, highMinor, atMost }: Spread, chance: number): number {
  let [below, enough] = [Math.ceil(lowMinor) - 1, Math.ceil(highMinor)];
  while (enough - below > 1) {
    const middle = Math.floor((below + enough) / 2);
    if (atMost(middle) >= chance) enough = middle;
    else below = middle;
  }
  return enough;
}

function widthOf(band: PriceBand, factor: number): number {
  return Math.abs(factor) * (band.highMinor - band.lowMinor);
}

function addPoints(
  sums: ReadonlyMap<number, number>,
  points: readonly { minor: number; chance: number }[],
): Map<number, number> {
  const next = new Map<number, number>();
  for (const [sum, share] of sums) {
    for (const { minor, chance } of points)
      next.set(sum + minor, (next.get(sum + minor) ?? 0) + share * chance);
  }
  return next;
}

type Summed = { grid: Grid; stepMinor: number } | null;

function sumOf(bands: readonly { band: PriceBand; factor: number }[]): Summed {
  if (bands.length === 0) return null;
  const widths = bands.map(({ band, factor }) => widthOf(band, factor));
  const stepMinor = Math.max(
    Math.min(...widths) / CELLS,
    widths.reduce((sum, width) => sum + width, 0) / MOST_CELLS,
  );
  const [first, ...rest] = bands.map(({ band, factor }) => gridOf(band, factor, stepMinor));
  if (!first) return null;
  return { grid: rest.reduce(convolved, first), stepMinor };
}

/** Mass of each cell, standing at the cell's middle. */
function gridOf(band: PriceBand, factor: number, stepMinor: number): Grid {
  const [a, b] = [factor * band.lowMinor, factor * band.highMinor];
  const low = Math.min(a, b);
  const cells = Math.ceil(Math.abs(b - a) / stepMinor);
  const mass = new Float64Array(cells);
  const below = (amount: number) =>
    factor > 0 ? pertCdf(band, amount / factor) : 1 - pertCdf(band, amount / factor);
  let before = 0;
  for (let i = 0; i < cells; i++) {
    const until = i === cells - 1 ? 1 : below(low + (i + 1) * stepMinor);
    mass[i] = until - before;
    before = until;
  }
  return { startMinor: low + stepMinor / 2, mass };
}

function convolved(a: Grid, b: Grid): Grid {
  const mass = new Float64Array(a.mass.length + b.mass.length - 1);
  for (let i = 0; i < a.mass.length; i++) {
    const share = a.mass[i] ?? 0;
    if (share === 0) continue;
    for (let j = 0; j < b.mass.length; j++) mass[i + j] = (mass[i + j] ?? 0) + share * (b.mass[j] ?? 0);
  }
  return { startMinor: a.startMinor + b.startMinor, mass };
}

/** Each cell's mass is spread evenly over its width. */
function gridAtMost(summed: Summed): (limitMinor: number) => number {
  if (summed === null) return (limitMinor) => (limitMinor >= -1e-9 ? 1 : 0);
  const { grid, stepMinor } = summed;
  const from = grid.startMinor - stepMinor / 2;
  const before = new Float64Array(grid.mass.length + 1);
  for (let i = 0; i < grid.mass.length; i++) before[i + 1] = (before[i] ?? 0) + (grid.mass[i] ?? 0);
  return (limitMinor) => {
    const cells = (limitMinor - from) / stepMinor;
    if (cells <= 0) return 0;
    const whole = Math.min(grid.mass.length, Math.floor(cells));
    return (before[whole] ?? 0) + (grid.mass[whole] ?? 0) * (cells - whole);
  };
}
