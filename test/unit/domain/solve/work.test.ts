import { describe, expect, test } from 'vitest';
import type { Hooks } from '../../../../src-main/domain/solve/hooks.ts';
import {
  cheapestClean,
  cheapestWithin,
  frontier,
  headline,
  MENDED,
  solve,
  walkAways,
  type Instance,
} from '../../../../src-main/domain/solve/index.ts';
import { realistic } from '../../../bench/support/solve-instances.ts';

// What no answer shows: bounds, screens and shortcuts only save work. Work is the labels made and the clubs gone over to
// make them, counted one by one, the same on every machine. The figures are what the solver makes now, from our own
// count: fewer is welcome and lowers them, more is a shortcut lost, or a trade that `npm run bench` has to justify.
const workOf = (work: (hooks: Hooks) => unknown): number => {
  let made = 0;
  let clubs = 0;
  const onProgress = (labels: number): void => {
    made = labels;
    clubs++;
  };
  work({ onProgress });
  return made + clubs;
};
const SEEDS = [0, 1, 2, 3, 4];

const singles = (of: Instance): Instance => ({
  ...of,
  items: of.items.filter(({ origin, lot }) => origin === 'owned' || lot === null),
  lots: of.lots.filter(({ origin }) => origin === 'owned'),
});

describe.each<{ name: string; asked: (seed: number) => Instance; most: Record<string, number[]> }>([
  {
    name: 'a bag of 14 and 60 items in all',
    asked: (seed) => realistic(seed, 60),
    most: {
      curve: [3481, 3947, 8017, 6024, 3503],
      clean: [253, 0, 0, 0, 0],
      plan: [2144, 1390, 2029, 1880, 1137],
      within: [383, 0, 0, 0, 0],
      again: [74, 269, 199, 71, 59],
      prices: [402, 406, 1125, 1596, 616],
    },
  },
  {
    name: 'a bag of 14 and 90 items in all',
    asked: (seed) => realistic(seed, 90),
    most: {
      curve: [1966, 4447, 1458, 6706, 2301],
      clean: [201, 0, 266, 183, 386],
      plan: [764, 2358, 719, 1958, 1402],
      within: [349, 0, 363, 244, 393],
      again: [35, 52, 104, 65, 85],
      prices: [168, 677, 153, 446, 387],
    },
  },
  {
    name: 'no sets for sale',
    asked: (seed) => singles(realistic(seed, 80)),
    most: {
      curve: [2295, 2642, 4379, 3190, 1589],
      clean: [0, 281, 0, 0, 184],
      plan: [924, 1269, 1510, 1206, 867],
      within: [0, 303, 0, 0, 369],
      again: [118, 117, 66, 44, 73],
      prices: [329, 412, 1541, 240, 430],
    },
  },
  {
    name: 'resale counts for nothing',
    asked: (seed) => ({ ...realistic(seed, 60), basis: 'cash' }),
    most: {
      curve: [2076, 1172, 8354, 1732, 2649],
      clean: [257, 0, 0, 0, 0],
      plan: [1046, 750, 412, 955, 490],
      within: [371, 0, 0, 0, 0],
      again: [41, 77, 85, 41, 37],
      prices: [402, 223, 0, 873, 0],
    },
  },
  {
    name: 'no budget',
    asked: (seed) => ({ ...realistic(seed, 60), budget: null }),
    most: {
      curve: [3481, 3947, 8017, 6024, 3503],
      clean: [253, 0, 0, 0, 0],
      plan: [3191, 3947, 8017, 6024, 3503],
      within: [383, 0, 0, 0, 0],
      again: [74, 2031, 1767, 925, 1219],
      prices: [402, 369, 0, 871, 0],
    },
  },
  {
    name: 'nine clubs at most, so that five of those owned have to go',
    asked: (seed) => ({ ...realistic(seed, 60), limit: 9 }),
    most: {
      curve: [3337, 9081, 2824, 4614, 9427],
      clean: [0, 0, 0, 0, 0],
      plan: [3337, 9081, 2824, 4614, 9427],
      within: [0, 0, 0, 0, 0],
      again: [3337, 9081, 2824, 4614, 9427],
      prices: [287, 2496, 216, 803, 129],
    },
  },
])('work: $name', ({ asked, most }) => {
  const worse = (name: string, work: (of: Instance, hooks: Hooks) => unknown) =>
    SEEDS.map((seed) => workOf((hooks) => work(asked(seed), hooks))).filter(
      (made, seed) => made > (most[name]?.[seed] ?? 0),
    );

  test('the whole curve', () => {
    expect(worse('curve', frontier)).toEqual([]);
  });
  test('the cheapest clean bag, most often told by the bounds alone', () => {
    expect(worse('clean', cheapestClean)).toEqual([]);
  });
  test('the plan alone', () => {
    expect(worse('plan', headline)).toEqual([]);
  });
  test('with a curve that says where to look', () => {
    expect(
      worse('within', (of, hooks) => cheapestWithin(of, { penalty: MENDED }, frontier(of), hooks)),
    ).toEqual([]);
    expect(worse('again', (of, hooks) => headline(of, hooks, frontier(of)))).toEqual([]);
  });
  test('walk-away prices', () => {
    expect(
      worse('prices', (of, hooks) => {
        const { frontier: curve, headline: plan } = solve(of);
        return plan === null ? null : walkAways(of, curve, plan, hooks);
      }),
    ).toEqual([]);
  });
});
