import type { Hole } from '../../bag/types.ts';
import type { Reach } from './reach.ts';
import { leave } from './shot.ts';
import type { LoneCarry, Wanted } from './wanted.ts';

/** A shot that wants less is short game: touch, not a club's carry. `common practice, no source`. */
export const SHORT_GAME_YD = 40;
/** Against cells of an eighth of this no 10-yd interval moves by more than 0.001 shots at a dispersion of 6 %, 0.02 at 1 %: measured. */
const CELL_YD = 1;
/** Of a shot; far below what any sum over a round can show. */
const LEAST_MASS = 1e-15;

/**
 * The full shots of one round. Every distance left is a mass on cells; since a shot leaves less than it had, one sweep
 * from the far end plays all holes to their end. Nothing is drawn at random.
 *
 * From the tee a shot wants the hole's length, or all the longest club has when the hole is longer. From the ground it
 * wants what is left as far as some club could carry it, else all that the longest club but the driver has. It carries
 * what it wants on the mean, as far as the bag reaches, since a player swings a club easier: so the need says what the
 * course asks, not what the present gaps make of it.
 */
export function playRound(holes: readonly Hole[], reach: Reach, dispersionShare: number): Wanted {
  const edgesYd = cellEdges(holes, reach);
  const left = new Float64Array(edgesYd.length - 1);
  const shots = new Float64Array(left.length);
  const tee: LoneCarry[] = [];
  for (const { lengthYd } of holes) {
    if (lengthYd < SHORT_GAME_YD) continue;
    const atPin = lengthYd <= reach.teeYd;
    const meanYd = atPin ? lengthYd : reach.teeYd;
    tee.push({ carryYd: meanYd, shots: 1 });
    const rollYd = atPin ? 0 : reach.teeRollYd;
    leave({ remainingYd: lengthYd, meanYd, sdYd: dispersionShare * meanYd, rollYd }, 1, edgesYd, left);
  }

  let allTheClubHas = 0;
  for (let i = left.length - 1; i >= 0; i--) {
    const remainingYd = ((edgesYd[i] as number) + (edgesYd[i + 1] as number)) / 2;
    const meanYd = Math.min(remainingYd, reach.deckYd);
    const shot = { remainingYd, meanYd, sdYd: dispersionShare * meanYd, rollYd: 0 };
    // With a wide dispersion a shot may stay within its own cell: it is played again until nothing is left there.
    for (let mass = left[i] as number; mass > LEAST_MASS; mass = left[i] as number) {
      left[i] = 0;
      leave(shot, mass, edgesYd, left);
      if (remainingYd <= reach.deckWishYd) shots[i] = (shots[i] as number) + mass;
      else allTheClubHas += mass;
    }
  }
  return { tee, deck: [{ carryYd: reach.deckYd, shots: allTheClubHas }], edgesYd, shots };
}

/** Even cells from the short game up, with borders where the wanted carry changes its rule. */
function cellEdges(holes: readonly Hole[], reach: Reach): Float64Array {
  const farthestYd = holes.reduce(
    (most, hole) => Math.max(most, hole.lengthYd),
    reach.teeYd + reach.teeRollYd,
  );
  const edges = new Set<number>();
  for (let yd = SHORT_GAME_YD; yd < farthestYd + CELL_YD; yd += CELL_YD) edges.add(yd);
  edges.add(reach.deckYd).add(reach.deckWishYd);
  return Float64Array.from(edges).sort();
}
