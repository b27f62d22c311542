import { expect, test } from 'vitest';
import { evidenceLines } from '../../../../src-renderer/parts/notes/evidence.ts';
import { planLines } from '../../../../src-renderer/parts/spend/plan/plan-lines.ts';
import { createFormats } from '../../../../src-renderer/state/format/formats.ts';
import { answerTo, demoBag } from '../support.ts';

const answer = answerTo(demoBag());

test('each swap by the names that the reader uses, with its price and its ceiling', () => {
  const lines = planLines(answer);
  expect(lines).toHaveLength(answer.plan.plan.swaps.length);
  const buy = lines.find((line) => line.action === 'buy');
  expect(buy?.name).toMatch(/hybrid|fairway wood/);
  expect(buy?.price).toBeGreaterThan(0);
  expect(buy?.why).not.toBe('');
  expect(buy?.stage).toBeNull();
  expect(buy && 'walkAway' in buy).toBe(true);
});

test('a stage that is not now is named', () => {
  const [swap] = answer.plan.plan.swaps;
  if (!swap) throw new Error('the demo has a swap');
  const later = {
    ...answer,
    plan: {
      ...answer.plan,
      plan: { ...answer.plan.plan, swaps: [{ ...swap, stage: 'when handicap ≤ 12' }] },
    },
  };
  expect(planLines(later)[0]?.stage).toBe('when handicap ≤ 12');
});

test('evidence: figure, value, range and source', () => {
  const [line, bare] = evidenceLines(
    [
      { figure: 'gap', value: 37, range: [32, 42.5], source: 'stated' },
      { figure: 'tier', value: 'players’', source: 'by handicap' },
    ],
    createFormats('en-GB', 'en'),
  );
  expect(line).toEqual({ text: 'gap: 37 (32–42.5)', source: 'stated' });
  expect(bare).toEqual({ text: 'tier: players’', source: 'by handicap' });
});
