/**
 * A round simulator that shares no code with the product: it draws shots one by one by the rules that the product's
 * need model documents, and counts them. Own work; the random numbers are Box–Muller on a seeded uniform generator
 * (G. E. P. Box, M. E. Muller, Annals of Mathematical Statistics 29, 1958).
 */
import { mulberry32 } from '../../../support/random.ts';

export type Golfer = {
  name: string;
  seed: number;
  driverYd: number;
  /** Longest club but the driver. */
  longestYd: number;
  rollYd: number;
  share: number;
  lengthsYd: readonly number[];
};

export type Counted = {
  fullShots: number;
  teeShots: number;
  /** Wanted strictly between the two longest clubs' carries. */
  firstGap: number;
  between: (low: number, high: number) => number;
};

/** Mean counts of `rounds` rounds; wanted carries are kept one by one in a fine histogram of tenths of a yard. */
export function simulate(golfer: Golfer, rounds: number): Counted {
  const uniform = mulberry32(golfer.seed);
  let spare: number | null = null;
  const gauss = (): number => {
    if (spare !== null) {
      const kept = spare;
      spare = null;
      return kept;
    }
    const radius = Math.sqrt(-2 * Math.log(1 - uniform()));
    const angle = 2 * Math.PI * uniform();
    spare = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
  const strike = (mean: number): number => {
    for (;;) {
      const carry = mean * (1 + golfer.share * gauss());
      if (carry > 0 && carry < 2 * mean) return carry;
    }
  };

  const tenths = new Float64Array(10_000);
  let tees = 0;
  let full = 0;
  let firstGap = 0;
  const count = (wanted: number) => {
    const at = Math.floor(wanted * 10 + 1e-9);
    tenths[at] = tenths[at]! + 1;
    full++;
    if (wanted > golfer.longestYd && wanted < golfer.driverYd) firstGap++;
  };
  for (let round = 0; round < rounds; round++) {
    for (const length of golfer.lengthsYd) {
      if (length < 40) continue;
      tees++;
      let left: number;
      const tee = Math.max(golfer.driverYd, golfer.longestYd);
      if (length > tee) {
        count(tee);
        const roll = tee === golfer.driverYd ? golfer.rollYd : 0;
        left = Math.abs(length - strike(tee) - roll);
      } else {
        count(length);
        left = Math.abs(length - strike(length));
      }
      while (left >= 40) {
        if (left <= golfer.longestYd) {
          count(left);
          left = Math.abs(left - strike(left));
        } else {
          count(left <= 0.9 * golfer.driverYd ? left : golfer.longestYd);
          left = Math.abs(left - strike(golfer.longestYd));
        }
      }
    }
  }
  return {
    fullShots: full / rounds,
    teeShots: tees / rounds,
    firstGap: firstGap / rounds,
    between: (low, high) =>
      tenths.subarray(Math.round(low * 10), Math.round(high * 10)).reduce((sum, shots) => sum + shots, 0) /
      rounds,
  };
}
