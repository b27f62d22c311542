import type { Bounds } from '../bounds/bounds.ts';
import type { Ladder } from '../model/ladder.ts';
import { PURES } from '../bounds/weights.ts';

/**
 * 1 for all owned clubs, and for about `size` candidates: for each of the weights alike, those through which
 * its bound comes closest to its best. What a run over them finds rules out most of the others.
 */
export const pickCore = (ladder: Ladder, bounds: Bounds, size: number): Uint8Array => {
  const { toGo, upTo, weights } = bounds;
  const n = ladder.clubs.length;
  const core = new Uint8Array(ladder.clubs.map((club) => (club.origin === 'owned' ? 1 : 0)));
  const each = Math.ceil(size / (weights.size - PURES));
  const sumAt = (v: number, t: number): number =>
    (toGo[v * weights.size + t] as number) + (upTo[v * weights.size + t] as number);
  for (let t = PURES; t < weights.size; t++) {
    // The least sums so far, rising, and their positions.
    const sums: number[] = [];
    const positions: number[] = [];
    for (let i = 0; i < n; i++) {
      if (core[i] === 1) continue;
      const sum = Math.min(sumAt(i, t), sumAt(n + i, t));
      if (sum === Infinity || (sums.length === each && sum >= (sums[each - 1] as number))) continue;
      let place = sums.length;
      while (place > 0 && (sums[place - 1] as number) > sum) place--;
      sums.splice(place, 0, sum);
      positions.splice(place, 0, i);
      if (sums.length > each) {
        sums.pop();
        positions.pop();
      }
    }
    for (const i of positions) core[i] = 1;
  }
  return core;
};
