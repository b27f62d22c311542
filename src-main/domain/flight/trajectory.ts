import {
  LONGEST_FLIGHT_SECONDS,
  METRES_PER_YARD,
  MS_PER_MPH,
  RADIANS_PER_DEGREE,
  RADS_PER_RPM,
  STEP_SECONDS,
} from './constants.ts';
import { emptySlope, forcesOf, slopeInto, type Surroundings } from './forces.ts';
import { cubicAt, cubicSlopeAt, fallsThroughZero, type Cubic } from './hermite.ts';

/** How the ball leaves the club: mph, degrees above the horizontal, rpm of pure backspin. */
export type Launch = { readonly ballSpeedMph: number; readonly launchDeg: number; readonly spinRpm: number };

/** A point of the curve: yards down the line, above the ground, and to the right of the line. */
export type FlightPoint = {
  readonly seconds: number;
  readonly alongYd: number;
  readonly heightYd: number;
  readonly rightYd: number;
};

/** Carry is taken along the target line, to the height of the start. Degrees of landing are below the horizontal. */
export type Trajectory = {
  readonly carryYd: number;
  readonly rightYd: number;
  readonly apexYd: number;
  readonly landDeg: number;
  readonly seconds: number;
  /** Empty unless asked for. */
  readonly points: readonly FlightPoint[];
};

export type TrajectoryOptions = Surroundings & {
  readonly stepSeconds?: number;
  /** Record a point every so many steps; 0 or absent: none. */
  readonly pointEvery?: number | undefined;
};

/**
 * Flies the ball until it is back at the height of its start: classical Runge–Kutta of order 4 at a fixed step, the
 * apex and the landing found on the cubic of the step that holds them. A ball that starts downwards has carry 0.
 * Arguments are not checked here (see `flight`). Null if it never comes down within LONGEST_FLIGHT_SECONDS.
 */
export function trajectory(launch: Launch, options: TrajectoryOptions): Trajectory | null {
  const step = options.stepSeconds ?? STEP_SECONDS;
  const half = step / 2;
  const sixth = step / 6;
  const forces = forcesOf(options);
  const every = options.pointEvery ?? 0;
  const points: FlightPoint[] = [];
  const a = emptySlope();
  const b = emptySlope();
  const c = emptySlope();
  const d = emptySlope();

  const speed = launch.ballSpeedMph * MS_PER_MPH;
  const angle = launch.launchDeg * RADIANS_PER_DEGREE;
  let x = 0;
  let y = 0;
  let z = 0;
  let vx = speed * Math.cos(angle);
  let vy = speed * Math.sin(angle);
  let vz = 0;
  let spin = launch.spinRpm * RADS_PER_RPM;
  let apex = 0;
  if (every > 0) points.push(pointAt(0, 0, 0, 0));
  if (vy < 0) return landed(0, 0, 0, 0, vx, vy, 0, points, every);

  const steps = Math.ceil(LONGEST_FLIGHT_SECONDS / step);
  for (let n = 0; n < steps; n += 1) {
    slopeInto(a, forces, vx, vy, vz, spin);
    slopeInto(b, forces, vx + half * a.ax, vy + half * a.ay, vz + half * a.az, spin + half * a.spin);
    slopeInto(c, forces, vx + half * b.ax, vy + half * b.ay, vz + half * b.az, spin + half * b.spin);
    slopeInto(d, forces, vx + step * c.ax, vy + step * c.ay, vz + step * c.az, spin + step * c.spin);
    // Forces do not depend on where the ball is, so the positions of the four stages need no storing.
    const nextX = x + step * (vx + sixth * (a.ax + b.ax + c.ax));
    const nextY = y + step * (vy + sixth * (a.ay + b.ay + c.ay));
    const nextZ = z + step * (vz + sixth * (a.az + b.az + c.az));
    const nextVx = vx + sixth * (a.ax + 2 * (b.ax + c.ax) + d.ax);
    const nextVy = vy + sixth * (a.ay + 2 * (b.ay + c.ay) + d.ay);
    const nextVz = vz + sixth * (a.az + 2 * (b.az + c.az) + d.az);

    if ((vy > 0 && nextVy <= 0) || nextY < 0) {
      const height: Cubic = { from: y, fromSlope: vy, to: nextY, toSlope: nextVy, length: step };
      if (vy > 0) {
        const top = fallsThroughZero((share) => cubicSlopeAt(height, share), 0, 1);
        apex = Math.max(apex, cubicAt(height, top));
      }
      if (nextY < 0) {
        const share = vy > 0 || y > 0 ? fallsThroughZero((s) => cubicAt(height, s), 0, 1) : 0;
        const along: Cubic = { from: x, fromSlope: vx, to: nextX, toSlope: nextVx, length: step };
        const right: Cubic = { from: z, fromSlope: vz, to: nextZ, toSlope: nextVz, length: step };
        return landed(
          (n + share) * step,
          cubicAt(along, share),
          cubicAt(right, share),
          apex,
          cubicSlopeAt(along, share),
          cubicSlopeAt(height, share),
          cubicSlopeAt(right, share),
          points,
          every,
        );
      }
    }
    x = nextX;
    y = nextY;
    z = nextZ;
    vx = nextVx;
    vy = nextVy;
    vz = nextVz;
    spin += sixth * (a.spin + 2 * (b.spin + c.spin) + d.spin);
    if (every > 0 && (n + 1) % every === 0) points.push(pointAt((n + 1) * step, x, y, z));
  }
  return null;
}

function pointAt(seconds: number, x: number, y: number, z: number): FlightPoint {
  return {
    seconds,
    alongYd: x / METRES_PER_YARD,
    heightYd: y / METRES_PER_YARD,
    rightYd: z / METRES_PER_YARD,
  };
}

function landed(
  seconds: number,
  x: number,
  z: number,
  apex: number,
  vx: number,
  vy: number,
  vz: number,
  points: FlightPoint[],
  every: number,
): Trajectory {
  if (every > 0 && seconds > 0) points.push(pointAt(seconds, x, 0, z));
  return {
    carryYd: x / METRES_PER_YARD,
    rightYd: z / METRES_PER_YARD,
    apexYd: apex / METRES_PER_YARD,
    landDeg: Math.atan2(-vy, Math.hypot(vx, vz)) / RADIANS_PER_DEGREE,
    seconds,
    points,
  };
}
