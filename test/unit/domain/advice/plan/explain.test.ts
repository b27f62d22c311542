import { describe, expect, it } from 'vitest';
import { explain } from '../../../../../src-main/domain/advice/plan/explain.ts';
import { solve, type Instance, type Item } from '../../../../../src-main/domain/solve/index.ts';

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
