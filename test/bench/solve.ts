import { alternatives, type Alternative } from '../../src-main/domain/solve/alternatives.ts';
import {
  cheapestClean,
  frontier,
  MENDED,
  solve,
  type Instance,
  type Point,
} from '../../src-main/domain/solve/index.ts';
import type { Oracle, OracleBag } from '../reference/solve/highs/oracle.ts';
import { peakRssMb } from './memory.ts';
import { race, type Race } from './support/race.ts';
import { digest, spread, timeEach, timesOf, type BenchResult } from './support/report.ts';
import { realistic } from './support/solve-instances.ts';

const SIZES = [40, 120, 300] as const;
const FIRST = 1;
/** Seeds of the warm-up, apart from those that are timed. */
const WARM_FROM = 10_001;

type Amount = { timed: number; warm: number; alternatives: number; raced: number; raceMs: Race['mostMs'] };
const FULL: Amount = {
  timed: 200,
  warm: 20,
  alternatives: 40,
  raced: 6,
  raceMs: { each: 10_000, all: 30_000 },
};
const QUICK: Amount = { timed: 20, warm: 5, alternatives: 4, raced: 1, raceMs: { each: 4000, all: 4000 } };

const seeds = (from: number, count: number, items: number): Instance[] =>
  Array.from({ length: count }, (_, i) => realistic(from + i, items));

const values = (points: readonly (Point | null)[]) =>
  points.map((point) => point && [point.cost, point.penalty, point.changes, point.items]);

/** The curve by ε-constraint: least cost, then penalty, then changes, then one penalty less. */
function* curveByHighs(oracle: Oracle): Generator<OracleBag> {
  let caps = {};
  for (;;) {
    const bag = oracle.leastInOrder(['cost', 'penalty', 'changes'], { caps });
    if (!bag) return;
    yield bag;
    if (bag.penalty === 0) return;
    caps = { penalty: bag.penalty - 1 };
  }
}

function* cleanByHighs(oracle: Oracle): Generator<OracleBag> {
  const bag = oracle.leastInOrder(['cost', 'changes'], { caps: { penalty: 0 } });
  if (bag) yield bag;
}

/**
 * Goals (DESIGN §13), 300 items: curve median ≤ 10 ms, p95 ≤ 60, max ≤ 300, at least 300 × as fast as HiGHS; cheapest
 * clean p95 ≤ 25 ms, at least 30 × as fast; five alternatives p95 ≤ 600 ms.
 */
export async function benchSolve({ quick = false } = {}): Promise<BenchResult[]> {
  const amount = quick ? QUICK : FULL;
  const results: BenchResult[] = [];
  const bySize = SIZES.map((items) => ({ items, instances: seeds(FIRST, amount.timed, items) }));
  for (const { items, instances } of bySize) results.push(benchCurve(items, instances, amount));
  for (const { items, instances } of bySize) results.push(benchClean(items, instances, amount));
  results.push(benchAlternatives(amount));
  // HiGHS last: what it leaves in memory must not weigh on the solver's figures.
  for (const { items, instances } of bySize) {
    const raced = instances.slice(0, amount.raced);
    const common = { instances: raced, mostMs: amount.raceMs };
    Object.assign(
      named(results, `frontier-${String(items)}`),
      await race({ ...common, ours: frontier, theirs: curveByHighs }),
    );
    const ours = (instance: Instance): Point[] => [cheapestClean(instance)].filter((point) => point !== null);
    Object.assign(
      named(results, `cheapest-clean-${String(items)}`),
      await race({ ...common, ours, theirs: cleanByHighs }),
    );
  }
  return results;
}

function named(results: readonly BenchResult[], name: string): BenchResult {
  const found = results.find((result) => result.name === name);
  if (!found) throw new Error(`No bench is named ${name}.`);
  return found;
}

function benchCurve(items: number, instances: readonly Instance[], amount: Amount): BenchResult {
  for (const instance of seeds(WARM_FROM, amount.warm, items)) frontier(instance);
  const { times, answers } = timeEach(instances, (instance) => frontier(instance));
  return {
    name: `frontier-${String(items)}`,
    ...timesOf(times),
    inputs: [
      spread(
        'items',
        instances.map((instance) => instance.items.length),
      ),
      spread(
        'sets',
        instances.map((instance) => instance.lots.length),
      ),
      spread(
        'points on the curve',
        answers.map((curve) => curve.length),
      ),
    ].join(', '),
    peakRssMb: peakRssMb(FIRST + times.clockMs.indexOf(Math.max(...times.clockMs)), items),
    checksum: digest(answers.map(values)),
  };
}

function benchClean(items: number, instances: readonly Instance[], amount: Amount): BenchResult {
  for (const instance of seeds(WARM_FROM, amount.warm, items)) cheapestClean(instance);
  const { times, answers } = timeEach(instances, (instance) => cheapestClean(instance));
  const clean = answers.filter((point) => point !== null);
  return {
    name: `cheapest-clean-${String(items)}`,
    ...timesOf(times),
    inputs: `${String(clean.length)} of ${String(answers.length)} can be clean${
      clean.length === 0
        ? ''
        : `, ${spread(
            'changes',
            clean.map((point) => point.changes),
          )}`
    }`,
    checksum: digest(values(answers)),
  };
}

/** Five alternatives to the headline, asked for as a plan's are. */
function benchAlternatives(amount: Amount): BenchResult {
  const planned = seeds(FIRST, amount.alternatives, 300).flatMap((instance) => {
    const { headline: plan, frontier: curve } = solve(instance);
    return plan ? [{ instance, plan, curve }] : [];
  });
  const five = ({ instance, plan, curve }: (typeof planned)[number]): Alternative[] =>
    alternatives(instance, plan, { most: 5, penalty: Math.max(plan.penalty, MENDED), curve });
  const { times, answers } = timeEach(planned, five);
  return {
    name: 'alternatives-300',
    ...timesOf(times),
    inputs: `${spread(
      'alternatives',
      answers.map((found) => found.length),
    )}, ${spread(
      'with those like them',
      answers.map((found) => found.reduce((sum, one) => sum + 1 + one.similar.length, 0)),
    )}`,
    checksum: digest(answers.map((found) => values(found.map(({ point }) => point)))),
  };
}
