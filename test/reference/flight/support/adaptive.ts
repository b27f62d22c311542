import { createRequire } from 'node:module';
import { constants } from './data.ts';

/**
 * The same flight, written a second time and integrated by somebody else's program: odex, the extrapolation method of
 * Hairer & Wanner with adaptive step and order. Nothing is taken from the product: coefficients, spin decay and ball
 * come from the constants file, the lift from a cross product in three dimensions.
 */
type Derivative = (t: number, y: number[]) => number[];
type Solver = {
  relativeTolerance: number;
  absoluteTolerance: number;
  maxSteps: number;
  solve(
    f: Derivative,
    t0: number,
    y0: number[],
    t1: number,
    out?: (n: number, tOld: number, t: number, y: number[]) => boolean,
  ): { y: number[] };
};
const { Solver } = createRequire(import.meta.url)('odex') as { Solver: new (n: number) => Solver };

export type AdaptiveLaunch = {
  ballSpeedMph: number;
  launchDeg: number;
  spinRpm: number;
  densityKgM3: number;
  headMph?: number;
  fromLeftMph?: number;
};

const { ball, decay, SAT6 } = constants;

function derivative(launch: AdaptiveLaunch): Derivative {
  const k = (launch.densityKgM3 * Math.PI * ball.r ** 2) / (2 * ball.m);
  const air = [-(launch.headMph ?? 0) * 0.44704, 0, (launch.fromLeftMph ?? 0) * 0.44704];
  const axis = [0, 0, 1];
  return (_t, y) => {
    const [, , , vx, vy, vz, w] = y as [number, number, number, number, number, number, number];
    const u = [vx - air[0]!, vy - air[1]!, vz - air[2]!];
    const v = Math.hypot(...u);
    const ratio = (ball.r * w) / v;
    const s = Math.min(ratio, SAT6.sPk);
    const cd = SAT6.d0 + SAT6.d1 * (s - s ** 2 / (2 * SAT6.sPk)) + SAT6.low * Math.max(0, 1 - v / SAT6.v0);
    const cl = (SAT6.clA * ratio) / (SAT6.clB + ratio);
    const across = [
      axis[1]! * u[2]! - axis[2]! * u[1]!,
      axis[2]! * u[0]! - axis[0]! * u[2]!,
      axis[0]! * u[1]! - axis[1]! * u[0]!,
    ];
    const force = u.map((each, i) => k * v * (cl * across[i]! - cd * each));
    return [
      vx,
      vy,
      vz,
      force[0]!,
      force[1]! - 9.80665,
      force[2]!,
      (-decay.c * (launch.densityKgM3 / 1.2) * v * w) / ball.r,
    ];
  };
}

function solver(): Solver {
  const made = new Solver(7);
  made.relativeTolerance = 1e-11;
  made.absoluteTolerance = 1e-11;
  made.maxSteps = 1_000_000;
  return made;
}

/** Carry and drift in yards, and the time, found by closing in on the landing with fresh integrations. */
export function adaptiveFlight(launch: AdaptiveLaunch): {
  carryYd: number;
  rightYd: number;
  seconds: number;
} {
  const f = derivative(launch);
  const speed = launch.ballSpeedMph * 0.44704;
  const angle = (launch.launchDeg * Math.PI) / 180;
  const start = [
    0,
    0,
    0,
    speed * Math.cos(angle),
    speed * Math.sin(angle),
    0,
    (launch.spinRpm * Math.PI) / 30,
  ];
  let before = { t: 0, y: start };
  let last = { t: 0, y: start };
  solver().solve(f, 0, start, 60, (_n, _tOld, t, y) => {
    before = last;
    last = { t, y: [...y] };
    return !(t > 0 && y[1]! < 0);
  });
  // Newton on the height: the climb is known exactly, so three or four rounds reach rounding.
  let { t, y } = before;
  for (let round = 0; round < 8; round += 1) {
    const next =
      round === 0
        ? before.t + (last.t - before.t) * (before.y[1]! / (before.y[1]! - last.y[1]!))
        : t - y[1]! / y[4]!;
    y = next > before.t ? solver().solve(f, before.t, [...before.y], next).y : [...before.y];
    t = Math.max(next, before.t);
  }
  return { carryYd: y[0]! / 0.9144, rightYd: y[2]! / 0.9144, seconds: t };
}
