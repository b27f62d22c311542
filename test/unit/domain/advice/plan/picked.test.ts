import { describe, expect, it } from 'vitest';
import { answersOfPicked, PickGone } from '../../../../../src-main/domain/advice/plan/picked.ts';
import { solve } from '../../../../../src-main/domain/solve/index.ts';
import { candidate, instance, item } from '../../solve/instances.ts';

/** A hole of 300 tenths between two clubs, 150 allowed, both ends anchored: b fills it, d does for more, e half of it. */
const asked = instance(
  [
    item('a', { carryDy: 1300 }),
    item('c', { carryDy: 1000 }),
    candidate('b', 40, { carryDy: 1150 }),
    candidate('d', 70, { carryDy: 1150 }),
    candidate('e', 10, { carryDy: 1100 }),
  ],
  {
    bands: [{ fromDy: 0, wideDy: 150, crowdedDy: 0, wideWeight: 2, crowdWeight: 1 }],
    top: { atLeastDy: 1300, weight: 2 },
    bottom: { atMostDy: 1000, weight: 2 },
    budget: 100,
  },
);
const answered = { instance: asked, solution: solve(asked) };
const pick = (...items: string[]) => answersOfPicked(asked, answered, items, {});

describe('a bag picked by hand', () => {
  it('is the headline, its ids in order, the rest as answered', () => {
    const { headline, walkAway, ...rest } = pick('e', 'c', 'a');
    expect(headline).toEqual({ cost: 10, penalty: 100, changes: 1, items: ['a', 'c', 'e'] });
    const { headline: _plan, walkAway: _prices, ...others } = answered.solution;
    expect(rest).toEqual(others);
    // Without e nothing under 40 comes within 100.
    expect(walkAway).toEqual({ e: 40 });
  });
  it('has the plan’s walk-away prices where it is the plan', () => {
    expect(pick('a', 'b', 'c').walkAway).toEqual({ b: 70 });
  });
  it('has none where another bag does as well for less', () => {
    expect(pick('a', 'd', 'c').walkAway).toEqual({});
    expect(pick('a', 'b', 'c', 'e').walkAway).toEqual({});
  });
  it('has none where the smaller question that was answered lacks one of its clubs', () => {
    const smaller = { ...asked, items: asked.items.filter(({ id }) => id !== 'b') };
    const { headline, walkAway } = answersOfPicked(
      asked,
      { instance: smaller, solution: solve(smaller) },
      ['a', 'b', 'c'],
      {},
    );
    expect(headline).toMatchObject({ cost: 40, penalty: 0 });
    expect(walkAway).toEqual({});
  });
  it('has none where the smaller question has nothing as good', () => {
    const smaller = { ...asked, items: asked.items.filter(({ id }) => !['b', 'd'].includes(id)) };
    const answers = { instance: smaller, solution: solve(smaller) };
    expect(answersOfPicked(asked, answers, ['a', 'b', 'c'], {})).toMatchObject({
      headline: { penalty: 0 },
      walkAway: {},
    });
  });
  it('is refused by name when a club of it is no longer there', () => {
    expect(() => pick('a', 'gone', 'c')).toThrow(PickGone);
    expect(() => pick('a', 'gone', 'c')).toThrow(/gone/);
  });
});
