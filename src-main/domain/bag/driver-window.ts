import { rowAt } from './conventions.ts';

/** Launch (degrees) and spin (rpm) that suit a ball speed: `common practice, no source` (conventions.json, tag P). */
export type DriverWindow = { launchDeg: readonly [number, number]; spinRpm: readonly [number, number] };

/** A boundary speed belongs to the faster row. */
export function driverWindow(ballSpeedMph: number): DriverWindow {
  return rowAt<DriverWindow>(
    [
      [0, { launchDeg: [14, 19], spinRpm: [2500, 3300] }],
      [115, { launchDeg: [13, 17], spinRpm: [2400, 3100] }],
      [130, { launchDeg: [12, 16], spinRpm: [2200, 2900] }],
      [150, { launchDeg: [11, 15], spinRpm: [2000, 2700] }],
      [165, { launchDeg: [10, 14], spinRpm: [1900, 2600] }],
    ],
    ballSpeedMph,
  );
}

/** −1 below the window, 0 inside, 1 above. */
export function sideOf(value: number, [low, high]: readonly [number, number]): -1 | 0 | 1 {
  return value < low ? -1 : value > high ? 1 : 0;
}
