import { BALL_MASS_KG, BALL_RADIUS_M, MS_PER_MPH, RADIANS_PER_DEGREE, RADS_PER_RPM } from '../constants.ts';
import type { LadderKind } from '../kind.ts';
import { piecewise, type Points } from '../piecewise.ts';
import type { Launch } from '../trajectory.ts';
import type { Delivery } from './delivery.ts';

/** A strike off the centre of the face: metres from it, and the head's moment of inertia about that axis. */
export type OffCentre = { readonly metres: number; readonly inertiaKgM2: number };

/** Irons' restitution and grip change with spin loft, from this angle. */
const IRON_SPIN_LOFT_DEG = 15;

/** Restitution along the normal of the face. Our fit to the tour tables; agrees when derived again from 46 rows. */
function restitution(kind: LadderKind, spinLoftDeg: number): number {
  switch (kind) {
    case 'driver':
      return 0.873;
    case 'fairway':
      return 0.853;
    case 'hybrid':
      return 0.816;
    case 'iron':
    case 'wedge':
      return 0.778 + 0.0015 * (spinLoftDeg - IRON_SPIN_LOFT_DEG);
  }
}

/** Grip of a fairway wood by loft: the 3-wood spins like a driver, the 5- and 7-wood like a hybrid. Our fit. */
const FAIRWAY_GRIP: Points = [
  [15, 0.965],
  [18, 1.18],
];

/** Share of the tangential impulse of a rolling ball that becomes spin. Our fit to the tour tables. */
function grip(kind: LadderKind, loftDeg: number, spinLoftDeg: number): number {
  switch (kind) {
    case 'driver':
      return 0.814;
    case 'fairway':
      return piecewise(FAIRWAY_GRIP, loftDeg, 'hold');
    case 'hybrid':
      return 1.18;
    case 'iron':
    case 'wedge':
      return 1.18 + 0.0071 * (spinLoftDeg - IRON_SPIN_LOFT_DEG);
  }
}

/** m·r²/I of a uniform sphere, 5/2: what a tangential impulse turns into spin. */
const SPHERE = 2.5;
/** Beyond this share of the normal impulse the ball slides on the face instead of rolling. Our fit. */
const SLIDE = 0.4;

/**
 * Launch of the ball from the delivery of the club: rigid bodies, restitution along the face's normal, rolling or
 * sliding along it. `offCentre` left out is a centred strike. Ball speed in mph, launch in degrees, spin in rpm.
 */
export function impact(
  club: { readonly kind: LadderKind; readonly loftDeg: number } & Delivery,
  offCentre?: OffCentre,
): Launch {
  const spinLoftDeg = club.dynamicLoftDeg - club.attackDeg;
  const spinLoft = spinLoftDeg * RADIANS_PER_DEGREE;
  const speed = club.clubSpeedMph * MS_PER_MPH;
  const massRatio = BALL_MASS_KG / club.headMassKg;
  const twist = offCentre ? (BALL_MASS_KG * offCentre.metres ** 2) / offCentre.inertiaKgM2 : 0;
  const normal =
    ((1 + restitution(club.kind, spinLoftDeg)) * speed * Math.cos(spinLoft)) / (1 + massRatio + twist);
  const rolling =
    (grip(club.kind, club.loftDeg, spinLoftDeg) * speed * Math.sin(spinLoft)) / (1 + massRatio + SPHERE);
  const tangential = Math.min(rolling, SLIDE * normal);
  return {
    ballSpeedMph: Math.hypot(normal, tangential) / MS_PER_MPH,
    launchDeg: club.attackDeg + spinLoftDeg - Math.atan2(tangential, normal) / RADIANS_PER_DEGREE,
    spinRpm: (SPHERE * tangential) / BALL_RADIUS_M / RADS_PER_RPM,
  };
}
