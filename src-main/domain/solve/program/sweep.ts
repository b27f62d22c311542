import type { Labels } from './labels.ts';
import type { LotStates } from './lot-states.ts';
import { sortLabels } from './sort-labels.ts';

/** Labels at one node that there is room for at first. */
const FIRST_LIST = 256;

/**
 * Keeps, of the labels waiting at one node, those that no other betters (README, "Dominance").
 * One object serves all nodes of a run: its tables are reused.
 */
export class Sweep {
  readonly #labels: Labels;
  readonly #lots: LotStates;
  readonly #width: number;
  #list = new Int32Array(FIRST_LIST);
  /** Slots: the lot states met at this node. */
  readonly #states: number[] = [];
  readonly #slotOf: number[] = [];
  /** By slot and count: least penalty of kept labels with at most that count, and the least cost with it. */
  #least: Float64Array;
  #leastAt: Float64Array;

  constructor(labels: Labels, lots: LotStates, limit: number) {
    this.#labels = labels;
    this.#lots = lots;
    this.#width = limit + 1;
    this.#least = new Float64Array(this.#width * 8);
    this.#leastAt = new Float64Array(this.#width * 8);
  }

  /** The labels of a linked list (`Labels.next`), sorted; valid until the next call. */
  sorted(first: number): Int32Array {
    let size = 0;
    for (let l = first; l >= 0; l = this.#labels.next[l] as number) {
      if (size === this.#list.length) {
        const wider = new Int32Array(size * 2);
        wider.set(this.#list);
        this.#list = wider;
      }
      this.#list[size++] = l;
    }
    sortLabels(this.#labels, this.#list, 0, size - 1);
    return this.#list.subarray(0, size);
  }

  /** Of the labels of a linked list those that no other betters, sorted; valid until the next call. */
  keep(first: number): Int32Array {
    const list = this.sorted(first);
    if (list.length < 2) return list;
    for (const state of this.#states) this.#slotOf[state] = -1;
    this.#states.length = 0;
    let kept = 0;
    for (const label of list) {
      const slot = this.#slot(this.#labels.state[label] as number);
      if (this.#bettered(list, kept, label, slot)) continue;
      list[kept++] = label;
      this.#note(label, slot);
    }
    return list.subarray(0, kept);
  }

  #slot(state: number): number {
    const known = this.#slotOf[state];
    if (known !== undefined && known >= 0) return known;
    const slot = this.#states.length;
    this.#states.push(state);
    for (let s = this.#slotOf.length; s <= state; s++) this.#slotOf.push(-1);
    this.#slotOf[state] = slot;
    if ((slot + 1) * this.#width > this.#least.length) {
      this.#least = doubled(this.#least);
      this.#leastAt = doubled(this.#leastAt);
    }
    this.#least.fill(Infinity, slot * this.#width, (slot + 1) * this.#width);
    return slot;
  }

  #note(label: number, slot: number): void {
    const penalty = this.#labels.penalty[label] as number;
    const end = (slot + 1) * this.#width;
    for (let k = slot * this.#width + (this.#labels.count[label] as number); k < end; k++) {
      if (penalty >= (this.#least[k] as number)) break;
      this.#least[k] = penalty;
      this.#leastAt[k] = this.#labels.cost[label] as number;
    }
  }

  #bettered(list: Int32Array, kept: number, label: number, slot: number): boolean {
    const { cost, penalty, count } = this.#labels;
    const k = count[label] as number;
    const least = this.#least[slot * this.#width + k] as number;
    const own = penalty[label] as number;
    if (least < own) return true;
    if (least === own) {
      if ((this.#leastAt[slot * this.#width + k] as number) < (cost[label] as number)) return true;
      if (this.#tied(list, kept, label)) return true;
    }
    for (let other = 0; other < this.#states.length; other++) {
      if (other === slot || (this.#least[other * this.#width + k] as number) > own) continue;
      if (this.#betteredFrom(list, kept, label, this.#states[other] as number)) return true;
    }
    return false;
  }

  /** Among kept labels of the same state, cost and penalty: one that wins, or loses its place to this one. */
  #tied(list: Int32Array, kept: number, label: number): boolean {
    const { cost, penalty, count, changes, purchases, state } = this.#labels;
    for (let i = kept - 1; i >= 0; i--) {
      const a = list[i] as number;
      if (cost[a] !== cost[label] || penalty[a] !== penalty[label]) return false;
      if (state[a] !== state[label] || (count[a] as number) > (count[label] as number)) continue;
      // Sorted: `a` has no more changes, nor more purchases for equal changes.
      if (changes[a] !== changes[label] || purchases[a] !== purchases[label]) return true;
      // With equal counts, whatever follows leaves the order of the ids as it is; with others it may not.
      if (count[a] !== count[label]) continue;
      if (this.#labels.compareIds(label, a) < 0) list[i] = label;
      return true;
    }
    return false;
  }

  /** A kept label of another lot state that is better even if it still has to pay for all that it lacks. */
  #betteredFrom(list: Int32Array, kept: number, label: number, from: number): boolean {
    const { cost, penalty, count, changes, purchases, state } = this.#labels;
    const to = state[label] as number;
    const owed = this.#lots.owed(from, to);
    const opened = this.#lots.opened(from, to);
    const most = (cost[label] as number) - owed;
    for (let i = 0; i < kept; i++) {
      const a = list[i] as number;
      if ((cost[a] as number) > most) return false;
      if (state[a] !== from || (count[a] as number) > (count[label] as number)) continue;
      if ((penalty[a] as number) > (penalty[label] as number)) continue;
      if ((cost[a] as number) < most || (penalty[a] as number) < (penalty[label] as number)) return true;
      const more = (changes[a] as number) + opened - (changes[label] as number);
      if (more < 0 || (more === 0 && (purchases[a] as number) + opened < (purchases[label] as number)))
        return true;
    }
    return false;
  }
}

const doubled = (old: Float64Array): Float64Array => {
  const grown = new Float64Array(old.length * 2);
  grown.set(old);
  return grown;
};
