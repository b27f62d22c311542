import { describe, expect, it } from 'vitest';
import { solve } from '../../../../src-main/domain/solve/index.ts';
import { solveLimited } from '../../../../src-main/domain/solve/limited.ts';
import { candidate, instance, item, lot } from './instances.ts';
import { smallInstance } from '../../../reference/solve/small-instances.ts';
import { least, runs } from '../../../support/runs.ts';

describe('solveLimited', () => {
  it('is the exact answer where the limit is not met', () => {
    for (let seed = 1; seed <= runs(50); seed++) {
      const instance = smallInstance(seed, 10);
      expect(solveLimited(instance)).toEqual({ instance, solution: solve(instance), unproven: null });
    }
  });
  it('ends at its limit with legal bags of the whole question and a bound that no bag is below', () => {
    let ended = 0;
    for (let seed = 1; seed <= runs(300); seed++) {
      const instance = smallInstance(seed, 11);
      const { solution, unproven } = solveLimited(instance, { maxLabels: 5 });
      if (unproven === null) continue;
      ended++;
      const exact = solve(instance);
      const best = exact.bestWithinBudget;
      if (best) expect(unproven.penaltyAtLeast).toBeLessThanOrEqual(best.penalty);
      if (solution.bestWithinBudget && best)
        expect(solution.bestWithinBudget.penalty).toBeGreaterThanOrEqual(best.penalty);
    }
    expect(ended).toBeGreaterThanOrEqual(least(31));
  });
  it('stands in with the four cheapest sets, ties by id, and all that is owned', () => {
    const sets = ['f', 'd', 'c', 'e', 'a', 'b'];
    const items = [
      item('own', { carryDy: 2000, lot: 'mine' }),
      item('short', { carryDy: 1000 }),
      candidate('single', 9, { carryDy: 1700 }),
      ...sets.map((id, i) => candidate(`${id}:1`, 0, { lot: id, carryDy: 1300 + 60 * i })),
    ];
    const lots = [
      lot('mine', { origin: 'owned', resale: 3 }),
      // a and b cost the least; c to e cost the same, so that c and d come next.
      ...sets.map((id) => lot(id, { price: id < 'c' ? 10 : id < 'f' ? 20 : 30 })),
    ];
    const bands = [{ fromDy: 0, wideDy: 150, crowdedDy: 0, wideWeight: 2, crowdWeight: 0 }];
    const asked = instance(items, { lots, bands, budget: 60 });
    const { instance: smaller, unproven } = solveLimited(asked, { maxLabels: 1 });
    expect(unproven).not.toBeNull();
    expect(smaller.lots.map(({ id }) => id)).toEqual(['mine', 'd', 'c', 'a', 'b']);
    expect(smaller.items.map(({ id }) => id)).toEqual(['own', 'short', 'single', 'd:1', 'c:1', 'a:1', 'b:1']);
    expect(smaller).toMatchObject({ bands, budget: 60 });
  });
  it('still ends at once when it is told to stop', () => {
    expect(() => solveLimited(smallInstance(3, 12), { shouldStop: () => true })).toThrow(/stopped/);
  });
  it('bounds by sets that are free, within the budget and all that owned sets bring', () => {
    // A hole of 300: a club at half way mends it; at a third, half of it. Sets of two are sold and bought whole.
    const items = [
      item('a', { carryDy: 1300 }),
      item('z', { carryDy: 1000 }),
      item('o1', { carryDy: 1300, lot: 'mine' }),
      item('o2', { carryDy: 1000, lot: 'mine' }),
      candidate('half', 60, { carryDy: 1150 }),
      candidate('third', 30, { carryDy: 1200 }),
      candidate('s1', 0, { carryDy: 1300, lot: 'set' }),
      candidate('s2', 0, { carryDy: 1000, lot: 'set' }),
    ];
    const boundAt = (budget: number | null, carryDy = 1300): number | undefined =>
      solveLimited(
        instance(
          items.map((one) => (one.id === 's1' ? { ...one, carryDy } : one)),
          {
            lots: [lot('mine', { origin: 'owned', resale: 20 }), lot('set', { price: 100 })],
            bands: [{ fromDy: 0, wideDy: 150, crowdedDy: 0, wideWeight: 2, crowdWeight: 0 }],
            top: { atLeastDy: 1300, weight: 2 },
            bottom: { atMostDy: 1000, weight: 2 },
            budget,
          },
        ),
        { maxLabels: 1 },
      ).unproven?.penaltyAtLeast;
    // 20 for the owned set come on top of the budget.
    expect(boundAt(40)).toBe(0);
    expect(boundAt(39)).toBe(2 * 50);
    expect(boundAt(10)).toBe(2 * 50);
    expect(boundAt(9)).toBe(2 * 150);
    expect(boundAt(null)).toBe(0);
    // A member of a set that would mend the hole is taken to cost nothing.
    expect(boundAt(0, 1150)).toBe(0);
  });
});
