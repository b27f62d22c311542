/**
 * Fitting and set make-up conventions: editable defaults, all `common practice, no source`
 * (they follow test/reference/data/conventions.json, tag P).
 */
import type { Tier } from './types.ts';

/** Carry gaps in yards beyond which a neighbour pair is crowded or wide; `firstPairYd` is for driver and next club. */
export type SpeedLimits = { crowdedYd: number; wideYd: number; wideLongYd: number; firstPairYd: number };

/** Those of one player. `longShare`: pairs are long whose longer club carries this share of the driver's carry. */
export type GapLimits = SpeedLimits & { longShare: number };

/** What the user may set otherwise; the rest of this file may not be. */
export type Conventions = {
  /** By driver speed (mph), ascending from 0; the lower bound belongs to the row. */
  limits: readonly (SpeedLimits & { fromMph: number })[];
  longShare: number;
  /** The highest handicaps for which tier 1, 2 and 3 are recommended; above the last it is 4. */
  tierUpTo: readonly [number, number, number];
  /** Penalty per tenth of a yard of a wide gap (on average over the ladder) and a crowded pair, and per tier step. */
  weights: { wide: number; crowd: number; tier: number };
};

export const USUAL_CONVENTIONS: Conventions = {
  limits: [
    { fromMph: 0, crowdedYd: 4, wideYd: 14, wideLongYd: 16, firstPairYd: 28 },
    { fromMph: 75, crowdedYd: 5, wideYd: 15, wideLongYd: 18, firstPairYd: 36 },
    { fromMph: 90, crowdedYd: 5, wideYd: 16, wideLongYd: 20, firstPairYd: 46 },
    { fromMph: 105, crowdedYd: 6, wideYd: 18, wideLongYd: 22, firstPairYd: 52 },
  ],
  longShare: 0.7,
  tierUpTo: [5.4, 12.4, 20.4],
  weights: { wide: 2, crowd: 1, tier: 40 },
};

/** The last row whose lower bound is at or below the value: a boundary belongs to the faster row. */
export function rowAt<T>(rows: readonly (readonly [number, T])[], value: number): T {
  const first = rows[0];
  if (!first) throw new RangeError('a convention needs at least one row');
  let found = first[1];
  for (const [from, row] of rows) if (value >= from) found = row;
  return found;
}

/** Gap limits for a driver speed (mph). */
export function gapLimits(
  driverSpeedMph: number,
  { limits, longShare }: Conventions = USUAL_CONVENTIONS,
): GapLimits {
  const rows = limits.map(({ fromMph, ...row }) => [fromMph, row] as const);
  return { ...rowAt(rows, driverSpeedMph), longShare };
}

/** Handicap that the clubs are bought for: where the player is going, within reason (at most 4 better than now). */
export function handicapToBuyFor(handicap: number, targetHandicap?: number): number {
  return targetHandicap === undefined ? handicap : Math.max(targetHandicap, handicap - 4);
}

/** Recommended forgiveness tier of a handicap. */
export function recommendedTier(
  handicap: number,
  { tierUpTo }: Pick<Conventions, 'tierUpTo'> = USUAL_CONVENTIONS,
): Tier {
  const [one, two, three] = tierUpTo;
  if (handicap <= one) return 1;
  if (handicap <= two) return 2;
  if (handicap <= three) return 3;
  return 4;
}

/** The least tier that still fits, by kind; wedges and putters have none. */
export function leastTiers(recommended: Tier): Record<'driver' | 'fairway' | 'hybrid' | 'iron', number> {
  const iron = Math.max(1, recommended - 1);
  const wood = Math.max(1, recommended - 2);
  return { driver: wood, fairway: wood, hybrid: iron, iron };
}

/** Lowest driver loft to offer (degrees) by driver speed (mph). */
export function lowestDriverLoft(driverSpeedMph: number): number {
  return rowAt(
    [
      [0, 12],
      [75, 10.5],
      [90, 9.5],
      [105, 8.5],
    ] as const,
    driverSpeedMph,
  );
}

/** Lowest fairway-wood loft to offer (degrees) by driver speed (mph): 5-wood, 4-wood, 3-wood, strong 3-wood. */
export function lowestFairwayLoft(driverSpeedMph: number): number {
  return rowAt(
    [
      [0, 18],
      [75, 16.5],
      [85, 15],
      [95, 13.5],
    ] as const,
    driverSpeedMph,
  );
}

/** The longest iron to offer by 7-iron carry (yd): its number, and the least loft it has in a strong set. */
export function longestIron(sevenIronCarryYd: number): { number: number; leastLoftDeg: number } {
  return rowAt(
    [
      [0, { number: 7, leastLoftDeg: 27.5 }],
      [115, { number: 6, leastLoftDeg: 24.5 }],
      [130, { number: 5, leastLoftDeg: 21.5 }],
      [150, { number: 4, leastLoftDeg: 19 }],
      [165, { number: 3, leastLoftDeg: 18 }],
    ] as const,
    sevenIronCarryYd,
  );
}

/** Wedges above this loft (degrees) are not offered unless asked for. */
export const HIGHEST_WEDGE_LOFT = 60;

/** Clubs allowed in a round: Rules of Golf, Rule 4.1b. */
export const MOST_CLUBS = 14;
