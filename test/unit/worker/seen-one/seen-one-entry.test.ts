import { describe, expect, it } from 'vitest';
import { headline, solve } from '../../../../src-main/domain/solve/index.ts';
import type { Instance } from '../../../../src-main/domain/solve/instance.ts';
import { purchasesOf } from '../../../../src-main/domain/solve/model/purchases.ts';
import {
  entryPrice,
  headlineAt,
  pricedCurve,
  walkAwayAt,
  withPrice,
} from '../../../../src-main/worker/seen-one/seen-one-entry.ts';
import { smallInstance } from '../../../reference/solve/small-instances.ts';

const purchases = (instance: Instance): string[] => [
  ...instance.items.filter((item) => item.origin === 'candidate' && item.lot === null).map((item) => item.id),
  ...instance.lots
    .filter((lot) => lot.origin === 'candidate' && instance.items.some((item) => item.lot === lot.id))
    .map((lot) => lot.id),
];
const buys = (instance: Instance, id: string): boolean => {
  const point = headline(instance);
  return point !== null && purchasesOf(instance, point.items).includes(id);
};
const PRICES = [0, 1, 2, 3, 4, 5, 6, 7, 8, 10, 12, 15, 20, 30, 45, 70, 100];

/** Small instances with few distinct numbers, where ties abound, each with every purchase that it offers. */
function* cases(from: number, to: number): Generator<[Instance, string]> {
  for (let seed = from; seed < to; seed++) {
    const drawn = smallInstance(seed, 5 + (seed % 6));
    const owned = new Set(drawn.items.filter((item) => item.origin === 'owned').map((item) => item.id));
    // Findings excuse pairs of owned clubs only.
    const excused = drawn.excused.filter((pair) => pair.every((id) => owned.has(id)));
    const instance = { ...drawn, excused };
    for (const id of purchases(instance)) yield [instance, id];
  }
}

describe('the plan as a function of one price', () => {
  it('is what the solver plans when it is asked anew at each price', () => {
    let asked = 0;
    for (const [instance, id] of cases(0, 30)) {
      const curve = pricedCurve(instance, id);
      for (const price of PRICES) {
        const anew = withPrice(instance, id, price);
        const point = headline(anew);
        const told = headlineAt(curve, price);
        expect(told?.point ?? null).toEqual(point);
        expect(told?.buys ?? false).toBe(point !== null && purchasesOf(anew, point.items).includes(id));
        asked++;
      }
    }
    expect(asked).toBeGreaterThan(600);
  });
  it('the price at which a purchase enters: there the solver buys it, one unit above it does not', () => {
    const seen = { never: 0, always: 0, at: 0 };
    for (const [instance, id] of cases(1000, 1090)) {
      const entry = entryPrice(pricedCurve(instance, id));
      if (entry === undefined) {
        expect(buys(withPrice(instance, id, 0), id)).toBe(false);
        seen.never++;
      } else if (entry === null) {
        expect(buys(withPrice(instance, id, 1e9), id)).toBe(true);
        seen.always++;
      } else {
        expect(buys(withPrice(instance, id, entry), id)).toBe(true);
        expect(buys(withPrice(instance, id, entry + 1), id)).toBe(false);
        seen.at++;
      }
    }
    expect(Math.min(seen.never, seen.always, seen.at)).toBeGreaterThan(8);
  });
  it('its walk-away price is the solver’s, where the plan buys it', () => {
    let checked = 0;
    for (const [instance, id] of cases(2000, 2100)) {
      const price = instance.items.find((item) => item.id === id)?.price ?? 0;
      const anew = withPrice(instance, id, price);
      const { headline: plan, walkAway } = solve(anew);
      if (plan === null || !purchasesOf(anew, plan.items).includes(id)) continue;
      expect(walkAwayAt(pricedCurve(instance, id), plan, price)).toBe(walkAway[id]);
      checked++;
    }
    expect(checked).toBeGreaterThan(12);
  });
});
