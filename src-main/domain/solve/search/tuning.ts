/**
 * Sizes that make a search quick or slow, and never change its answer (test/reference/solve runs with
 * others). Measured with test/bench/solve.ts on bags of 14 and up to 300 items.
 */
export type Tuning = {
  /** With fewer arcs, a run is quicker than another decision about a lot. */
  fewArcs: number;
  /** Branches of one exploration that may divide; beyond, labels remember the open lots instead. */
  mostBranches: number;
  /** With more arcs, a few weights first leave less work for all of them. */
  manyArcs: number;
  /** With more arcs, runs over so many candidates first leave less for the whole. */
  manyToRun: number;
  parts: readonly number[];
  /** Candidates in the first two parts of a search; the second is left out with fewer arcs than that. */
  firstPart: number;
  secondPart: number;
  manyForSecond: number;
};

export const TUNING: Tuning = {
  fewArcs: 64,
  mostBranches: 200,
  manyArcs: 4000,
  manyToRun: 400,
  parts: [24, 72],
  firstPart: 16,
  secondPart: 48,
  manyForSecond: 500,
};
