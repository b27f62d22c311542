import type { Ladder } from '../model/ladder.ts';
import type { Region } from './region.ts';
import { PURES, type Weights } from './weights.ts';

/**
 * Bounds are sums of at most a few dozen rounded products, each off by less than 2^-53 of the largest total
 * in it: together by less than this share of it.
 */
const ROUNDING = 2 ** -44;

/** Asks whether any bag of a family can lie in the region, by the family's least weighted sums. */
export class Prune {
  /** The sums of the family asked about, by weights: fill it, then ask `empty`. */
  readonly least: Float64Array;
  readonly #weights: Weights;
  readonly #x: Float64Array;
  readonly #y: Float64Array;
  /** Rows by corner, columns by weights: the most that a sum may be there. */
  readonly #most: Float64Array;
  /** The corner that was reached last time. */
  #witness = 0;

  constructor(ladder: Ladder, region: Region, weights: Weights) {
    const { size, cost, penalty } = weights;
    this.least = new Float64Array(size);
    this.#weights = weights;
    this.#x = region.x;
    this.#y = region.y;
    this.#most = new Float64Array(region.x.length * size);
    for (let t = 0; t < size; t++) {
      const slack = slackOf(ladder, weights, t);
      for (let corner = 0; corner < region.x.length; corner++) {
        const x = region.x[corner] as number;
        const y = region.y[corner] as number;
        this.#most[corner * size + t] = (cost[t] as number) * x + (penalty[t] as number) * y + slack;
      }
    }
  }

  /** True when no completion of a label can lie in the region. `cost`: with the lots' credit taken off. */
  hopeless(toGo: Float64Array, node: number, cost: number, penalty: number, count: number): boolean {
    const weights = this.#weights;
    const row = node * weights.size;
    const least = this.least;
    for (let t = 0; t < weights.size; t++) {
      least[t] =
        (weights.cost[t] as number) * cost +
        (weights.penalty[t] as number) * penalty +
        (weights.count[t] as number) * count +
        (toGo[row + t] as number);
    }
    return this.empty();
  }

  /** True when a whole bag lies in the region. */
  holds(cost: number, penalty: number): boolean {
    return this.#x.some((x, i) => x >= cost && (this.#y[i] as number) >= penalty);
  }

  /** True when no corner of the region reaches all the sums in `least`. */
  empty(): boolean {
    const x = this.#x;
    const y = this.#y;
    const cost = this.least[0] as number;
    const penalty = this.least[1] as number;
    const witness = this.#witness;
    if ((x[witness] as number) >= cost && (y[witness] as number) >= penalty && this.#reaches(witness)) {
      return false;
    }
    let lo = 0;
    let hi = x.length;
    while (lo < hi) {
      const middle = (lo + hi) >> 1;
      if ((x[middle] as number) < cost) lo = middle + 1;
      else hi = middle;
    }
    for (; lo < x.length && (y[lo] as number) >= penalty; lo++) {
      if (this.#reaches(lo)) {
        this.#witness = lo;
        return false;
      }
    }
    return true;
  }

  #reaches(corner: number): boolean {
    const least = this.least;
    const most = this.#most;
    const size = least.length;
    const row = corner * size;
    for (let t = PURES; t < size; t++) {
      if ((most[row + t] as number) < (least[t] as number)) return false;
    }
    return true;
  }
}

/** A full bag's weight of count, and what rounding may have added. */
const slackOf = (ladder: Ladder, { cost, penalty, count }: Weights, t: number): number => {
  const full = (count[t] as number) * ladder.limit;
  const { largest } = ladder;
  const total = (cost[t] as number) * largest.money + (penalty[t] as number) * largest.penalty + full;
  return full + ROUNDING * total;
};
