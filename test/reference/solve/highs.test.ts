import { beforeAll, describe, expect, it } from 'vitest';
import type { Highs } from 'highs';
import {
  bestWithinBudget,
  cheapestClean,
  evaluate,
  frontier,
  headline,
  solve,
  type Instance,
  type Point,
} from '../../../src-main/domain/solve/index.ts';
import { realistic } from '../../bench/support/solve-instances.ts';
import { mulberry32 } from '../../support/random.ts';
import * as answers from './highs/answers.ts';
import { Coverage } from './highs/coverage.ts';
import { mixedInstance } from './highs/instances.ts';
import { judge } from './highs/judge.ts';
import { highs, openOracle, type Oracle, type OracleBag } from './highs/oracle.ts';
import { tell } from '../../support/figures.ts';

/*
 * Source of every check here: HiGHS (an open mixed-integer solver by J. Hall and others, University of Edinburgh),
 * through an integer programme and an evaluator written from DESIGN §8's words, apart from the solver and its
 * brute-force checks. Values are compared; of bags with equal values, `firstById` decides.
 */

const INSTANCES = 400;
const CHUNK = 50;
const WALKS = 900;
const WALK_CHUNK = 150;

let solver: Highs;
const coverage = new Coverage();
let compared = 0;
let points = 0;
let tiesDecided = 0;
const walked = { priced: 0, priceless: 0, sets: 0 };

beforeAll(async () => {
  solver = await highs();
});

function withOracle<T>(instance: Instance, ask: (oracle: Oracle) => T): T {
  const oracle = openOracle(solver, instance);
  try {
    return ask(oracle);
  } finally {
    oracle.close();
  }
}

/** Numbers alone, so that two bags of one worth are equal. */
const worth = (bag: OracleBag | Point | null) => bag && [bag.cost, bag.penalty, bag.changes];

/** A point of the solver's with its bag judged anew: figures that the bag does not bear out show as a difference. */
function claimed(instance: Instance, point: Point | null) {
  if (!point) return null;
  const { faults, ...judged } = judge(instance, point.items);
  if (faults.length > 0) return faults;
  const told = worth(point);
  const held = [judged.cost, judged.penalty, judged.changes];
  return `${String(told)}` === `${String(held)}` ? [...held, judged.purchases] : { told, held };
}

const expected = (bag: OracleBag | null) => bag && [bag.cost, bag.penalty, bag.changes, bag.purchases];

const mixedDifferences = (seed: number): string[] =>
  differences(`seed ${String(seed)}`, mixedInstance(seed), seed % 6 === 0);

function differences(name: string, instance: Instance, decideTies: boolean): string[] {
  const found: string[] = [];
  const compare = (what: string, solvers: unknown, oracles: unknown): void => {
    const [ours, theirs] = [JSON.stringify(solvers), JSON.stringify(oracles)];
    if (ours !== theirs) found.push(`${name}, ${what}: solver ${ours}, HiGHS ${theirs}`);
  };
  const solution = solve(instance);
  const claim = (point: Point | null) => claimed(instance, point);
  withOracle(instance, (oracle) => {
    const curve = answers.curveOf(oracle);
    const clean = answers.cleanOf(oracle);
    const best = answers.bestOf(oracle, instance.budget);
    const owned = answers.ownedOf(instance);
    const plan = answers.headlineOf(curve, owned, instance.budget);
    compare('curve', solution.frontier.map(claim), curve.map(expected));
    compare('curve alone', frontier(instance).map(claim), curve.map(expected));
    compare('cheapest clean', claim(solution.cheapestClean), expected(clean));
    compare('cheapest clean alone', claim(cheapestClean(instance)), expected(clean));
    compare('best within budget', claim(solution.bestWithinBudget), expected(best));
    compare('best within budget alone', claim(bestWithinBudget(instance)), expected(best));
    compare('today', solution.today, owned && pointOf(owned));
    compare('headline', claim(solution.headline), expected(plan));
    compare('headline alone', claim(headline(instance)), expected(plan));
    const last = curve.at(-1);
    if (decideTies && last && instance.items.length < 15) {
      const pairs = [[last, solution.frontier.at(-1)] as const, [plan, solution.headline] as const];
      for (const [bag, point] of pairs) {
        if (!bag) continue;
        compare('ties', point?.items, answers.firstById(instance, oracle, bag));
        tiesDecided += 1;
      }
    }
  });
  coverage.add(instance, solution);
  compared += 1;
  points += solution.frontier.length;
  return found;
}

const pointOf = ({ cost, penalty, changes, items }: OracleBag): Point => ({ cost, penalty, changes, items });

/** Whether each walk-away price is what DESIGN §8 promises of it, by solving again at that price and above. */
function walkDifferences(seed: number): string[] {
  const instance = mixedInstance(seed);
  const { headline: plan, walkAway } = solve(instance);
  const found: string[] = [];
  if (!plan)
    return Object.keys(walkAway).length === 0 ? [] : [`seed ${String(seed)}: walk-away without a plan`];
  const bought = instance.items
    .filter((item) => item.origin === 'candidate' && plan.items.includes(item.id))
    .map((item) => item.lot ?? item.id);
  const named = Object.keys(walkAway).sort();
  if (String(named) !== String([...new Set(bought)].sort()))
    found.push(`seed ${String(seed)}: bought ${String(bought)}, walk-away of ${String(named)}`);
  for (const [id, price] of Object.entries(walkAway)) {
    const say = (what: string): void => {
      found.push(`seed ${String(seed)}, ${id} at ${String(price)}: ${what}`);
    };
    const isSet = instance.lots.some((lot) => lot.id === id);
    walked.sets += isSet ? 1 : 0;
    if (price === null) {
      const caps = { penalty: plan.penalty };
      const ban = answers.membersOf(instance, id);
      withOracle(instance, (oracle) => {
        if (oracle.least('cost', { caps, ban })) say('a bag without it does as well, so there is a ceiling');
      });
      walked.priceless += 1;
      continue;
    }
    const worthAt = (at: number): boolean =>
      withOracle(answers.priced(instance, id, at), (oracle) =>
        answers.isWorthBuying(oracle, id, plan.penalty),
      );
    if (!worthAt(price)) say('not worth buying at this price');
    if (worthAt(price + 1)) say('still worth buying at one more');
    walked.priced += 1;
  }
  return found;
}

describe('the solver against HiGHS', () => {
  for (let from = 0; from < INSTANCES; from += CHUNK) {
    it(`gives the same curve and single answers, seeds ${String(from)} to ${String(from + CHUNK - 1)}`, () => {
      const seeds = Array.from({ length: CHUNK }, (_, i) => from + i);
      expect(seeds.flatMap(mixedDifferences)).toEqual([]);
    });
  }

  it.each([
    [24, 16],
    [40, 6],
  ])("gives the same on bags like a player's, %i items", (items, count) => {
    const seeds = Array.from({ length: count }, (_, i) => i + 1);
    const found = seeds.flatMap((seed) =>
      differences(`realistic(${String(seed)}, ${String(items)})`, realistic(seed, items), false),
    );
    expect(found).toEqual([]);
  });

  for (let from = 0; from < WALKS; from += WALK_CHUNK) {
    it(`names walk-away prices that hold when solved again, seeds ${String(from)} to ${String(from + WALK_CHUNK - 1)}`, () => {
      const seeds = Array.from({ length: WALK_CHUNK }, (_, i) => from + i);
      expect(seeds.flatMap(walkDifferences)).toEqual([]);
    });
  }

  it('judges any bag as the independent evaluator does', () => {
    const random = mulberry32(8);
    for (let seed = 0; seed < 200; seed += 1) {
      const instance = mixedInstance(seed);
      const ids = instance.items.filter(() => random() < 0.5).map((item) => item.id);
      const { cost, penalty, changes, faults } = judge(instance, ids);
      const verdict = evaluate(instance, ids);
      const legal = faults.length === 0;
      expect({ seed, ...verdict }).toMatchObject({ seed, cost, penalty, changes });
      expect({ seed, legal: verdict.legal }).toEqual({ seed, legal });
    }
  });

  // Last, over all of the above: what the instances were made for must have come up.
  it('has met every feature of the model often enough to prove something', () => {
    tell('solver against HiGHS: instances, every answer equal', compared);
    tell('solver against HiGHS: points of spend curves, all equal', points);
    tell('solver against HiGHS: walk-away prices solved again at W and W + 1', walked.priced);
    expect(compared).toBeGreaterThanOrEqual(400);
    expect(points).toBeGreaterThanOrEqual(1200);
    expect(coverage.rarerThan(5)).toEqual([]);
    expect(tiesDecided).toBeGreaterThanOrEqual(40);
    expect(walked.priced).toBeGreaterThanOrEqual(200);
    expect(walked.priceless).toBeGreaterThanOrEqual(100);
    expect(walked.sets).toBeGreaterThanOrEqual(50);
  });
});
