import type { ModelData } from 'highs';
import type { Instance, Item } from '../../../../src-main/domain/solve/instance.ts';
import {
  bottomPenaltyOf,
  isPutter,
  ladderOrder,
  ownPenaltyOf,
  pairPenaltyOf,
  topPenaltyOf,
} from './judge.ts';

/**
 * DESIGN §8 as an integer programme: the ladder is a path through the clubs by carry, found by flow.
 *
 * Columns: one binary for each item (it is in the bag) and each lot (a candidate lot is bought, an owned one is sold
 * whole); then a flow in [0, 1] for each arc: source → first club, club → next club, last club → sink. One unit flows,
 * and a ladder club passes on exactly its binary's worth, so for whole binaries the flow is the one path through all
 * clubs chosen and needs no integrality of its own.
 *
 * A driver that may be first gets a second node that only the source feeds: its arcs cost by the first pair's limit.
 */
export type Measure = 'cost' | 'penalty' | 'changes' | 'purchases';

export const MEASURES: readonly Measure[] = ['cost', 'penalty', 'changes', 'purchases'];

export type Formulation = {
  data: ModelData;
  /** Column of each item and lot by id. */
  columnOf: ReadonlyMap<string, number>;
  /** Row that holds each measure less its constant. */
  rowOf: Record<Measure, number>;
  /** Coefficients of each measure by column, and its constant. */
  objective: Record<Measure, Float64Array>;
  constant: Record<Measure, number>;
  /** Upper bounds of the columns, lots and items first. */
  upper: Float64Array;
  lower: Float64Array;
};

type Row = { columns: number[]; values: number[]; lower: number; upper: number };
type Arc = { penalty: number };

const MOST = Number.POSITIVE_INFINITY;

export function formulate(instance: Instance): Formulation {
  const { items, lots, basis } = instance;
  const columnOf = new Map([...items, ...lots].map(({ id }, column) => [id, column]));
  const column = (id: string): number => {
    const found = columnOf.get(id);
    if (found === undefined) throw new Error(`The formulation has no column for ${id}.`);
    return found;
  };
  const binaries = items.length + lots.length;
  const arcs: Arc[] = [];
  const addArc = (penalty: number): number => binaries + arcs.push({ penalty }) - 1;
  const rows: Row[] = [];
  const addRow = (entries: [number, number][], lower: number, upper: number): number =>
    rows.push({ columns: entries.map(([c]) => c), values: entries.map(([, v]) => v), lower, upper }) - 1;

  addPath(instance, column, addArc, addRow);
  addRow(
    items.map(({ id }) => [column(id), 1]),
    0,
    instance.limit,
  );
  const putters = items.filter(isPutter);
  const ownsPutter = putters.some(({ origin }) => origin === 'owned');
  addRow(
    putters.map(({ id }) => [column(id), 1]),
    ownsPutter ? 1 : 0,
    1,
  );
  for (const lot of lots) addLot(lot.id, lot.origin === 'candidate', items, column, addRow);

  const columns = binaries + arcs.length;
  const zeros = (): Float64Array => new Float64Array(columns);
  const objective = { cost: zeros(), penalty: zeros(), changes: zeros(), purchases: zeros() };
  const constant = { cost: 0, penalty: 0, changes: 0, purchases: 0 };
  const add = (measure: Measure, at: number, value: number): void => {
    objective[measure][at] = (objective[measure][at] ?? 0) + value;
  };
  arcs.forEach(({ penalty }, i) => {
    add('penalty', binaries + i, penalty);
  });
  for (const item of items) {
    const at = column(item.id);
    add('penalty', at, ownPenaltyOf(instance, item));
    if (item.origin === 'owned') {
      // Left out: one change, and its resale back.
      constant.changes += 1;
      add('changes', at, -1);
      if (basis === 'net') {
        constant.cost -= item.resale;
        add('cost', at, item.resale);
      }
    } else if (item.lot === null) {
      add('cost', at, item.price);
      add('changes', at, 1);
      add('purchases', at, 1);
    }
  }
  for (const lot of lots) {
    const at = column(lot.id);
    if (lot.origin === 'candidate') {
      add('cost', at, lot.price);
      add('changes', at, 1);
      add('purchases', at, 1);
    } else if (basis === 'net') {
      // Sold whole: the lot's resale in place of its members' own.
      const apart = items.filter((item) => item.lot === lot.id).reduce((sum, item) => sum + item.resale, 0);
      add('cost', at, apart - lot.resale);
    }
  }
  const rowOf = { cost: 0, penalty: 0, changes: 0, purchases: 0 };
  for (const measure of MEASURES) {
    const entries: [number, number][] = [];
    objective[measure].forEach((value, at) => {
      if (value !== 0) entries.push([at, value]);
    });
    rowOf[measure] = addRow(entries, -MOST, MOST);
  }

  const upper = new Float64Array(columns).fill(1);
  const lower = new Float64Array(columns);
  for (const item of items) if (item.locked) lower[column(item.id)] = 1;
  const integrality = new Int32Array(columns);
  integrality.fill(1, 0, binaries);
  const data: ModelData = {
    numCols: columns,
    numRows: rows.length,
    colCost: zeros(),
    colLower: lower,
    colUpper: upper,
    rowLower: rows.map((row) => row.lower),
    rowUpper: rows.map((row) => row.upper),
    matrix: sparse(rows, columns),
    integrality,
  };
  return { data, columnOf, rowOf, objective, constant, upper, lower };
}

/** Flow conservation over the carry-sorted ladder. */
function addPath(
  instance: Instance,
  column: (id: string) => number,
  addArc: (penalty: number) => number,
  addRow: (entries: [number, number][], lower: number, upper: number) => number,
): void {
  const ladder = instance.items.filter((item) => !isPutter(item)).sort(ladderOrder);
  const into = ladder.map((): number[] => []);
  const outOf = ladder.map((): number[] => []);
  const starts: number[] = [];
  // A locked club cannot be passed over: no arc may reach beyond the next one.
  const reach = ladder.map((_, i) => {
    const next = ladder.findIndex((item, j) => j > i && item.locked);
    return next < 0 ? ladder.length - 1 : next;
  });
  const firstLocked = ladder.findIndex((item) => item.locked);
  const lastLocked = ladder.findLastIndex((item) => item.locked);
  ladder.forEach((item, i) => {
    const mayBeFirst = firstLocked < 0 || i <= firstLocked;
    const mayBeLast = i >= lastLocked;
    const fromSource: number[] = [];
    if (mayBeFirst) {
      const start = addArc(topPenaltyOf(instance, item));
      starts.push(start);
      fromSource.push(start);
    }
    const afterFirst: number[] = [];
    const hasFirstNode = mayBeFirst && item.kind === 'driver' && instance.firstPair !== null;
    const end = (): number => addArc(bottomPenaltyOf(instance, item));
    if (hasFirstNode && mayBeLast) afterFirst.push(end());
    if (mayBeLast) outOf[i]?.push(end());
    for (let j = i + 1; j <= (reach[i] ?? -1); j += 1) {
      const next = ladder[j];
      if (!next) break;
      const arc = addArc(pairPenaltyOf(instance, item, next, false));
      outOf[i]?.push(arc);
      into[j]?.push(arc);
      if (!hasFirstNode) continue;
      const firstArc = addArc(pairPenaltyOf(instance, item, next, true));
      afterFirst.push(firstArc);
      into[j]?.push(firstArc);
    }
    const ins = into[i] ?? [];
    const outs = outOf[i] ?? [];
    if (hasFirstNode) addRow([...signed(fromSource, 1), ...signed(afterFirst, -1)], 0, 0);
    else ins.push(...fromSource);
    addRow([...signed(ins, 1), ...signed(outs, -1)], 0, 0);
    const all = hasFirstNode ? [...ins, ...fromSource] : ins;
    addRow([[column(item.id), 1], ...signed(all, -1)], 0, 0);
  });
  addRow(signed(starts, 1), 1, 1);
}

const signed = (columns: readonly number[], sign: 1 | -1): [number, number][] =>
  columns.map((column) => [column, sign]);

/** Ties a lot's binary to its members': bought if and only if one is in, sold whole if and only if all are out. */
function addLot(
  lot: string,
  isCandidate: boolean,
  items: readonly Item[],
  column: (id: string) => number,
  addRow: (entries: [number, number][], lower: number, upper: number) => number,
): void {
  const members = items.filter((item) => item.lot === lot).map((item) => column(item.id));
  const at = column(lot);
  const each = members.map((member): [number, number] => [member, 1]);
  if (isCandidate) {
    addRow([[at, -1], ...each], 0, MOST);
    for (const member of members)
      addRow(
        [
          [at, 1],
          [member, -1],
        ],
        0,
        MOST,
      );
  } else {
    addRow([[at, 1], ...each], 1, MOST);
    for (const member of members)
      addRow(
        [
          [at, 1],
          [member, 1],
        ],
        -MOST,
        1,
      );
  }
}

function sparse(rows: readonly Row[], columns: number): ModelData['matrix'] {
  const starts = [0];
  const indices: number[] = [];
  const values: number[] = [];
  for (const row of rows) {
    // HiGHS takes a row's entries once each, by column.
    const order = row.columns.map((_, k) => k).sort((a, b) => (row.columns[a] ?? 0) - (row.columns[b] ?? 0));
    for (const k of order) {
      indices.push(row.columns[k] ?? 0);
      values.push(row.values[k] ?? 0);
    }
    starts.push(indices.length);
  }
  return { format: 'csr', numRows: rows.length, numCols: columns, starts, indices, values };
}
