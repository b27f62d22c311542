import { firstCellAbove } from './cells.ts';

/**
 * Carries that the full shots of a round want. Plain data: lone carries (a par 3 is as long as it is, a long hole wants
 * all that a club has) and a density on cells, uniform within each cell.
 */
export type Wanted = {
  tee: readonly LoneCarry[];
  deck: readonly LoneCarry[];
  /** Cell borders, yards, rising; one more than there are cells. */
  edgesYd: Float64Array;
  /** Expected shots a round of each cell, all from the deck. */
  shots: Float64Array;
};

/** No full shot at all. */
export const NOTHING_WANTED: Wanted = {
  tee: [],
  deck: [],
  edgesYd: new Float64Array(1),
  shots: new Float64Array(0),
};

/** So many expected shots a round want this very carry. */
export type LoneCarry = { carryYd: number; shots: number };

/** Carries may come rounded to a tenth of a yard, as the solver has them: so near a lone carry is the club's own. */
const OWN_CARRY_YD = 0.1;

/** Expected shots a round that want lowYd ≤ carry < highYd. Neighbouring intervals share no shot. */
export function countBetween(wanted: Wanted, lowYd: number, highYd: number): number {
  const within = ({ carryYd }: LoneCarry) => carryYd >= lowYd && carryYd < highYd;
  return countLone(wanted.tee, within) + countDeckBetween(wanted, lowYd, highYd);
}

/** As `countBetween`, without the tee shots. */
export function countDeckBetween(wanted: Wanted, lowYd: number, highYd: number): number {
  const within = ({ carryYd }: LoneCarry) => carryYd >= lowYd && carryYd < highYd;
  return countLone(wanted.deck, within) + countCells(wanted, lowYd, highYd);
}

/** Expected shots a round that want a carry strictly between two clubs': what either club is made for is left out. */
export function countInside(wanted: Wanted, shorterYd: number, longerYd: number): number {
  const inside = ({ carryYd }: LoneCarry) =>
    carryYd > shorterYd + OWN_CARRY_YD && carryYd < longerYd - OWN_CARRY_YD;
  return (
    countLone(wanted.tee, inside) + countLone(wanted.deck, inside) + countCells(wanted, shorterYd, longerYd)
  );
}

function countLone(lone: readonly LoneCarry[], counts: (carry: LoneCarry) => boolean): number {
  let sum = 0;
  for (const carry of lone) if (counts(carry)) sum += carry.shots;
  return sum;
}

function countCells({ edgesYd, shots }: Wanted, lowYd: number, highYd: number): number {
  let sum = 0;
  for (let i = firstCellAbove(edgesYd, lowYd); i < shots.length; i++) {
    const from = edgesYd[i] as number;
    if (from >= highYd) break;
    const to = edgesYd[i + 1] as number;
    const cellShots = shots[i] as number;
    const whole = from >= lowYd && to <= highYd;
    sum += whole ? cellShots : (cellShots * (Math.min(to, highYd) - Math.max(from, lowYd))) / (to - from);
  }
  return sum;
}
