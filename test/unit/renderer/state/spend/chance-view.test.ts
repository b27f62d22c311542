import { describe, expect, test } from 'vitest';
import {
  chanceAt,
  chanceRows,
  chanceView,
  costAt,
  type ChanceView,
} from '../../../../../src-renderer/state/spend/chance-view.ts';
import { answerTo, demoBag } from '../../support.ts';

const bag = demoBag();
const answer = answerTo(bag);
const points = [
  { cost: 100, atMost: 0 },
  { cost: 110, atMost: 0.4 },
  { cost: 120, atMost: 1 },
];

function drawable(budget: number | null): ChanceView {
  const view = chanceView(answer, budget);
  if (view === null || !('points' in view)) throw new Error('the demo’s plan has bands');
  return view;
}

describe('the chance of cost', () => {
  test('has the plan’s own figures: what it costs at likely prices, and the chance in its budget', () => {
    const view = drawable(180);
    expect(view.likely.cost).toBe(answer.plan.plan.net);
    expect(view.isNet).toBe(true);
    expect(view.budget).toEqual({ amount: 180, chance: answer.plan.plan.chanceInBudget });
    expect(view.enough.share).toBe(0.8);
    expect(chanceAt(view.points, view.enough.cost)).toBeCloseTo(0.8, 2);
  });

  test('a budget that the answer was not reckoned for has the chance that the curve says', () => {
    const { budget, points: own } = drawable(55);
    expect(budget?.chance).toBe(chanceAt(own, 55));
    expect(budget?.chance).toBeGreaterThan(0.2);
    expect(budget?.chance).toBeLessThan(0.9);
    expect(drawable(null).budget).toBeNull();
  });

  test('is nothing where no price has a part in the plan, and one sum where it is sure', () => {
    expect(chanceView({ ...answer, costSpread: null }, 180)).toBeNull();
    const sure = { low: 40, high: 40, enough: { share: 0.8, cost: 40 }, points: [{ cost: 40, atMost: 1 }] };
    expect(chanceView({ ...answer, costSpread: sure }, 180)).toEqual({ cost: 40 });
  });

  test('counts the money to be paid where sales do not count', () => {
    const cash = {
      ...answer,
      plan: { ...answer.plan, instance: { ...answer.plan.instance, basis: 'cash' as const } },
    };
    expect(chanceView(cash, 180)).toMatchObject({ isNet: false, likely: { cost: answer.plan.plan.cash } });
  });
});

describe('between the points of the curve', () => {
  test('chances rise in straight lines, with nothing below and all above', () => {
    expect([90, 100, 105, 110, 115, 120, 130].map((cost) => chanceAt(points, cost))).toEqual([
      0, 0, 0.2, 0.4, 0.7, 1, 1,
    ]);
  });
  test('costs answer them', () => {
    expect([0, 0.2, 0.4, 0.7, 1].map((chance) => costAt(points, chance))).toEqual([100, 105, 110, 115, 120]);
    expect(costAt([{ cost: 5, atMost: 0.9 }], 0.95)).toBe(5);
  });
  test('a flat piece has no slope to divide by', () => {
    const flat = [
      { cost: 100, atMost: 0 },
      { cost: 110, atMost: 0 },
      { cost: 120, atMost: 1 },
    ];
    expect(costAt(flat, 0)).toBe(100);
    expect(chanceAt(flat, 105)).toBe(0);
    expect(costAt(flat, 0.5)).toBe(115);
  });
});

test('the table lists the usual chances with the marked sums among them, the least sum first', () => {
  const rows = chanceRows(drawable(180));
  expect(rows.map(({ cost }) => cost)).toEqual([...rows.map(({ cost }) => cost)].sort((a, b) => a - b));
  expect(rows.map(({ chance }) => chance)).toEqual(
    [...rows.map(({ chance }) => chance)].sort((a, b) => a - b),
  );
  expect(rows.flatMap(({ which }) => which ?? [])).toEqual(['likely', 'enough', 'budget']);
});
