import { describe, expect, it } from 'vitest';
import { alternatives } from '../../../src-main/domain/solve/alternatives.ts';
import {
  cheapestWithin,
  MENDED,
  solve,
  type Instance,
  type Point,
} from '../../../src-main/domain/solve/index.ts';
import { boughtIn, every, expected, type Answers, type Bag } from './brute-force.ts';
import { smallInstance } from './small-instances.ts';
import { least, runs } from '../../support/runs.ts';

// Source of every expected value: all bags tried one by one (brute-force.ts), after DESIGN §8.

describe('the cheapest bag within a penalty', () => {
  it('is the point of the brute-force curve, at every penalty of it and beside it, capped or not', () => {
    let none = 0;
    let asked = 0;
    for (let seed = 0; seed < runs(400); seed++) {
      const instance = smallInstance(seed, 4 + (seed % 8));
      const curve = expected(instance).frontier as Point[];
      const penalties = [0, MENDED, ...curve.flatMap(({ penalty }) => [penalty, Math.max(0, penalty - 1)])];
      for (const penalty of penalties) {
        for (const mostCost of [undefined, curve[seed % Math.max(1, curve.length)]?.cost ?? 0]) {
          const want =
            curve.find((point) => point.penalty <= penalty && point.cost <= (mostCost ?? Infinity)) ?? null;
          const got = cheapestWithin(
            instance,
            mostCost === undefined ? { penalty } : { penalty, mostCost },
            seed % 2 === 0 ? curve : [],
          );
          expect(got, `seed ${String(seed)}, penalty ${String(penalty)}`).toEqual(want);
          asked++;
          if (want === null) none++;
        }
      }
    }
    expect(none).toBeGreaterThanOrEqual(least(asked / 20));
  });
});

/** Alternatives by their definition: the cheapest bag that holds no earlier purchase whole, again and again. */
function byTrial(
  instance: Instance,
  plan: Point,
  penalty: number,
  all: Answers,
): { buys: string[]; cost: number }[] {
  const { legal, idsOf, compare } = all;
  const buysOf = (bag: Bag) => boughtIn(instance, idsOf(bag)).map(({ id }) => id);
  const good = legal
    .filter((bag) => bag.penalty <= penalty && bag.cost <= Math.max(0, plan.cost) * 1.25)
    .map((bag) => ({ bag, buys: buysOf(bag) }))
    .filter(({ buys }) => buys.length > 0)
    .sort((a, b) => compare(a.bag, b.bag));
  const earlier = [boughtIn(instance, plan.items).map(({ id }) => id)];
  const found: { buys: string[]; cost: number }[] = [];
  for (;;) {
    const next = good.find(({ buys }) => !earlier.some((whole) => whole.every((id) => buys.includes(id))));
    if (!next) return found;
    earlier.push(next.buys);
    found.push({ buys: [...next.buys].sort(), cost: next.bag.cost });
  }
}

function withoutCandidates(instance: Instance): Instance {
  const items = instance.items.filter(({ origin }) => origin === 'owned');
  const ids = new Set(items.map(({ id }) => id));
  return {
    ...instance,
    items,
    lots: instance.lots.filter(({ origin }) => origin === 'owned'),
    excused: instance.excused.filter((pair) => pair.every((id) => ids.has(id))),
  };
}

describe('alternatives', () => {
  it('are the cheapest bags that hold no earlier purchase whole, each once, with those like them', () => {
    let some = 0;
    for (let seed = 0; seed < runs(1500); seed++) {
      const instance = smallInstance(seed, 6 + (seed % 7));
      const { headline: plan, frontier: curve } = solve(instance);
      if (plan === null || boughtIn(instance, plan.items).length === 0) continue;
      const penalty = Math.max(plan.penalty, MENDED);
      const want = byTrial(instance, plan, penalty, every(instance));
      const groups = alternatives(instance, plan, { most: 1000, penalty, curve });
      const got = groups
        .flatMap(({ point, similar }) => [point, ...similar])
        .map(({ items, cost }) => ({
          buys: boughtIn(instance, items)
            .map(({ id }) => id)
            .sort(),
          cost,
        }));
      expect(new Set(got.map(({ buys }) => buys.join('\n'))).size, `seed ${String(seed)}`).toBe(got.length);
      // What is like the plan itself stands behind the plan, and is not given.
      for (const one of got) expect(want, `seed ${String(seed)}`).toContainEqual(one);
      const alikePlan = boughtIn(instance, plan.items).length;
      // Where a bag that buys nothing mends as well, what buys more is not looked for behind it.
      const isFree = cheapestWithin(withoutCandidates(instance), { penalty }) !== null;
      for (const { buys } of isFree ? [] : want) {
        if (!got.some((one) => one.buys.join() === buys.join())) expect(buys).toHaveLength(alikePlan);
      }
      const costs = groups.map(({ point }) => point.cost);
      expect(costs).toEqual([...costs].sort((a, b) => a - b));
      if (groups.length > 0) some++;
      const first = want.find(({ buys }) => got.some((one) => one.buys.join() === buys.join()));
      if (first) expect(groups[0]?.point.cost).toBe(first.cost);
    }
    expect(some).toBeGreaterThanOrEqual(least(61));
  });
});
