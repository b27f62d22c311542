import { normalCdf } from '../statistics.ts';
import { firstCellAbove } from './cells.ts';

/** A shot at a target `remainingYd` away that carries `meanYd` on the mean and rolls `rollYd`. */
export type Shot = { remainingYd: number; meanYd: number; sdYd: number; rollYd: number };

/** Beyond so many standard deviations the normal tail is below 1e-8. */
const FAR_SD = 6;
/** A player without any spread is one whose shots all carry the mean. */
const LEAST_SD_YD = 1e-9;

/**
 * Adds what a shot leaves to `into`, the chance of each cell times `weight`. Short and long both leave a distance; what
 * is left below the first cell is short game and is dropped. The carry is normal, cut at 0 and at twice the mean.
 */
export function leave(shot: Shot, weight: number, edgesYd: Float64Array, into: Float64Array): void {
  const { meanYd, rollYd } = shot;
  const sdYd = Math.max(shot.sdYd, LEAST_SD_YD);
  const tail = normalCdf(-meanYd / sdYd);
  const below = (carryYd: number): number => {
    if (carryYd <= 0) return 0;
    if (carryYd >= 2 * meanYd) return 1;
    return (normalCdf((carryYd - meanYd) / sdYd) - tail) / (1 - 2 * tail);
  };
  const reachYd = FAR_SD * sdYd;
  const leastYd = Math.max(0, meanYd - reachYd);
  const mostYd = Math.min(2 * meanYd, meanYd + reachYd);
  const pinYd = shot.remainingYd - rollYd;

  // Short of the target: `left` remains of a carry of pin − left.
  const firstShort = firstCellAbove(edgesYd, pinYd - mostYd);
  let above = below(pinYd - (edgesYd[firstShort] ?? 0));
  for (let i = firstShort; i < into.length; i++) {
    if ((edgesYd[i] as number) > pinYd - leastYd) break;
    const next = below(pinYd - (edgesYd[i + 1] as number));
    into[i] = (into[i] as number) + weight * (above - next);
    above = next;
  }
  // Past it: `left` remains of a carry of pin + left.
  const firstLong = firstCellAbove(edgesYd, leastYd - pinYd);
  let under = below(pinYd + (edgesYd[firstLong] ?? 0));
  for (let i = firstLong; i < into.length; i++) {
    if (pinYd + (edgesYd[i] as number) > mostYd) break;
    const next = below(pinYd + (edgesYd[i + 1] as number));
    into[i] = (into[i] as number) + weight * (next - under);
    under = next;
  }
}
