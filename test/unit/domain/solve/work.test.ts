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

describe.each<{ items: number; most: Record<string, number[]> }>([
  {
    items: 60,
    most: {
      curve: [3417, 3711, 7730, 5776, 3225],
      clean: [208, 0, 0, 0, 0],
      plan: [2083, 1306, 1939, 1727, 1045],
      within: [335, 0, 0, 0, 0],
      again: [56, 234, 162, 45, 39],
    },
  },
  {
    items: 90,
    most: {
      curve: [1893, 4240, 1398, 6519, 2143],
      clean: [158, 0, 219, 145, 312],
      plan: [708, 2299, 669, 1838, 1306],
      within: [306, 0, 309, 200, 322],
      again: [20, 37, 82, 51, 69],
    },
  },
])('labels for a bag of 14 and $items items in all', ({ items, most }) => {
  const worse = (name: string, work: (of: Instance, hooks: Hooks) => unknown) =>
    SEEDS.map((seed) => labelsOf((hooks) => work(realistic(seed, items), hooks))).filter(
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
