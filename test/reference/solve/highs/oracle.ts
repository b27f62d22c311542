import loadHighs, { type Highs } from 'highs';
import type { Instance } from '../../../../src-main/domain/solve/instance.ts';
import { formulate, MEASURES, type Measure } from './formulation.ts';
import { judge } from './judge.ts';

/**
 * The outside proof of DESIGN §8's answers: HiGHS (MIT, J. Hall and others, University of Edinburgh) on the integer
 * programme of `formulation.ts`. All figures are whole, so caps are set half a unit loose and a gap below one proves an
 * optimum; each answer is judged again in whole numbers.
 */
export type OracleBag = { items: string[] } & Record<Measure, number>;

export type Caps = Partial<Record<Measure, number>>;

export type Limits = { caps?: Caps; require?: readonly string[]; ban?: readonly string[] };

export type Oracle = {
  /** A bag of least `measure` within the limits; null when no bag is legal. */
  least: (measure: Measure, limits?: Limits) => OracleBag | null;
  /** A bag whose measures, in this order, are least one after the other. */
  leastInOrder: (measures: readonly Measure[], limits?: Limits) => OracleBag | null;
  /** How many programmes have been solved. */
  solves: () => number;
  close: () => void;
};

export type Tuning = Readonly<Record<string, string | number | boolean>>;

const OPTIONS: Tuning = {
  output_flag: false,
  mip_rel_gap: 0,
  // Every measure is whole: an incumbent within half a unit of the bound is the optimum.
  mip_abs_gap: 0.5,
  mip_feasibility_tolerance: 1e-8,
  primal_feasibility_tolerance: 1e-8,
  dual_feasibility_tolerance: 1e-8,
};

/*
 * Settings change the way to an optimum, never its value. Both were the fastest of five tried, for small programmes and
 * for large; the feasibility jump, on by default, costs more than it saves here at any size.
 */
const SMALL: Tuning = {
  presolve: 'off',
  mip_detect_symmetry: false,
  mip_heuristic_effort: 0,
  mip_heuristic_run_feasibility_jump: false,
};
const LARGE: Tuning = { mip_heuristic_run_feasibility_jump: false };
const SMALL_ITEMS = 20;

export const tuningFor = ({ items }: Instance): Tuning => (items.length > SMALL_ITEMS ? LARGE : SMALL);

let loading: Promise<Highs> | undefined;

/** One HiGHS for the whole process. */
export const highs = (): Promise<Highs> => (loading ??= loadHighs());

export function openOracle(solver: Highs, instance: Instance, tuning = tuningFor(instance)): Oracle {
  const { data, columnOf, rowOf, objective, constant, upper, lower } = formulate(instance);
  const model = solver.createModel(data);
  model.options.set({ ...OPTIONS, ...tuning });
  const { modelStatus } = solver.constants;
  const all = { kind: 'range', from: 0, to: data.numCols - 1 } as const;
  const binaries = instance.items.length + instance.lots.length;
  let solves = 0;

  const columnNamed = (id: string): number => {
    const at = columnOf.get(id);
    if (at === undefined) throw new Error(`The instance has no item or lot ${id}.`);
    return at;
  };

  const least = (measure: Measure, { caps = {}, require = [], ban = [] }: Limits = {}): OracleBag | null => {
    const most = Float64Array.from(upper);
    const fewest = Float64Array.from(lower);
    const penaltyCap = caps.penalty;
    if (penaltyCap !== undefined) {
      // An arc dearer than the cap is in no bag: this tightens the relaxation and loses nothing.
      for (let at = binaries; at < data.numCols; at += 1)
        if ((objective.penalty[at] ?? 0) > penaltyCap) most[at] = 0;
    }
    for (const id of ban) most[columnNamed(id)] = 0;
    for (const id of require) fewest[columnNamed(id)] = 1;
    if (fewest.some((value, at) => value > (most[at] ?? 0))) return null;
    model.changeColsBounds(all, fewest, most);
    for (const each of MEASURES) {
      const cap = caps[each];
      const bound = cap === undefined ? solver.infinity : cap - constant[each] + 0.5;
      model.changeRowBounds(rowOf[each], -solver.infinity, bound);
    }
    model.changeColsCost(all, objective[measure]);
    model.run();
    solves += 1;
    const status = model.getModelStatus();
    if (status === modelStatus.infeasible) return null;
    if (status !== modelStatus.optimal)
      throw new Error(`HiGHS ended with model status ${String(status)} on least ${measure}.`);
    const { colValue } = model.getSolution();
    const items = instance.items
      .filter((item) => (colValue[columnNamed(item.id)] ?? 0) > 0.5)
      .map((item) => item.id)
      .sort();
    const { faults, ...bag } = judge(instance, items);
    const value = model.getObjectiveValue() + constant[measure];
    const bound = Number(model.info.get('mip_dual_bound')) + constant[measure];
    const over = MEASURES.filter((each) => bag[each] > (caps[each] ?? bag[each]));
    // A pass needs status, value, bound and feasibility, as in HiGHS' own tests.
    if (
      faults.length > 0 ||
      over.length > 0 ||
      Math.abs(value - bag[measure]) > 0.25 ||
      bag[measure] - bound > 0.75
    )
      throw new Error(
        `HiGHS' answer on least ${measure} does not hold: ${JSON.stringify({ faults, over, value, bound, bag, items })}.`,
      );
    return { items, ...bag };
  };

  return {
    least,
    leastInOrder: (measures, limits = {}) => {
      let best: OracleBag | null = null;
      const caps = { ...limits.caps };
      for (const measure of measures) {
        const bag: OracleBag | null = least(measure, { ...limits, caps });
        if (!bag) return null;
        caps[measure] = bag[measure];
        best = bag;
      }
      return best;
    },
    solves: () => solves,
    close: () => {
      model.dispose();
    },
  };
}
