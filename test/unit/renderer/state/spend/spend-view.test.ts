import { beforeAll, describe, expect, test } from 'vitest';
import type { Answer } from '../../../../../src-main/contract/calls/answers/answers.ts';
import { sliderScale, spendView, totalsOf } from '../../../../../src-renderer/state/spend/spend-view.ts';
import { answerTo, demoBag } from '../../support.ts';

let answer: Answer;
const bag = demoBag();
beforeAll(() => {
  answer = answerTo(bag);
});

describe('the spend curve', () => {
  test('runs from today’s penalty downwards, cheapest first', () => {
    // Whatever order the plan file has them in.
    const reversed = { ...answer, plan: { ...answer.plan, frontier: answer.plan.frontier.toReversed() } };
    const { points } = spendView(reversed, bag.clubs, 180);
    expect(points.length).toBeGreaterThan(1);
    expect(points.every((point) => point.wrong >= 0 && point.wrong <= 1)).toBe(true);
    expect(points.map((point) => point.cost)).toEqual(
      [...points.map((point) => point.cost)].sort((a, b) => a - b),
    );
    expect(points.map((point) => point.wrong)).toEqual(
      [...points.map((point) => point.wrong)].sort((a, b) => b - a),
    );
  });

  test('has the plan on it, by what the plan holds', () => {
    const { points } = spendView(answer, bag.clubs, 180);
    expect(points.filter((point) => point.isPlan)).toHaveLength(1);
    expect(points.find((point) => point.isPlan)?.cost).toBe(answer.plan.plan.net);
  });

  test('says what is bought, a set once, and what goes out', () => {
    const items = [
      ...bag.clubs.filter((club) => club.id !== 'lw').map((club) => `own:${club.id}`),
      'buy:irons-5-pw-30-t3:5',
      'buy:irons-5-pw-30-t3:6',
    ];
    const one = {
      ...answer,
      names: { ...answer.names, 'buy:irons-5-pw-30-t3': 'irons 5–PW, invented' },
      plan: { ...answer.plan, frontier: [{ cost: 5, penalty: 0, changes: 2, items }] },
    };
    const [point] = spendView(one, bag.clubs, 4).points;
    expect(point?.buys).toEqual(['irons 5–PW, invented']);
    expect(point?.leaves).toEqual(['LW']);
    expect(point?.withinBudget).toBe(false);
  });

  test('of a bag with nothing wrong says so', () => {
    const fine = { ...answer, todayPenalty: 0 };
    expect(spendView(fine, bag.clubs, null).today.wrong).toBe(0);
    expect(spendView(fine, bag.clubs, null).points.every((point) => point.wrong === 0)).toBe(true);
  });
});

describe('the money of the plan', () => {
  test('adds up to what the plan file says', () => {
    const totals = totalsOf(answer.plan.plan);
    expect(totals.clubs + totals.deliveryAndGrips).toBeCloseTo(answer.plan.plan.cash, 6);
    expect(totals.cash - totals.sales + totals.saleCosts).toBeCloseTo(answer.plan.plan.net, 6);
  });

  test('of a plan without swaps is nothing', () => {
    const none = {
      status: 'nothing-needed' as const,
      swaps: [],
      cash: 0,
      net: 0,
      remaining: 180,
      afterLadder: [],
    };
    expect(totalsOf(none)).toEqual({
      clubs: 0,
      deliveryAndGrips: 0,
      cash: 0,
      sales: 0,
      saleCosts: 0,
      net: 0,
      remaining: 180,
    });
  });
});

test.each([
  [[], null, { max: 20, step: 1 }],
  [[58], 180, { max: 300, step: 5 }],
  [[], 12, { max: 20, step: 1 }],
  [[410], 180, { max: 500, step: 5 }],
  [[20_000], null, { max: 30_000, step: 500 }],
  [[-60], 0, { max: 20, step: 1 }],
])('the slider for %j and %s', (costs, budget, scale) => {
  expect(sliderScale(costs, budget)).toEqual(scale);
});
