import type { Item } from '../instance.ts';
import type { Ladder } from '../model/ladder.ts';
import { bandFor, excusedPairs, pairPenalty } from '../model/penalty.ts';

/**
 * The neighbours that a run may try. Nodes 0 to n-1 are the ladder's positions; node n+j stands for position
 * j as the longest club, where that has limits of its own (`Ladder.leads`). The arcs of node v are
 * `head[v]` to `head[v + 1] - 1`: `to` is the position that follows, `penalty` that of the pair.
 */
export type Arcs = {
  head: Int32Array;
  to: Int32Array;
  penalty: Float64Array;
  /** 1: the position may be the longest club. */
  start: Uint8Array;
  /** The positions that an arc or a start leads to, rising. */
  positions: Int32Array;
};

/** Rules out pairs before their arcs are made. */
export type Screen = {
  /** By position: the most penalty that a pair with it may have. */
  most: Float64Array;
  allows: (position: number, next: number, penalty: number) => boolean;
};

/** Position of a node's club. */
export const positionOf = (node: number, n: number): number => (node < n ? node : node - n);

/** Arcs as they are made, node by node. */
class ArcTable {
  readonly #head: Int32Array;
  #to: Int32Array;
  #penalty: Float64Array;
  #size = 0;

  constructor(nodes: number, room: number) {
    this.#head = new Int32Array(nodes + 1);
    this.#to = new Int32Array(room);
    this.#penalty = new Float64Array(room);
  }

  begin(node: number): void {
    this.#head[node] = this.#size;
  }

  add(to: number, penalty: number): void {
    if (this.#size === this.#to.length) {
      const [olderTo, olderPenalty] = [this.#to, this.#penalty];
      this.#to = new Int32Array(2 * this.#size + 1);
      this.#to.set(olderTo);
      this.#penalty = new Float64Array(2 * this.#size + 1);
      this.#penalty.set(olderPenalty);
    }
    this.#to[this.#size] = to;
    this.#penalty[this.#size++] = penalty;
  }

  end(start: Uint8Array): Arcs {
    this.#head[this.#head.length - 1] = this.#size;
    const to = this.#to.subarray(0, this.#size);
    const reached = start.slice();
    for (const i of to) reached[i] = 1;
    const positions = risingOnes(reached);
    return { head: this.#head, to, penalty: this.#penalty.subarray(0, this.#size), start, positions };
  }
}

const risingOnes = (flags: Uint8Array): Int32Array => {
  const ones = new Int32Array(flags.length);
  let size = 0;
  for (let i = 0; i < flags.length; i++) if (flags[i] === 1) ones[size++] = i;
  return ones.subarray(0, size);
};

/** Arcs that there is room for at first. */
const FIRST_ROOM = 4096;

/** All pairs of allowed positions (1) that the screen lets pass. No locked club is passed over. */
export const tabulateArcs = (ladder: Ladder, allowed: Uint8Array, screen: Screen | null): Arcs => {
  const { clubs, nextLocked, leads, top } = ladder;
  const n = clubs.length;
  const positions = risingOnes(allowed);
  const start = allowed.map((a, i) => {
    const passes = screen === null || (top[i] as number) <= (screen.most[i] as number);
    return a === 1 && i <= (nextLocked[0] as number) && passes ? 1 : 0;
  });
  const { excused } = ladder.instance;
  const isExcused = excusedPairs(excused);
  const longers = new Set(excused.map(([longer]) => longer));
  const table = new ArcTable(2 * n, FIRST_ROOM);
  for (let v = 0; v < 2 * n; v++) {
    table.begin(v);
    const j = positionOf(v, n);
    if (allowed[j] === 0 || (v >= n && (leads[j] === 0 || start[j] === 0))) continue;
    const plain = v < n && !longers.has((clubs[j] as Item).id);
    if (plain) addPlainRow(ladder, positions, j, screen, table);
    else addRow(ladder, positions, v, isExcused, screen, table);
  }
  return table.end(start);
};

/** `pairPenalty` of a whole row at once, when no pair in it is excused or led by limits of its own. */
const addPlainRow = (
  ladder: Ladder,
  positions: Int32Array,
  j: number,
  screen: Screen | null,
  table: ArcTable,
): void => {
  const { carryDy } = ladder;
  const longerDy = carryDy[j] as number;
  const last = ladder.nextLocked[j + 1] as number;
  const most = screen === null ? Infinity : (screen.most[j] as number);
  const band = bandFor(ladder.instance.bands, longerDy);
  const { wideDy, crowdedDy, wideWeight, crowdWeight } = band ?? NO_BAND;
  for (let p = firstAbove(positions, j); p < positions.length; p++) {
    const i = positions[p] as number;
    if (i > last) return;
    const gapDy = longerDy - (carryDy[i] as number);
    let penalty = 0;
    if (gapDy > wideDy) {
      penalty = wideWeight * (gapDy - wideDy);
      // All that follow are farther still.
      if (penalty > most) return;
    }
    if (gapDy < crowdedDy) penalty += crowdWeight * (crowdedDy - gapDy);
    if (screen === null || screen.allows(j, i, penalty)) table.add(i, penalty);
  }
};

const NO_BAND = { wideDy: 0, crowdedDy: 0, wideWeight: 0, crowdWeight: 0 };

const addRow = (
  ladder: Ladder,
  positions: Int32Array,
  v: number,
  isExcused: (longer: string, shorter: string) => boolean,
  screen: Screen | null,
  table: ArcTable,
): void => {
  const { clubs, instance } = ladder;
  const n = clubs.length;
  const j = positionOf(v, n);
  const longer = clubs[j] as Item;
  const last = ladder.nextLocked[j + 1] as number;
  for (let p = firstAbove(positions, j); p < positions.length; p++) {
    const i = positions[p] as number;
    if (i > last) return;
    const shorter = clubs[i] as Item;
    const free = isExcused(longer.id, shorter.id);
    const penalty = free ? 0 : pairPenalty(instance, longer, shorter, v >= n);
    if (screen === null || screen.allows(j, i, penalty)) table.add(i, penalty);
  }
};

/** Index of the first entry above `value`. */
const firstAbove = (rising: Int32Array, value: number): number => {
  let lo = 0;
  let hi = rising.length;
  while (lo < hi) {
    const middle = (lo + hi) >> 1;
    if ((rising[middle] as number) > value) hi = middle;
    else lo = middle + 1;
  }
  return lo;
};

/** The arcs that `wanted` lets pass. */
export const filterArcs = (
  arcs: Arcs,
  start: Uint8Array,
  wanted: (node: number, position: number, penalty: number) => boolean,
): Arcs => {
  const nodes = arcs.head.length - 1;
  const table = new ArcTable(nodes, Math.min(arcs.to.length, FIRST_ROOM));
  for (let v = 0; v < nodes; v++) {
    table.begin(v);
    for (let a = arcs.head[v] as number; a < (arcs.head[v + 1] as number); a++) {
      const i = arcs.to[a] as number;
      const penalty = arcs.penalty[a] as number;
      if (wanted(v, i, penalty)) table.add(i, penalty);
    }
  }
  return table.end(start);
};

/** The arcs between allowed positions. */
export const barArcs = (arcs: Arcs, allowed: Uint8Array): Arcs => {
  const n = allowed.length;
  const start = arcs.start.map((s, i) => (allowed[i] === 1 ? s : 0));
  return filterArcs(arcs, start, (v, i) => allowed[positionOf(v, n)] === 1 && allowed[i] === 1);
};
