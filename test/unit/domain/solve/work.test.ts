import { describe, expect, test } from 'vitest';
import type { Hooks } from '../../../../src-main/domain/solve/hooks.ts';
import {
  cheapestClean,
  cheapestWithin,
  frontier,
  headline,
  MENDED,
  type Instance,
} from '../../../../src-main/domain/solve/index.ts';
import { realistic } from '../../../bench/support/solve-instances.ts';

// What no answer shows: bounds, screens and shortcuts only save work. Labels made are that work, the same on every
// machine. The figures are what the solver makes now, from our own count: fewer is welcome and lowers them, more is a
// shortcut lost, or a trade that `npm run bench` has to justify.
const labelsOf = (work: (hooks: Hooks) => unknown): number => {
  let made = 0;
  work({ onProgress: (labels) => (made = labels) });
  return made;
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
      curve: [3417, 3711, 7730, 5776, 3225],
      clean: [208, 0, 0, 0, 0],
      plan: [2083, 1306, 1939, 1727, 1045],
      within: [335, 0, 0, 0, 0],
      again: [56, 234, 162, 45, 39],
    },
  },
  {
    name: 'a bag of 14 and 90 items in all',
    asked: (seed) => realistic(seed, 90),
    most: {
      curve: [1893, 4240, 1398, 6519, 2143],
      clean: [158, 0, 219, 145, 312],
      plan: [708, 2299, 669, 1838, 1306],
      within: [306, 0, 309, 200, 322],
      again: [20, 37, 82, 51, 69],
    },
  },
  {
    name: 'no sets for sale',
    asked: (seed) => singles(realistic(seed, 80)),
    most: {
      curve: [2179, 2557, 4271, 3091, 1522],
      clean: [0, 231, 0, 0, 140],
      plan: [862, 1218, 1448, 1148, 806],
      within: [0, 249, 0, 0, 323],
      again: [94, 90, 46, 29, 56],
    },
  },
  {
    name: 'resale counts for nothing',
    asked: (seed) => ({ ...realistic(seed, 60), basis: 'cash' }),
    most: {
      curve: [2015, 1104, 8082, 1665, 2350],
      clean: [211, 0, 0, 0, 0],
      plan: [987, 699, 372, 898, 442],
      within: [325, 0, 0, 0, 0],
      again: [26, 62, 58, 27, 23],
    },
  },
  {
    name: 'no budget',
    asked: (seed) => ({ ...realistic(seed, 60), budget: null }),
    most: {
      curve: [3417, 3711, 7730, 5776, 3225],
      clean: [208, 0, 0, 0, 0],
      plan: [3131, 3711, 7730, 5776, 3225],
      within: [335, 0, 0, 0, 0],
      again: [100, 1948, 23447, 1045, 2192],
    },
  },
  {
    name: 'nine clubs at most, so that five of those owned have to go',
    asked: (seed) => ({ ...realistic(seed, 60), limit: 9 }),
    most: {
      curve: [2999, 7864, 2538, 4259, 8572],
      clean: [0, 0, 0, 0, 0],
      plan: [2999, 7864, 2538, 4259, 8572],
      within: [0, 0, 0, 0, 0],
      again: [2999, 7864, 2538, 4259, 8572],
    },
  },
])('labels made: $name', ({ asked, most }) => {
  const worse = (name: string, work: (of: Instance, hooks: Hooks) => unknown) =>
    SEEDS.map((seed) => labelsOf((hooks) => work(asked(seed), hooks))).filter(
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
});
