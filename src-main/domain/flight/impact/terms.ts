import type { SpinTier } from '../../bag/types.ts';
import type { LadderKind } from '../kind.ts';
import { piecewise } from '../piecewise.ts';
import { familyOf, LENGTH_IN } from './club-tables.ts';

/**
 * Share by which a low- or high-spin head changes the spin of a centred strike. Common practice, no source: about
 * 200 rpm of a driver's 2,600. A wedge's spin comes from its grooves and the lie, not from a tier.
 */
const SPIN_TIER_SHARE: Readonly<Record<LadderKind, number>> = {
  driver: 0.08,
  fairway: 0.08,
  hybrid: 0.08,
  iron: 0.04,
  wedge: 0,
};

/** Factor on the spin; 1 for a mid tier, and when nothing is known of the tier. */
export function spinTierFactor(kind: LadderKind, tier: SpinTier = 'mid'): number {
  if (tier === 'mid') return 1;
  return tier === 'high' ? 1 + SPIN_TIER_SHARE[kind] : 1 - SPIN_TIER_SHARE[kind];
}

/** Club speed gained per inch over the standard length, about 1 mph of a driver's 93. Common practice, no source. */
const SPEED_SHARE_PER_INCH = 0.01;
/** Beyond this the strike suffers more than the speed gains. Common practice, no source. */
const MOST_INCHES = 2;

/** Standard length in inches of a club of this kind and loft; the end values are held. Common practice, no source. */
export function standardLengthIn(kind: LadderKind, loftDeg: number): number {
  return piecewise(LENGTH_IN[familyOf(kind)], loftDeg, 'hold');
}

/** Factor on the club speed; 1 at standard length, and when the length is not known. */
export function lengthFactor(kind: LadderKind, loftDeg: number, lengthIn?: number): number {
  if (lengthIn === undefined) return 1;
  const over = lengthIn - standardLengthIn(kind, loftDeg);
  return 1 + SPEED_SHARE_PER_INCH * Math.min(MOST_INCHES, Math.max(-MOST_INCHES, over));
}
