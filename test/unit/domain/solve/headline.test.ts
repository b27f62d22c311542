import { describe, expect, test } from 'vitest';
import { headlineOf } from '../../../../src-main/domain/solve/headline.ts';
import type { Point } from '../../../../src-main/domain/solve/instance.ts';

const point = (cost: number, penalty: number): Point => ({ cost, penalty, changes: 0, items: [`${cost}`] });
const curve = (...points: [number, number][]): Point[] =>
  points.map(([cost, penalty]) => point(cost, penalty));
const plan = (points: Point[], before: number, budget: number | null): number | null =>
  headlineOf(points, point(0, before), budget)?.cost ?? null;

describe('with a budget', () => {
  test('a bag that needs mending: the cheapest mended point', () => {
    expect(plan(curve([0, 100], [50, 21], [90, 20], [95, 0]), 100, 100)).toBe(90);
  });
  test('mended, but beyond the budget: the best score', () => {
    // (100 − 21)/100 − ½·50/89 = .509; (100 − 60)/100 − ½·10/89 = .344
    expect(plan(curve([0, 100], [10, 60], [50, 21], [90, 20]), 100, 89)).toBe(50);
  });
  test('a bag that needs none is not mended for its own sake', () => {
    // (99 − 10)/100 − ½·1000/1000 = (99 − 60)/100 = .39: the cheaper
    expect(plan(curve([0, 60], [1000, 10]), 99, 1000)).toBe(0);
    expect(plan(curve([0, 60], [1000, 9]), 99, 1000)).toBe(1000);
  });
  test('small penalties are scaled by 100, large ones by themselves', () => {
    expect(plan(curve([0, 40], [100, 0]), 40, 100)).toBe(0);
    expect(plan(curve([0, 1000], [100, 499]), 1000, 100)).toBe(100);
    expect(plan(curve([0, 1000], [100, 500]), 1000, 100)).toBe(0);
  });
  test('money that comes in counts for nothing', () => {
    expect(plan(curve([-500, 90], [-100, 89], [0, 88]), 90, 10)).toBe(0);
  });
  test('equal scores that floating point tells apart go to the cheaper', () => {
    // (98 − 97)/100 − ½·1/8 = (98 − 72)/100 − ½·5/8 = −.0525; as doubles the second is larger.
    expect(26 / 100 - (0.5 * 5) / 8).toBeGreaterThan(1 / 100 - (0.5 * 1) / 8);
    expect(plan(curve([1, 97], [5, 72]), 98, 8)).toBe(1);
  });
  test('a budget of 0: the money term is 0', () => {
    expect(plan(curve([-20, 90], [-5, 80], [0, 70], [1, 0]), 90, 0)).toBe(0);
  });
  test('no point within budget: none', () => {
    expect(plan(curve([10, 0]), 500, 9)).toBeNull();
  });
});

describe('without a budget', () => {
  test('a bag that needs mending: the cheapest mended, else the last', () => {
    expect(plan(curve([0, 200], [50, 20], [90, 0]), 200, null)).toBe(50);
    expect(plan(curve([0, 200], [50, 60]), 200, null)).toBe(50);
  });
  test('else the cheapest no worse than today', () => {
    expect(plan(curve([-90, 99], [-10, 30], [0, 10]), 30, null)).toBe(-10);
  });
});

test('without a bag today, the first point of the curve stands for it', () => {
  expect(headlineOf(curve([0, 400], [10, 15]), null, 10)?.cost).toBe(10);
  expect(headlineOf(curve([0, 40], [10, 15]), null, null)?.cost).toBe(0);
});

test('no curve: none', () => {
  expect(headlineOf([], null, null)).toBeNull();
  expect(headlineOf([], point(0, 200), 10)).toBeNull();
});
