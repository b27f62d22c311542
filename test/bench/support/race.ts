import type { Instance, Point } from '../../../src-main/domain/solve/index.ts';
import { highs, openOracle, type Oracle, type OracleBag } from '../../reference/solve/highs/oracle.ts';
import { processorMsSince, rank, type BenchResult } from './report.ts';

/**
 * HiGHS against the solver on one question: each answers the same instances in the same run, and the answers must
 * agree. Ratios are of processor time, which a busy machine lengthens less than the clock's. In HiGHS' favour: writing
 * its programme down and loading it is left out, and when its time is up the solver's whole curve is set against the
 * part that HiGHS had by then.
 */
export type Race = {
  instances: readonly Instance[];
  /** The solver's answer; the mean time of several laps is taken. */
  ours: (instance: Instance) => Point[];
  /** HiGHS' answer, point by point. */
  theirs: (oracle: Oracle) => Iterable<OracleBag>;
  /** HiGHS is stopped after this long by the clock, between two points: on one instance, and on all. */
  mostMs: { each: number; all: number };
};

const LEAST_LAPS = 3;
const LEAST_MS = 20;

const value = ({ cost, penalty, changes }: Point | OracleBag): string => `${cost}/${penalty}/${changes}`;

export async function race({
  instances,
  ours,
  theirs,
  mostMs,
}: Race): Promise<Required<Pick<BenchResult, 'ratioToHighs' | 'highs'>>> {
  const solver = await highs();
  const ratios: number[] = [];
  const times: number[] = [];
  let points = 0;
  let atLeast = false;
  let spentMs = 0;
  for (const instance of instances) {
    if (spentMs > mostMs.all) break;
    let curve: Point[] = [];
    let laps = 0;
    const oursFrom = process.cpuUsage();
    while (laps < LEAST_LAPS || processorMsSince(oursFrom) < LEAST_MS) {
      curve = ours(instance);
      laps += 1;
    }
    const oursMs = processorMsSince(oursFrom) / laps;
    const oracle = openOracle(solver, instance);
    const found: OracleBag[] = [];
    const start = performance.now();
    const theirsFrom = process.cpuUsage();
    let isStopped = false;
    for (const bag of theirs(oracle)) {
      found.push(bag);
      isStopped = performance.now() - start > mostMs.each;
      if (isStopped) break;
    }
    const theirsMs = processorMsSince(theirsFrom);
    spentMs += performance.now() - start;
    oracle.close();
    if (isStopped && found.length < curve.length) atLeast = true;
    const agreed = (isStopped ? curve.slice(0, found.length) : curve).map(value).join(' ');
    const told = found.map(value).join(' ');
    if (agreed !== told) throw new Error(`The solver says "${agreed}" and HiGHS "${told}".`);
    ratios.push(theirsMs / oursMs);
    times.push(theirsMs);
    points += found.length;
  }
  ratios.sort((a, b) => a - b);
  times.sort((a, b) => a - b);
  return {
    ratioToHighs: Math.round(rank(ratios, 0.5)),
    highs: {
      instances: ratios.length,
      points,
      medianMs: Math.round(rank(times, 0.5)),
      from: Math.round(rank(ratios, 0)),
      to: Math.round(rank(ratios, 1)),
      atLeast,
    },
  };
}
