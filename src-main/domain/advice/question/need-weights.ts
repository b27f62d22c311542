import type { Need } from '../../player/need/need.ts';
import type { Rung } from '../../player/ladder/ladder.ts';

/** From this carry (yd) of the longer club on, a tenth of a yard of a wide gap weighs so much. */
export type NeedWeight = { fromYd: number; weight: number };

/** Bands are this wide (yd); need is taken over a wider window, since a par 3 is one exact distance in the model. */
const BAND_YD = 20;
const WINDOW_YD = 40;
/** The middle of the gap below a club lies about this far under its carry (yd). */
const BELOW_YD = 10;
/** The heaviest band weighs at most so many times the average. */
const MOST_TIMES = 3;
const LEAST = 1;

/**
 * Weights of wide gaps by how often the course asks for what lies in them: in proportion to the square root of the
 * need, whole numbers from 1 to three times the average, `average` (2 unless the user says otherwise) over the bands
 * that the ladder spans; all 0 where that is 0. The root damps what the model
 * does not know; a gap met six times a round still outweighs one met once a month. Own scale, documented here.
 */
export function needWeights(need: Need | null, ladder: readonly Rung[], average: number): NeedWeight[] {
  const top = ladder[0];
  const bottom = ladder.at(-1);
  const even = need === null || need.fullShots === 0 || average === 0;
  if (even || !top || !bottom) return [{ fromYd: 0, weight: average }];
  const first = Math.floor(bottom.carryYd / BAND_YD);
  const last = Math.floor(top.carryYd / BAND_YD);
  const roots: number[] = [];
  for (let band = first; band <= last; band++) {
    const middle = (band + 0.5) * BAND_YD - BELOW_YD;
    const shots = need.between(Math.max(0, middle - WINDOW_YD / 2), middle + WINDOW_YD / 2);
    roots.push(Math.sqrt(shots));
  }
  const weights = averaging(roots, average);
  return weights.map((weight, i) => ({ fromYd: i === 0 ? 0 : (first + i) * BAND_YD, weight }));
}

/** Rounds the roots, scaled so that the whole numbers come nearest to the average; ties to the smaller scale. */
function averaging(roots: readonly number[], average: number): number[] {
  const mean = roots.reduce((sum, root) => sum + root, 0) / roots.length;
  if (mean === 0) return roots.map(() => average);
  let best = roots.map(() => average);
  let least = Infinity;
  for (let scale = 0.5; scale <= 2; scale += 0.01) {
    const tried = roots.map((root) =>
      Math.min(MOST_TIMES * average, Math.max(LEAST, Math.round((average * scale * root) / mean))),
    );
    const off = Math.abs(tried.reduce((sum, weight) => sum + weight, 0) / tried.length - average);
    if (off < least - 1e-9) {
      least = off;
      best = tried;
    }
  }
  return best;
}
