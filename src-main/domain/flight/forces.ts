import { SAT6, type Aero } from './aero.ts';
import {
  BALL_MASS_KG,
  BALL_RADIUS_M,
  GRAVITY_MS2,
  MS_PER_MPH,
  SPIN_DECAY,
  SPIN_DECAY_DENSITY_KGM3,
} from './constants.ts';

/** A steady wind, the same at every height: mph into the player's face, and mph from the left of the target line. */
export type Wind = { readonly headMph: number; readonly fromLeftMph: number };

/** What the ball flies through. No wind is calm; no `aero` is SAT6. */
export type Surroundings = {
  readonly densityKgM3: number;
  readonly wind?: Wind | undefined;
  readonly aero?: Aero | undefined;
};

/** The surroundings made ready for the inner loop: SI, x down the line, y up, z to the right. */
export type Forces = {
  readonly aero: Aero;
  readonly perMetre: number;
  readonly decayPerMetre: number;
  readonly windX: number;
  readonly windZ: number;
};

/** Acceleration in m/s² and change of spin in rad/s². */
export type Slope = { ax: number; ay: number; az: number; spin: number };

export function emptySlope(): Slope {
  return { ax: 0.5, ay: 0.5, az: 0.5, spin: 0.5 };
}

export function forcesOf({ densityKgM3, wind, aero }: Surroundings): Forces {
  return {
    aero: aero ?? SAT6,
    perMetre: (densityKgM3 * Math.PI * BALL_RADIUS_M * BALL_RADIUS_M) / (2 * BALL_MASS_KG),
    decayPerMetre: (SPIN_DECAY * (densityKgM3 / SPIN_DECAY_DENSITY_KGM3)) / BALL_RADIUS_M,
    windX: -(wind?.headMph ?? 0) * MS_PER_MPH,
    windZ: (wind?.fromLeftMph ?? 0) * MS_PER_MPH,
  };
}

/**
 * Penner (2001), eqs 12–16: a = −k·V·(Cd·u − Cl·n×u) − g with k = ρπr²/2m, u the velocity through the air, V its
 * length, and n the spin axis, level and square to the target line. Velocities in m/s, spin in rad/s. Written into
 * `out`: nothing is allocated in the inner loop.
 */
export function slopeInto(
  out: Slope,
  forces: Forces,
  vx: number,
  vy: number,
  vz: number,
  spin: number,
): void {
  const ux = vx - forces.windX;
  const uz = vz - forces.windZ;
  const airspeed = Math.sqrt(ux * ux + vy * vy + uz * uz);
  const spinSpeed = BALL_RADIUS_M * spin;
  const scale = forces.perMetre * airspeed;
  const drag = scale * forces.aero.drag(spinSpeed, airspeed);
  const lift = scale * forces.aero.lift(spinSpeed, airspeed);
  out.ax = -drag * ux - lift * vy;
  out.ay = -drag * vy + lift * ux - GRAVITY_MS2;
  out.az = -drag * uz;
  out.spin = -forces.decayPerMetre * airspeed * spin;
}
