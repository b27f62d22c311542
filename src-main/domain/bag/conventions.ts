/**
 * Fitting and set make-up conventions: editable defaults, all `common practice, no source`
 * (they follow test/reference/data/conventions.json, tag P).
 */
import type { Tier } from './types.ts';

/** Carry gaps in yards beyond which a neighbour pair is crowded or wide; `firstPairYd` is for driver and next club. */
export type GapLimits = { crowdedYd: number; wideYd: number; wideLongYd: number; firstPairYd: number };

const LIMITS_BY_SPEED: readonly (readonly [number, GapLimits])[] = [
  [0, { crowdedYd: 4, wideYd: 14, wideLongYd: 16, firstPairYd: 28 }],
  [75, { crowdedYd: 5, wideYd: 15, wideLongYd: 18, firstPairYd: 36 }],
  [90, { crowdedYd: 5, wideYd: 16, wideLongYd: 20, firstPairYd: 46 }],
  [105, { crowdedYd: 6, wideYd: 18, wideLongYd: 22, firstPairYd: 52 }],
];

/** The long end: pairs whose longer club carries at least this share of the driver's carry. */
export const LONG_CLUB_SHARE = 0.7;

/** The last row whose lower bound is at or below the value: a boundary belongs to the faster row. */
export function rowAt<T>(rows: readonly (readonly [number, T])[], value: number): T {
  const first = rows[0];
  if (!first) throw new RangeError('a convention needs at least one row');
  let found = first[1];
  for (const [from, row] of rows) if (value >= from) found = row;
  return found;
}

/** Gap limits for a driver speed (mph). */
export function gapLimits(driverSpeedMph: number): GapLimits {
  return rowAt(LIMITS_BY_SPEED, driverSpeedMph);
}

/** Handicap that the clubs are bought for: where the player is going, within reason (at most 4 better than now). */
export function handicapToBuyFor(handicap: number, targetHandicap?: number): number {
  return targetHandicap === undefined ? handicap : Math.max(targetHandicap, handicap - 4);
}

/** Recommended forgiveness tier of a handicap. */
export function recommendedTier(handicap: number): Tier {
  if (handicap <= 5.4) return 1;
  if (handicap <= 12.4) return 2;
  if (handicap <= 20.4) return 3;
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
