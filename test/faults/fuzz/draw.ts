import { mulberry32 } from '../../support/random.ts';

/** Seeded chance: the same seed and number, the same case. */
export class Draw {
  readonly #next: () => number;
  /** The input that was made of it, for whoever tells of a crash or a hang. */
  input: unknown = '';
  constructor(seed: number) {
    this.#next = mulberry32(seed);
  }
  /** In [0, 1). */
  next(): number {
    return this.#next();
  }
  /** A whole number from 0 to below n. */
  below(n: number): number {
    return Math.floor(this.#next() * n);
  }
  between(low: number, high: number): number {
    return low + this.below(high - low + 1);
  }
  chance(probability: number): boolean {
    return this.#next() < probability;
  }
  /** @throws for an empty list. */
  pick<T>(list: readonly T[]): T {
    if (list.length === 0) throw new Error('nothing to pick from');
    return list[this.below(list.length)] as T;
  }
  /** Notes the input. @returns it. */
  gives<T>(input: T): T {
    this.input = input;
    return input;
  }
  /** Small mostly, large now and then. */
  size(most: number): number {
    return Math.floor(this.#next() ** 3 * (most + 1));
  }
}
