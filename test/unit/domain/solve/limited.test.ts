import { describe, expect, it } from 'vitest';
import { solve } from '../../../../src-main/domain/solve/index.ts';
import { solveLimited } from '../../../../src-main/domain/solve/limited.ts';
import { smallInstance } from '../../../reference/solve/small-instances.ts';
import { runs } from '../../../support/runs.ts';

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
    expect(ended).toBeGreaterThan(runs(30));
  });
  it('still ends at once when it is told to stop', () => {
    expect(() => solveLimited(smallInstance(3, 12), { shouldStop: () => true })).toThrow(/stopped/);
  });
});
