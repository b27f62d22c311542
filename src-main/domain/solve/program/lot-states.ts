import { shareOf, type StatefulLot } from '../model/lots.ts';

/**
 * What follows from keeping the club at a position, by position, for labels of one state.
 * `after` is -1 where it has not been asked yet.
 */
export type Steps = {
  after: Int32Array;
  /** Price of the lot that this opens, and 1 when it does. */
  price: Float64Array;
  opens: Uint8Array;
  /**
   * How much the label's cost may then overstate what the bounds count for its lots (`shareOf`): open
   * candidate lots' members ahead, and members left out so far of owned lots of which none is kept.
   */
  credit: Float64Array;
};

const bit = (l: number): bigint => 1n << BigInt(l);

/**
 * What a label must remember of its lots, as small numbers: a state is the set of lots, with members still
 * ahead, of which a member has been kept. State 0 is the empty set. Sets are whole numbers of any size, so
 * that no count of lots is too large; every table is filled when first asked.
 */
export class LotStates {
  readonly #lots: readonly StatefulLot[];
  readonly #lotAt: Int32Array;
  readonly #sets: bigint[] = [0n];
  readonly #idOf = new Map<bigint, number>([[0n, 0]]);
  readonly #steps: Steps[] = [];
  readonly #owed: number[][] = [];
  readonly #opened: number[][] = [];
  /** Owned lots, and [i] the number of them whose last member is before position i. */
  readonly #owned: number[];
  readonly endings: Int32Array;

  /** @param lotAt index into `lots` of the club at each position; -1: none */
  constructor(lots: readonly StatefulLot[], lotAt: Int32Array) {
    this.#lots = lots;
    this.#lotAt = lotAt;
    this.#owned = [...lots.keys()].filter((l) => lots[l]?.candidate === false);
    this.endings = new Int32Array(lotAt.length + 1);
    for (const l of this.#owned) {
      for (let i = this.#lot(l).last + 1; i <= lotAt.length; i++)
        this.endings[i] = (this.endings[i] as number) + 1;
    }
  }

  #lot(l: number): StatefulLot {
    return this.#lots[l] as StatefulLot;
  }

  #intern(set: bigint): number {
    const known = this.#idOf.get(set);
    if (known !== undefined) return known;
    this.#sets.push(set);
    this.#idOf.set(set, this.#sets.length - 1);
    return this.#sets.length - 1;
  }

  /** Drops the lots without a member from `position` on. */
  #alive(set: bigint, position: number): bigint {
    return this.#lots.reduce((left, lot, l) => (lot.last < position ? left & ~bit(l) : left), set);
  }

  /** The state of a set of lots before any position is decided. */
  first(kept: readonly number[]): number {
    return this.#intern(
      this.#alive(
        kept.reduce((set, l) => set | bit(l), 0n),
        0,
      ),
    );
  }

  steps(state: number): Steps {
    const known = this.#steps[state];
    if (known !== undefined) return known;
    const n = this.#lotAt.length;
    const steps: Steps = {
      after: new Int32Array(n).fill(-1),
      price: new Float64Array(n),
      opens: new Uint8Array(n),
      credit: new Float64Array(n),
    };
    this.#steps[state] = steps;
    return steps;
  }

  /** Fills one position of a state's steps. */
  fill(state: number, position: number): void {
    const steps = this.steps(state);
    const set = this.#sets[state] as bigint;
    const l = this.#lotAt[position] as number;
    const kept = l < 0 ? set : set | bit(l);
    if (l >= 0 && this.#lot(l).candidate && kept !== set) {
      steps.opens[position] = 1;
      steps.price[position] = this.#lot(l).price;
    }
    const alive = this.#alive(kept, position + 1);
    steps.credit[position] = this.#credit(alive, position);
    steps.after[position] = this.#intern(alive);
  }

  #credit(set: bigint, position: number): number {
    let credit = 0;
    this.#lots.forEach((lot, l) => {
      const kept = (set & bit(l)) !== 0n;
      if (lot.last <= position || lot.candidate !== kept) return;
      const members = lot.at.filter((p) => (lot.candidate ? p > position : p <= position)).length;
      credit += members * shareOf(lot);
    });
    return credit;
  }

  /** Cost of the owned lots that end between two positions, both excluded, when none of them is kept. */
  leftOut(state: number, from: number, to: number): number {
    const set = this.#sets[state] as bigint;
    let cost = 0;
    for (const l of this.#owned) {
      const { last, gain } = this.#lot(l);
      if (last > from && last < to && (set & bit(l)) === 0n) cost -= gain;
    }
    return cost;
  }

  /**
   * The most that a bag of state `a` may come to pay more than one of state `b` for the same clubs to come:
   * prices of the lots that only b has opened, resale that only one of them can still be given.
   */
  owed(a: number, b: number): number {
    this.#compare(a, b);
    return (this.#owed[a] as number[])[b] as number;
  }

  /** Candidate lots that b has opened and a has not: purchases that only a may still make. */
  opened(a: number, b: number): number {
    this.#compare(a, b);
    return (this.#opened[a] as number[])[b] as number;
  }

  #compare(a: number, b: number): void {
    const owed = (this.#owed[a] ??= []);
    const opened = (this.#opened[a] ??= []);
    if (owed[b] !== undefined) return;
    let sum = 0;
    let count = 0;
    this.#lots.forEach((lot, l) => {
      const inA = ((this.#sets[a] as bigint) & bit(l)) !== 0n;
      const inB = ((this.#sets[b] as bigint) & bit(l)) !== 0n;
      if (inA === inB) return;
      if (!lot.candidate) sum += Math.max(0, inA ? lot.gain : -lot.gain);
      else if (inB) {
        sum += lot.price;
        count++;
      }
    });
    owed[b] = sum;
    opened[b] = count;
  }
}
