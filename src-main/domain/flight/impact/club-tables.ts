import type { LadderKind } from '../kind.ts';
import type { Points } from '../piecewise.ts';

/**
 * Tables by static loft, one set of points a family. Irons and wedges are one family: a pitching wedge is the last iron
 * of its set, whatever it is called. Tour lofts are not published; the points stand at typical lofts of the trade
 * (3W 15, 5W 18, 7W 21; hybrid 22; 3i 20, 4i 23, 5i 26, 6i 29, 7i 33, 8i 37, 9i 41, PW 45, GW 50, SW 55, LW 60).
 */
export type LoftFamily = Exclude<LadderKind, 'wedge'>;

export function familyOf(kind: LadderKind): LoftFamily {
  return kind === 'wedge' ? 'iron' : kind;
}

/**
 * Club speed over driver speed: mean of the published men's and women's tour tables. GW, SW and LW are our
 * extrapolation. The tables hold one hybrid; its slope is that of the long irons beside it, (.838 − .868) / 6°, an
 * assumption. Drivers differ in loft, not in speed.
 */
export const SPEED_RATIO: Readonly<Record<LoftFamily, Points>> = {
  driver: [[10.5, 1]],
  fairway: [
    [15, 0.955],
    [18, 0.927],
    [21, 0.904],
  ],
  hybrid: [
    [22, 0.893],
    [28, 0.863],
  ],
  iron: [
    [20, 0.868],
    [23, 0.852],
    [26, 0.838],
    [29, 0.824],
    [33, 0.804],
    [37, 0.781],
    [41, 0.761],
    [45, 0.74],
    [50, 0.728],
    [55, 0.716],
    [60, 0.706],
  ],
};

/** Attack in degrees, minus is down: published men's tour table; the hybrid's −3.5 from memory (copies differ). */
export const ATTACK_FAST: Readonly<Record<LoftFamily, Points>> = {
  // Tour drivers are hit at −1.3 (men) and +3.0 (women); between them, level is assumed for everyone else.
  driver: [[10.5, 0]],
  fairway: [
    [15, -2.9],
    [18, -3.3],
  ],
  hybrid: [[22, -3.5]],
  iron: [
    [20, -3.1],
    [23, -3.4],
    [26, -3.7],
    [29, -4.1],
    [33, -4.3],
    [37, -4.5],
    [41, -4.7],
    [45, -5],
  ],
};

/** The same from the women's tour table (from memory). It has no hybrid: that of the 4-iron beside it is taken. */
export const ATTACK_SLOW: Readonly<Record<LoftFamily, Points>> = {
  driver: [[10.5, 0]],
  fairway: [
    [15, -0.9],
    [18, -1.8],
    [21, -3],
  ],
  hybrid: [[22, -1.7]],
  iron: [
    [23, -1.7],
    [26, -1.9],
    [29, -2.3],
    [33, -2.3],
    [37, -3.1],
    [41, -3.1],
    [45, -2.8],
  ],
};

/** Head mass in grams at standard loft. Common practice, no source; a driver's range is 190–206. */
export const HEAD_MASS_G: Readonly<Record<LoftFamily, Points>> = {
  driver: [[10.5, 200]],
  fairway: [
    [15, 212],
    [18, 220],
    [21, 226],
    [24, 231],
  ],
  hybrid: [
    [19, 230],
    [22, 235],
    [25, 241],
  ],
  iron: [
    [20.5, 242],
    [23.5, 248],
    [26.5, 255],
    [30, 262],
    [33, 269],
    [37, 276],
    [41, 283],
    [46, 289],
    [50, 294],
    [55, 299],
    [59, 302],
  ],
};

/** Club length in inches at standard loft. Common practice, no source. */
export const LENGTH_IN: Readonly<Record<LoftFamily, Points>> = {
  driver: [[10.5, 45.5]],
  fairway: [
    [15, 43],
    [18, 42.25],
    [21, 41.75],
    [24, 41.25],
  ],
  hybrid: [
    [19, 40.5],
    [22, 40],
    [25, 39.5],
  ],
  iron: [
    [20.5, 39],
    [23.5, 38.5],
    [26.5, 38],
    [30, 37.5],
    [33, 37],
    [37, 36.5],
    [41, 36],
    [46, 35.75],
    [50, 35.5],
    [55, 35.25],
    [59, 35],
  ],
};
