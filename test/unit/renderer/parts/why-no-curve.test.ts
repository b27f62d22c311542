import { expect, test } from 'vitest';
import { whyNoCurve } from '../../../../src-renderer/parts/spend/curve/why-no-curve.ts';
import { spendView } from '../../../../src-renderer/state/spend/spend-view.ts';
import { answerTo, demoBag } from '../support.ts';

const bag = demoBag();
const answer = answerTo(bag);
const view = spendView(answer, bag.clubs, 180);

test('the demo has a curve to show', () => {
  expect(whyNoCurve(answer, view)).toBeNull();
});

test('nothing placed, nothing wrong and nothing priced are told apart', () => {
  const unplaced = { ...answer, plan: { ...answer.plan, ladder: [] } };
  expect(whyNoCurve(unplaced, view)).toMatch(/No club can be placed/);
  expect(whyNoCurve({ ...answer, todayPenalty: 0 }, { ...view, points: [] })).toMatch(/Nothing is wrong/);
  expect(whyNoCurve(answer, { ...view, points: [] })).toMatch(/no purchase that you have priced/);
});

test('with nothing wrong, leaving clubs out for money is still shown', () => {
  const [point] = view.points;
  if (!point) throw new Error('the demo has a point');
  const selling = { ...view, points: [{ ...point, cost: -20, wrong: 0 }] };
  expect(whyNoCurve({ ...answer, todayPenalty: 0 }, selling)).toBeNull();
});
