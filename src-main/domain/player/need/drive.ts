import { carryFromTotal, SLOW_ROLL_YD } from '../model.ts';

/** Length of a drive with its roll, yards: the way back from the rule that takes a total for a carry. */
export function driveTotalYd(carryYd: number): number {
  return carryYd + driveRollYd(carryYd);
}

/** Roll of a drive, yards: the slow player's where such a total would be read as a slow player's. */
export function driveRollYd(carryYd: number): number {
  const slowTotalYd = carryYd + SLOW_ROLL_YD;
  return slowTotalYd - carryFromTotal(slowTotalYd, undefined);
}
