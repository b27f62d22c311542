import { compareLists } from '../model/order.ts';

/** Labels in the first columns, which double when full: enough for most runs. */
const FIRST_SIZE = 4096;

/** Partial bags, as growing columns: everything that a label carries, and the label it came from. */
export class Labels {
  size = 0;
  cost = new Float64Array(FIRST_SIZE);
  penalty = new Float64Array(FIRST_SIZE);
  count = new Int32Array(FIRST_SIZE);
  changes = new Int32Array(FIRST_SIZE);
  purchases = new Int32Array(FIRST_SIZE);
  /** Of the lots (`LotStates`). */
  state = new Int32Array(FIRST_SIZE);
  /** Rank of the id of the club kept last; -1: none. */
  rank = new Int32Array(FIRST_SIZE);
  /** The label before that club; -1: none. */
  parent = new Int32Array(FIRST_SIZE);
  /** Next label waiting at the same node; -1: none. */
  next = new Int32Array(FIRST_SIZE);

  /** A new label, to be filled by the caller. */
  add(): number {
    if (this.size === this.cost.length) this.#grow();
    return this.size++;
  }

  #grow(): void {
    this.cost = grown(this.cost);
    this.penalty = grown(this.penalty);
    this.count = grown(this.count);
    this.changes = grown(this.changes);
    this.purchases = grown(this.purchases);
    this.state = grown(this.state);
    this.rank = grown(this.rank);
    this.parent = grown(this.parent);
    this.next = grown(this.next);
  }

  /** Ranks of the ids kept so far, rising. */
  ranks(label: number): Int32Array {
    const ranks: number[] = [];
    for (let l = label; l >= 0; l = this.parent[l] as number) {
      const rank = this.rank[l] as number;
      if (rank >= 0) ranks.push(rank);
    }
    return Int32Array.from(ranks).sort();
  }

  /** Order of two labels' sorted ids, a list that ends first coming first. */
  compareIds(a: number, b: number): number {
    return compareLists(this.ranks(a), this.ranks(b), (x, y) => x - y);
  }
}

const grown = <T extends Float64Array<ArrayBuffer> | Int32Array<ArrayBuffer>>(old: T): T => {
  const wider = new (old.constructor as new (size: number) => T)(old.length * 2);
  wider.set(old);
  return wider;
};
