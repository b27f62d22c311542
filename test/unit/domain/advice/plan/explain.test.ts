import { describe, expect, it } from 'vitest';
import { explain } from '../../../../../src-main/domain/advice/plan/explain.ts';
import {
  solve,
  type Instance,
  type Item,
  type Point,
  type Solution,
} from '../../../../../src-main/domain/solve/index.ts';

const item = (id: string, carryDy: number, more: Partial<Item> = {}): Item => ({
  id,
  origin: 'owned',
  kind: 'iron',
  carryDy,
  tier: null,
  misfit: 0,
  locked: false,
  lot: null,
  price: 0,
  resale: 0,
  ...more,
});
const buy = (id: string, carryDy: number, price: number) => item(id, carryDy, { origin: 'candidate', price });
const question = (items: Item[], budget: number | null): Instance => ({
  limit: 14,
  items,
  lots: [],
  bands: [{ fromDy: 0, wideDy: 150, crowdedDy: 50, wideWeight: 2, crowdWeight: 1 }],
  firstPair: null,
  top: { atLeastDy: 1600, weight: 2 },
  bottom: { atMostDy: 1000, weight: 2 },
  excused: [],
  leastTier: {},
  tierWeight: 0,
  budget,
  basis: 'net',
});
// 160 and 100 yd owned, 60 yd apart, 15 the limit: three clubs would make it clean.
const owned = [item('a', 1600), item('z', 1000)];

describe('explain', () => {
  it('tells what a purchase removes and what the best plan without it is', () => {
    const instance = question([...owned, buy('mid', 1300, 40), buy('off', 1400, 30)], 100);
    const solution = solve(instance);
    expect(solution.headline?.items).toContain('mid');
    const { purchases, cheapestHelp } = explain(instance, solution);
    expect(cheapestHelp).toBeNull();
    const mid = purchases.find((one) => one.id === 'mid');
    expect(mid?.removes).toBeGreaterThan(0);
    expect(mid?.without?.buys).toEqual(['off']);
    expect(mid?.without?.penalty).toBeGreaterThan(solution.headline?.penalty ?? Infinity);
  });
  it('what a purchase removes is told against what the plan leaves', () => {
    // 60 yd, 15 usual: 900 of penalty; halved, two gaps of 30 leave 600.
    const instance = question([...owned, buy('mid', 1300, 40)], 100);
    const solution = solve(instance);
    expect(solution.headline?.penalty).toBe(600);
    expect(explain(instance, solution).purchases).toEqual([
      { id: 'mid', removes: 300, without: { cost: 0, penalty: 900, buys: [] } },
    ]);
  });
  it('shows the next step up the curve, beyond the budget too', () => {
    const instance = question([...owned, buy('b', 1300, 40), buy('c', 1450, 500), buy('d', 1150, 500)], 100);
    const solution = solve(instance);
    const { nextStep } = explain(instance, solution);
    expect(nextStep?.cost).toBeGreaterThan(solution.headline?.cost ?? 0);
    expect(nextStep?.penalty).toBeLessThan(solution.headline?.penalty ?? 0);
  });
  it('names the cheapest thing that would help when nothing is bought', () => {
    const instance = question([...owned, buy('b', 1300, 400)], 10);
    const solution = solve(instance);
    expect(explain(instance, solution)).toMatchObject({
      purchases: [],
      cheapestHelp: { cost: 400, buys: ['b'] },
    });
  });
  it('has nothing to name where nothing is priced', () => {
    const instance = question(owned, 10);
    expect(explain(instance, solve(instance))).toEqual({ purchases: [], nextStep: null, cheapestHelp: null });
  });
});

describe('a plan that is not on the curve', () => {
  const instance = question([...owned, buy('b', 1300, 30), buy('c', 1450, 60)], 100);
  const point = (cost: number, penalty: number, ...items: string[]): Point => ({
    cost,
    penalty,
    changes: items.length,
    items: ['a', 'z', ...items],
  });
  const curve = [point(0, 600), point(30, 400, 'b'), point(60, 100, 'b', 'c')];
  const told = (headline: Point | null, more: Partial<Solution> = {}) =>
    explain(instance, {
      today: point(0, 600),
      cheapestClean: null,
      bestWithinBudget: null,
      headline,
      frontier: curve,
      walkAway: {},
      ...more,
    });
  it('has for its next step the first that costs more and leaves less wrong', () => {
    const next = (cost: number, penalty: number) => told(point(cost, penalty)).nextStep?.cost;
    expect(next(0, 600)).toBe(30);
    expect([next(20, 300), next(20, 400)]).toEqual([60, 60]);
    expect([next(35, 500), next(30, 500)]).toEqual([60, 60]);
    expect([next(60, 200), next(70, 50)]).toEqual([undefined, undefined]);
    expect(told(point(0, 600)).nextStep).toEqual({ cost: 30, penalty: 400, buys: ['b'] });
  });
  it('help is what leaves less wrong than today, not as much; without a legal bag today, than the curve’s first', () => {
    const swap = point(-5, 600, 'b');
    const help = (more: Partial<Solution>) => told(point(0, 600), more).cheapestHelp;
    expect(help({ frontier: [swap, ...curve.slice(1)] })?.cost).toBe(30);
    expect(help({ today: point(0, 90) })).toBeNull();
    expect(help({ today: null })?.cost).toBe(30);
    // Nor what costs nothing to buy.
    expect(help({ frontier: [point(0, 300), ...curve.slice(2)] })?.cost).toBe(60);
  });
  it('is nothing where there is none', () => {
    expect(told(null)).toEqual({ purchases: [], nextStep: null, cheapestHelp: null });
  });
});

it('a set is one purchase: without it all of its clubs are out', () => {
  const member = (id: string, carryDy: number) => item(id, carryDy, { origin: 'candidate', lot: 'set' });
  const instance: Instance = {
    ...question([...owned, member('s1', 1450), member('s2', 1300), member('s3', 1150)], 100),
    lots: [{ id: 'set', origin: 'candidate', price: 50, resale: 0 }],
  };
  const solution = solve(instance);
  // 600 tenths apart less 150 that are usual, at 2 each.
  expect(explain(instance, solution).purchases).toEqual([
    { id: 'set', removes: 900, without: { cost: 0, penalty: 900, buys: [] } },
  ]);
});
