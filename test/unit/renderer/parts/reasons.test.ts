import { describe, expect, test } from 'vitest';
import { otherSteps, reasonsOf } from '../../../../src-renderer/parts/spend/plan/reasons.ts';
import { createFormats } from '../../../../src-renderer/state/format/formats.ts';
import { answerTo, demoBag } from '../support.ts';

const answer = answerTo(demoBag());
const formats = createFormats('en-GB', 'en');
const withSteps = (steps: Partial<typeof answer.explanation>) => ({
  ...answer,
  explanation: { ...answer.explanation, ...steps },
});

describe('why a purchase', () => {
  test('what comes back without it, and the best plan that does without', () => {
    const [purchase] = answer.explanation.purchases;
    expect(reasonsOf(answer, purchase?.id ?? '', formats)).toEqual([
      'Leave it out and 81% of today’s faults come back.',
      'Best without it: £57.88, buying 24° hybrid (game improvement), 100% mended.',
    ]);
  });

  test('nothing of what was not reckoned', () => {
    expect(reasonsOf(answer, 'own:lw', formats)).toEqual([]);
  });

  test('a purchase that only saves money elsewhere is said to', () => {
    const saving = withSteps({ purchases: [{ id: 'buy:x', removes: 0, without: null }] });
    expect(reasonsOf(saving, 'buy:x', formats)).toEqual([
      'Leave it out and nothing comes back: it saves money elsewhere.',
    ]);
  });
});

describe('other steps', () => {
  const step = { cost: 80, penalty: 105, buys: ['buy:hybrid-24-t3'] };

  test('the next one by what it costs more than the plan', () => {
    expect(otherSteps(withSteps({ nextStep: step }), formats)).toEqual([
      {
        heading: 'The next step up',
        text: '£25.12 more, buying 24° hybrid (game improvement): 75% of today’s faults mended.',
      },
    ]);
  });

  test('the cheapest help, and the same is not told twice', () => {
    expect(otherSteps(withSteps({ nextStep: step, cheapestHelp: step }), formats)).toEqual([
      {
        heading: 'The cheapest help',
        text: '£80, buying 24° hybrid (game improvement): 75% of today’s faults mended.',
      },
    ]);
  });

  test('none where nothing is wrong', () => {
    expect(otherSteps({ ...withSteps({ nextStep: step }), todayPenalty: 0 }, formats)).toEqual([]);
  });
});
