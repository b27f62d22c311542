import { expect, test } from 'vitest';
import { Watch } from '../../../src-main/domain/solve/hooks.ts';
import {
  evaluate,
  frontier,
  headline,
  headlineOf,
  MENDED,
  NEEDS_MENDING,
  type Instance,
  type Point,
} from '../../../src-main/domain/solve/index.ts';
import { todayOf } from '../../../src-main/domain/solve/frontier.ts';
import { layOut } from '../../../src-main/domain/solve/model/ladder.ts';
import { planQuestion } from '../../../src-main/domain/solve/plan-alone.ts';
import { search } from '../../../src-main/domain/solve/search/search.ts';
import { TUNING } from '../../../src-main/domain/solve/search/tuning.ts';
import { every, expected } from './brute-force.ts';
import { dice, smallInstance } from './small-instances.ts';
import { least, runs } from '../../support/runs.ts';

// Source of every expected value: all bags tried one by one (brute-force.ts), after DESIGN §8.

const SIZES = 8;

/** Budgets at which something changes: none, nothing, and each cost of the curve, a little less and a little more. */
function budgetsOf(curve: readonly Point[]): (number | null)[] {
  const costs = curve.flatMap(({ cost }) => [cost - 1, cost, cost + 1]).filter((cost) => cost > 0);
  return [null, 0, ...new Set(costs), 1000];
}

/** The same question with other carries, as a sampled ladder has. */
function shifted(instance: Instance, seed: number): Instance {
  const d = dice(seed);
  const items = instance.items.map((item) => ({
    ...item,
    carryDy: Math.max(0, item.carryDy + d.whole(-2, 2)),
  }));
  // Excuses must be pairs in ladder order, which other carries may turn.
  return { ...instance, items, excused: [] };
}

test('the plan alone is that of the whole curve: any budget, any hint of where it lies', () => {
  const seen = { mended: 0, scored: 0, none: 0, asked: 0 };
  for (let seed = 0; seed < runs(800); seed++) {
    const asked = { ...smallInstance(seed, 4 + (seed % SIZES)), budget: null };
    const hints = [[], frontier(asked), frontier(shifted(asked, seed))];
    const answers = every(asked);
    const curve = expected(asked, answers).frontier as Point[];
    for (const budget of budgetsOf(curve)) {
      const want = expected({ ...asked, budget }, answers).headline as Point | null;
      const hint = hints[(seed + seen.asked) % hints.length] ?? [];
      expect(
        headline({ ...asked, budget }, {}, hint),
        `seed ${String(seed)}, budget ${String(budget)}`,
      ).toEqual(want);
      seen.asked++;
      if (want === null) seen.none++;
      else if (want.penalty <= MENDED) seen.mended++;
      else if (budget !== null && budget > 0) seen.scored++;
    }
  }
  // All three rules were met often enough to have failed.
  expect(seen.asked).toBeGreaterThanOrEqual(least(3001));
  for (const rule of ['mended', 'scored', 'none'] as const)
    expect(seen[rule], rule).toBeGreaterThanOrEqual(least(61));
});

test('so also with every shortcut taken', () => {
  const tuning = {
    ...TUNING,
    fewArcs: 0,
    manyArcs: 0,
    manyToRun: 0,
    parts: [1, 2, 4],
    firstPart: 1,
    secondPart: 2,
  };
  for (let seed = 0; seed < runs(300); seed++) {
    const instance = smallInstance(700_000 + seed, 5 + (seed % SIZES));
    const today = todayOf(instance);
    if (today === null || (instance.budget !== null && instance.budget < 0)) continue;
    const { budget } = instance;
    const ladder = layOut(instance);
    const found = search(ladder, planQuestion({ before: today.penalty, budget }, []), new Watch(), tuning);
    const points = found.map(({ ranks, ...rest }) => ({
      cost: rest.cost,
      penalty: rest.penalty,
      changes: rest.changes,
      items: Array.from(ranks, (rank) => ladder.idByRank[rank] as string),
    }));
    expect(headlineOf(points, today, budget), `seed ${String(seed)}`).toEqual(expected(instance).headline);
  }
});

test('large figures: what is found is on the whole curve’s plan', () => {
  let needsMending = 0;
  for (let seed = 0; seed < runs(60); seed++) {
    const small = smallInstance(800_000 + seed, 13 + (seed % 8));
    // Pence and tenths of a yard as a real bag has them.
    const big: Instance = {
      ...small,
      items: small.items.map((item) => ({ ...item, price: item.price * 997, resale: item.resale * 331 })),
      lots: small.lots.map((lot) => ({ ...lot, price: lot.price * 997, resale: lot.resale * 331 })),
      budget: 4000 + 500 * (seed % 9),
    };
    const today = todayOf(big);
    if ((today?.penalty ?? 0) >= NEEDS_MENDING) needsMending++;
    const want = headlineOf(frontier(big), today, big.budget);
    const got = headline(big, {}, frontier(small));
    expect(got, `seed ${String(seed)}`).toEqual(want);
    if (got !== null)
      expect(evaluate(big, got.items)).toMatchObject({ cost: got.cost, penalty: got.penalty });
  }
  expect(needsMending).toBeGreaterThanOrEqual(least(6));
});
