import { beforeAll, describe, expect, test } from 'vitest';
import type { Answer } from '../../../../src-main/contract/calls/answers/answers.ts';
import { statusText } from '../../../../src-renderer/parts/spend/plan/status-text.ts';
import { createFormats } from '../../../../src-renderer/state/format/formats.ts';
import { answerTo, demoBag } from '../support.ts';

const formats = createFormats('en-GB', 'en');
let answer: Answer;
beforeAll(() => {
  answer = answerTo(demoBag());
});

const withPlan = (changes: Partial<Answer['plan']['plan']>): Answer => ({
  ...answer,
  plan: { ...answer.plan, plan: { ...answer.plan.plan, ...changes } },
});

describe('the plan in plain words', () => {
  test('the demo: what it costs, what is mended, what is left', () => {
    const { head, more } = statusText(answer, formats);
    expect(head).toBe(
      `${formats.money(answer.plan.plan.net, answer.plan.units)} puts the bag right: 1 purchase.`,
    );
    expect(more[0]).toMatch(/mended\.$/);
    expect(more).toContain(
      `${formats.money(answer.plan.plan.remaining ?? NaN, answer.plan.units)} of the budget is left.`,
    );
  });

  test('pain: no advice, and nothing about money', () => {
    const said = statusText(withPlan({ status: 'stopped' }), formats);
    expect(said.head).toMatch(/medical professional/);
    expect(said.more).toEqual([]);
  });

  test.each([
    ['nothing-needed', /^Nothing to buy/],
    ['ask-first', /^Measure first/],
    ['coach-first', /^See a coach first/],
    ['over-budget', /^Nothing within the budget/],
  ] as const)('%s', (status, words) => {
    expect(statusText(withPlan({ status, swaps: [] }), formats).head).toMatch(words);
  });

  test('partly: with purchases, by leaving out alone, and not at all', () => {
    const drop = { action: 'drop' as const, clubId: 'lw', why: '', stage: 'now' };
    expect(statusText(withPlan({ status: 'partly' }), formats).head).toMatch(
      /mends part of what is wrong, not all of it/,
    );
    expect(statusText(withPlan({ status: 'partly', swaps: [drop] }), formats).head).toMatch(
      /part of what is wrong and costs nothing/,
    );
    expect(statusText(withPlan({ status: 'partly', swaps: [] }), formats).head).toMatch(/no purchase/);
  });

  test('where sales count only once the money is there, the cost is all that is paid', () => {
    const cash = {
      ...answer,
      plan: { ...answer.plan, instance: { ...answer.plan.instance, basis: 'cash' as const } },
    };
    expect(statusText(cash, formats).head).toContain(formats.money(answer.plan.plan.cash, answer.plan.units));
  });

  test('over the budget and without one', () => {
    expect(statusText(withPlan({ remaining: -20 }), formats).more.join(' ')).toContain(
      '£20 over the budget.',
    );
    expect(statusText(withPlan({ remaining: null }), formats).more.join(' ')).toContain('No budget is set');
  });
});
