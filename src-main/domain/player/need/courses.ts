import type { Hole } from '../../bag/types.ts';
import { driveTotalYd } from './drive.ts';

export type CoursePar = 70 | 71 | 72;

/** A generic course for a player who gave none: 18 holes from one set of tees. */
export type Course = { totalYd: number; parTotal: CoursePar; holes: readonly Hole[] };

/**
 * Drive with its roll → length of 18 holes, yards. Each length is a round figure within the published row of the
 * Tee It Forward chart: PGA of America and USGA, two pages agree (CHECKVALUES §2, tag S).
 */
const TEES: readonly { driveYd: number; totalYd: number }[] = [
  { driveYd: 100, totalYd: 2200 },
  { driveYd: 125, totalYd: 2900 },
  { driveYd: 150, totalYd: 3600 },
  { driveYd: 175, totalYd: 4500 },
  { driveYd: 200, totalYd: 5300 },
  { driveYd: 225, totalYd: 5900 },
  { driveYd: 250, totalYd: 6300 },
  { driveYd: 275, totalYd: 6800 },
  { driveYd: 300, totalYd: 7200 },
];

/** Lengths of the default courses, yards, shortest first. */
export const TEE_LENGTHS_YD: readonly number[] = TEES.map((tee) => tee.totalYd);

/** An invented usual layout in the proportions of a 6,300 yd course, [par, yards]: `common practice, no source`. */
const LAYOUT: readonly (readonly [par: number, lengthYd: number])[] = [
  [4, 370],
  [5, 495],
  [3, 160],
  [4, 390],
  [4, 330],
  [4, 400],
  [3, 180],
  [5, 510],
  [4, 375],
  [4, 380],
  [4, 345],
  [3, 145],
  [5, 475],
  [4, 410],
  [4, 310],
  [3, 170],
  [4, 360],
  [5, 495],
];

/** Holes that shorter pars turn from a par 5 into a long par 4, [place in the layout, yards]: par 71 the first, par 70 both. */
const TURNED: readonly (readonly [place: number, lengthYd: number])[] = [
  [12, 425],
  [1, 415],
];

/** The generic course of that length and par: the layout stretched in proportion, whole yards, the total exact. */
export function courseOf(totalYd: number, parTotal: CoursePar = 72): Course {
  const turned = new Map(TURNED.slice(0, 72 - parTotal));
  const layout = LAYOUT.map(([par, lengthYd], place) => {
    const shorter = turned.get(place);
    return shorter === undefined ? { par, lengthYd } : { par: 4, lengthYd: shorter };
  });
  const stretch = totalYd / layout.reduce((sum, hole) => sum + hole.lengthYd, 0);
  let layoutYd = 0;
  let walkedYd = 0;
  const holes = layout.map(({ par, lengthYd }) => {
    layoutYd += lengthYd;
    // Rounding the running total, not each hole, keeps the course as long as it says.
    const lengthHereYd = Math.round(layoutYd * stretch) - walkedYd;
    walkedYd += lengthHereYd;
    return { par, lengthYd: lengthHereYd };
  });
  return { totalYd, parTotal, holes };
}

/** Length of the course whose tees suit the drive, yards: the chart's nearest row, the forward tees of two as near. */
export function teeLengthYd(driverCarryYd: number): number {
  const driveYd = driveTotalYd(driverCarryYd);
  return TEES.reduce((best, tee) =>
    Math.abs(tee.driveYd - driveYd) < Math.abs(best.driveYd - driveYd) ? tee : best,
  ).totalYd;
}

/** The course a player is taken to play when none is given, by the carry of the drive. */
export function defaultCourse(driverCarryYd: number, parTotal: CoursePar = 72): Course {
  return courseOf(teeLengthYd(driverCarryYd), parTotal);
}
