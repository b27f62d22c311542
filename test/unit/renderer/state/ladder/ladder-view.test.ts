import { beforeAll, describe, expect, test } from 'vitest';
import type { Answer } from '../../../../../src-main/contract/calls/answers/answers.ts';
import { ladderView } from '../../../../../src-renderer/state/ladder/ladder-view.ts';
import { answerTo, demoBag } from '../../support.ts';

let answer: Answer;
beforeAll(() => {
  answer = answerTo(demoBag());
});

describe('today', () => {
  test('every club of the ladder, longest first, with name, range and source', () => {
    const { rows } = ladderView(answer, 'today');
    expect(rows.map((row) => row.name).slice(0, 3)).toEqual(['driver', '5-wood', '6-iron']);
    expect(rows[0]).toMatchObject({ id: 'driver', carry: 201, source: 'stated', bought: false });
    expect(rows.every((row) => row.low < row.carry && row.carry < row.high)).toBe(true);
  });

  test('a step for each pair of neighbours; marks of the answer and their notes stand at their pair', () => {
    const { rows, steps } = ladderView(answer, 'today');
    expect(steps).toHaveLength(rows.length - 1);
    expect(steps[1]).toMatchObject({ longer: '5w', shorter: '6i', gap: 37, state: 'wide', limit: 20 });
    const note = answer.plan.findings.findIndex((finding) => finding.kind === 'wide-gap') + 1;
    expect(steps[1]?.notes).toEqual([note]);
    expect(steps[2]).toMatchObject({ state: 'fine', limit: null, notes: [] });
  });

  test('what the plan takes out is marked as leaving', () => {
    const left = answer.plan.plan.swaps.flatMap((swap) => swap.clubId ?? []);
    const { rows } = ladderView(answer, 'today');
    expect(rows.filter((row) => row.leaving).map((row) => row.id)).toEqual(left);
  });
});

describe('after the plan', () => {
  test('what is bought stands in its place and is marked', () => {
    const { rows } = ladderView(answer, 'after');
    expect(rows.filter((row) => row.bought).every((row) => row.id.startsWith('buy:'))).toBe(true);
    expect(rows.some((row) => row.bought)).toBe(true);
    expect(rows.some((row) => row.leaving)).toBe(false);
  });

  test('new neighbours are judged by the limits that the plan was reckoned with', () => {
    const without = (id: string) => ({
      ...answer,
      plan: {
        ...answer.plan,
        plan: {
          ...answer.plan.plan,
          afterLadder: answer.plan.ladder.filter((row) => row.clubId !== id),
        },
      },
    });
    const steps = ladderView(without('8i'), 'after').steps;
    expect(steps.find((step) => step.longer === '7i')).toMatchObject({
      shorter: '9i',
      gap: 22,
      state: 'wide',
      limit: 16,
    });
    // The driver and the next club have the wider limit of the first pair.
    expect(ladderView(without('none'), 'after').steps[0]).toMatchObject({
      longer: 'driver',
      gap: 23,
      state: 'fine',
    });
  });

  test('in metres the limits are metres too', () => {
    const bag = demoBag();
    const metres = answerTo({
      ...bag,
      units: { ...bag.units, distance: 'm' },
      clubs: bag.clubs.map((club) =>
        club.carry === undefined ? club : { ...club, carry: Math.round(club.carry * 9.144) / 10 },
      ),
    });
    const after = {
      ...metres,
      marks: [],
      plan: { ...metres.plan, plan: { ...metres.plan.plan, afterLadder: metres.plan.ladder } },
    };
    const wide = ladderView(after, 'after').steps[1];
    expect(wide?.state).toBe('wide');
    expect(wide?.limit).toBeCloseTo(20 * 0.9144, 6);
  });
});

test('a bag without a ladder has neither rows nor steps', () => {
  const none = { ...answer, marks: [], plan: { ...answer.plan, ladder: [] } };
  expect(ladderView(none, 'today')).toEqual({ rows: [], steps: [] });
});
