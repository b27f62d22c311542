import { describe, expect, it } from 'vitest';
import { knownCurve } from '../../../../../src-main/domain/advice/question/known-curves.ts';
import { SolveStopped } from '../../../../../src-main/domain/solve/index.ts';
import type { Instance } from '../../../../../src-main/domain/solve/instance.ts';
import { curveLimited } from '../../../../../src-main/domain/solve/limited.ts';
import { smallInstance } from '../../../../reference/solve/small-instances.ts';
import { runs } from '../../../../support/runs.ts';

/** How often the solve asks whether it should stop: once where nothing is reckoned. */
function asksOf(instance: Instance): number {
  let asked = 0;
  knownCurve(instance, { shouldStop: () => (asked++, false) });
  return asked;
}

describe('the curve of a question that was asked lately', () => {
  it('is the one that would be found anew, whatever was asked before', () => {
    for (let turn = 0; turn < 2; turn++) {
      for (let seed = 1; seed <= runs(30); seed++) {
        const instance = smallInstance(seed, 9);
        expect(knownCurve(instance)).toEqual(curveLimited(instance));
      }
    }
  });

  it('is not reckoned again for another budget, which stays the asked one', () => {
    const instance = smallInstance(7, 12);
    expect(asksOf({ ...instance, budget: 10 })).toBeGreaterThan(1);
    expect(asksOf({ ...instance, budget: 20 })).toBe(1);
    expect(knownCurve({ ...instance, budget: 30 }).instance.budget).toBe(30);
    expect(knownCurve({ ...instance, budget: null }).curve).toEqual(curveLimited(instance).curve);
  });

  it('is reckoned anew where anything else differs, by a penny or a tenth of a yard', () => {
    const instance = smallInstance(8, 12);
    knownCurve(instance);
    const [first, ...rest] = instance.items;
    if (first === undefined) throw new Error('this instance has items');
    for (const other of [
      { ...instance, items: [{ ...first, carryDy: first.carryDy + 1 }, ...rest] },
      { ...instance, items: [{ ...first, resale: first.resale + 1 }, ...rest] },
      { ...instance, limit: instance.limit - 1 },
      { ...instance, tierWeight: instance.tierWeight + 1 },
    ]) {
      expect(asksOf(other)).toBeGreaterThan(1);
      expect(knownCurve(other)).toEqual(curveLimited(other));
      expect(asksOf(instance)).toBe(1);
    }
  });

  it('is forgotten when four others were asked since', () => {
    const instance = smallInstance(9, 12);
    knownCurve(instance);
    for (let seed = 101; seed <= 103; seed++) knownCurve(smallInstance(seed, 8));
    expect(asksOf(instance)).toBe(1);
    // That was a new question about it, so that it takes four more.
    for (let seed = 104; seed <= 106; seed++) knownCurve(smallInstance(seed, 8));
    expect(asksOf(instance)).toBe(1);
    for (let seed = 107; seed <= 110; seed++) knownCurve(smallInstance(seed, 8));
    expect(asksOf(instance)).toBeGreaterThan(1);
  });

  it('that the limit ended is not kept, since its bound hangs on the budget', () => {
    const hard = smallInstance(10, 12);
    const first = knownCurve(hard, { maxLabels: 1 });
    expect(first.unproven).not.toBeNull();
    expect(asksOf(hard)).toBeGreaterThan(1);
    expect(knownCurve(hard)).toEqual(curveLimited(hard));
  });

  it('is not given to who has stopped asking', () => {
    const instance = smallInstance(11, 12);
    knownCurve(instance);
    expect(() => knownCurve(instance, { shouldStop: () => true })).toThrow(SolveStopped);
  });
});
