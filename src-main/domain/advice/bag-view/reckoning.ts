import { gapLimits, USUAL_CONVENTIONS, type Conventions, type GapLimits } from '../../bag/conventions.ts';
import { PLAYER_AIR, type Air } from '../../flight/air.ts';

/** What the user may set beside the bag: limits and weights, and the air that the player's carries are spoken of in. */
export type Reckoning = { conventions: Conventions; air: Air };

export const USUAL_RECKONING: Reckoning = { conventions: USUAL_CONVENTIONS, air: PLAYER_AIR };

/** What of the limits and weights that a plan was reckoned with is the user's own, not common practice. */
export type OwnConventions = { limits: boolean; tiers: boolean; weights: boolean };

/** @param limits those that held for this player. */
export function ownConventions(
  { tierUpTo, weights }: Conventions,
  limits: GapLimits,
  driverSpeedMph: number,
): OwnConventions {
  const usual = USUAL_CONVENTIONS;
  return {
    limits: differs(limits, gapLimits(driverSpeedMph)),
    tiers: tierUpTo.some((handicap, i) => handicap !== usual.tierUpTo[i]),
    weights: differs(weights, usual.weights),
  };
}

function differs<T extends object>(one: T, other: T): boolean {
  return (Object.keys(other) as (keyof T)[]).some((key) => one[key] !== other[key]);
}
