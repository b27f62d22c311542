import { describe, expect, it } from 'vitest';
import { evaluate, solve, type Instance, type Solution } from '../../../src-main/domain/solve/index.ts';
import { boughtIn, every, expected, leastCost } from './brute-force.ts';
import { shuffled, smallInstance } from './small-instances.ts';

/*
 * Every answer of the solver against every bag tried one by one (brute-force.ts, written apart from the solver), on
 * seeded instances small enough for it: values and item lists, input shuffled.
 */
const FIRST_SEED = 1;
const INSTANCES = 1200;
const ANSWERS = ['today', 'cheapestClean', 'bestWithinBudget', 'headline', 'frontier'] as const;

const instances = Array.from({ length: INSTANCES }, (_, i) => smallInstance(FIRST_SEED + i, 6 + (i % 7)));
const solved: Solution[] = instances.map((instance, i) => solve(shuffled(instance, i)));

/** Which features an instance holds: the mix that the acceptance names. */
const FEATURES: Record<string, (instance: Instance) => boolean> = {
  'owned set': ({ items, lots }) =>
    items.some((x) => x.origin === 'owned' && lots.some((l) => l.id === x.lot)),
  'candidate set': ({ items }) => items.some((x) => x.origin === 'candidate' && x.lot !== null),
  lock: ({ items }) => items.some((x) => x.locked),
  'excused pair': ({ excused }) => excused.length > 0,
  misfit: ({ items }) => items.some((x) => x.misfit > 0),
  'first-pair limit': ({ firstPair, items }) => firstPair !== null && items.some((x) => x.kind === 'driver'),
  'more owned than the limit': ({ items, limit }) => items.filter((x) => x.origin === 'owned').length > limit,
  'no putter': ({ items }) => items.every((x) => x.kind !== 'putter'),
  'several putters': ({ items }) => items.filter((x) => x.kind === 'putter').length > 1,
  'two owned putters': ({ items }) =>
    items.filter((x) => x.kind === 'putter' && x.origin === 'owned').length > 1,
  'putter in a set': ({ items }) => items.some((x) => x.kind === 'putter' && x.lot !== null),
  net: ({ basis }) => basis === 'net',
  cash: ({ basis }) => basis === 'cash',
  'no budget': ({ budget }) => budget === null,
  'budget 0': ({ budget }) => budget === 0,
  'equal carries': ({ items }) => new Set(items.map((x) => x.carryDy)).size < items.length,
  'several bands': ({ bands }) => bands.length > 1,
};

describe('the generator', () => {
  it.each(Object.entries(FEATURES))('reaches: %s, in at least 5 %% of the instances', (_name, has) => {
    expect(instances.filter(has).length).toBeGreaterThanOrEqual(INSTANCES * 0.05);
  });
  it('reaches instances with and without each answer, and curves of several points', () => {
    for (const answer of ['today', 'cheapestClean', 'bestWithinBudget', 'headline'] as const) {
      const there = solved.filter((solution) => solution[answer] !== null).length;
      expect(there).toBeGreaterThan(INSTANCES * 0.05);
      expect(there).toBeLessThan(INSTANCES);
    }
    expect(solved.filter((solution) => solution.frontier.length >= 3).length).toBeGreaterThan(
      INSTANCES * 0.1,
    );
    expect(solved.filter((solution) => (solution.frontier[0]?.cost ?? 0) < 0).length).toBeGreaterThan(
      INSTANCES * 0.05,
    );
  });
});

describe(`${String(INSTANCES)} instances, every bag tried`, () => {
  it.each(ANSWERS)('%s is the same, value and items', (answer) => {
    const wrong = instances.flatMap((instance, i) => {
      const want = expected(instance)[answer];
      const got = solved[i]?.[answer];
      return JSON.stringify(got) === JSON.stringify(want) ? [] : [{ seed: FIRST_SEED + i, want, got }];
    });
    expect(wrong).toEqual([]);
  });

  it('the walk-away prices are the same', () => {
    const wrong = instances.flatMap((instance, i) => {
      const want = Object.fromEntries(expected(instance).walkAway);
      const got = solved[i]?.walkAway ?? {};
      const same =
        Object.keys(want).length === Object.keys(got).length &&
        Object.keys(want).every((id) => got[id] === want[id]);
      return same ? [] : [{ seed: FIRST_SEED + i, want, got }];
    });
    expect(wrong).toEqual([]);
  });

  it('at its walk-away price a purchase still belongs to a cheapest bag, one unit above it to none', () => {
    let checked = 0;
    for (const [i, instance] of instances.entries()) {
      const solution = solved[i];
      const plan = solution?.headline;
      if (!plan) continue;
      for (const { id, members } of boughtIn(instance, plan.items)) {
        const worth = solution.walkAway[id];
        if (typeof worth !== 'number' || worth < 0) continue;
        for (const [price, belongs] of [
          [worth, true],
          [worth + 1, false],
        ] as const) {
          const { legal, idsOf } = every(priced(instance, id, price));
          const enough = legal.filter((bag) => bag.penalty <= plan.penalty);
          const withIt = enough.filter((bag) => idsOf(bag).some((x) => members.includes(x)));
          const least = leastCost(enough, plan.penalty);
          expect({ id, price, belongs: leastCost(withIt, plan.penalty) === least }).toEqual({
            id,
            price,
            belongs,
          });
        }
        checked++;
      }
    }
    expect(checked).toBeGreaterThanOrEqual(200);
  });

  it('the plain evaluation of each point gives its own figures', () => {
    for (const [i, instance] of instances.entries()) {
      for (const point of solved[i]?.frontier ?? []) {
        const { legal, cost, penalty, changes } = evaluate(instance, point.items);
        expect({ legal, cost, penalty, changes }).toEqual({
          legal: true,
          cost: point.cost,
          penalty: point.penalty,
          changes: point.changes,
        });
      }
    }
  });
});

it('one instance in 100 orders has one answer', () => {
  const instance = smallInstance(4242, 12);
  const answer = JSON.stringify(solve(instance));
  for (let order = 0; order < 100; order++)
    expect(JSON.stringify(solve(shuffled(instance, order)))).toBe(answer);
});

function priced(instance: Instance, id: string, price: number): Instance {
  return {
    ...instance,
    items: instance.items.map((item) => (item.id === id ? { ...item, price } : item)),
    lots: instance.lots.map((lot) => (lot.id === id ? { ...lot, price } : lot)),
  };
}
