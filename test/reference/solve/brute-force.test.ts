import { describe, expect, test } from 'vitest';
import { cheapestClean, evaluate, type Instance, solve } from '../../../src-main/domain/solve/index.ts';
import { boughtIn, every, expected, leastCost } from './brute-force.ts';
import { featuresOf } from './features.ts';
import { shuffled, smallInstance } from './small-instances.ts';
import { isWhole, least, runs } from '../../support/runs.ts';
import { tell } from '../../support/figures.ts';

// Source of every expected value: all bags tried one by one (brute-force.ts), after DESIGN §8.

const INSTANCES = runs(1200);
/** Most plans buy nothing: walk-away prices need more instances. */
const MORE = 2 * INSTANCES;
const SMALLEST = 4;
const SIZES = 9;

const seeds = Array.from({ length: INSTANCES }, (_, seed) => seed);
const sizeOf = (seed: number): number => SMALLEST + (seed % SIZES);

const answersOf = (instance: Instance): unknown => {
  const { walkAway, ...answers } = solve(instance);
  return { ...answers, walkAway: Object.entries(walkAway).sort() };
};

describe(`${INSTANCES} instances of ${SMALLEST} to ${SMALLEST + SIZES - 1} items`, () => {
  const met = new Map<string, number>();

  test('every answer, item lists and walk-away prices included', () => {
    for (const seed of seeds) {
      const instance = smallInstance(seed, sizeOf(seed));
      const all = every(instance);
      const want = expected(instance, all);
      expect(answersOf(instance), `seed ${seed}`).toEqual({ ...want, walkAway: [...want.walkAway].sort() });
      expect(cheapestClean(instance), `seed ${seed}`).toEqual(want.cheapestClean);
      for (const [feature, here] of Object.entries(featuresOf(instance, all, want))) {
        met.set(feature, (met.get(feature) ?? 0) + (here ? 1 : 0));
      }
    }
  });

  test.runIf(isWhole)('the instances meet every feature of the model, each in 5 % of them and more', () => {
    const seldom = [...met].filter(([, times]) => times < INSTANCES * 0.05);
    expect(met.size).toBeGreaterThan(40);
    expect(seldom).toEqual([]);
  });

  test('at price W a purchase is still among the cheapest ways, at W + 1 it is not', () => {
    let checked = 0;
    for (let seed = 0; seed < MORE; seed++) {
      const instance = smallInstance(seed, sizeOf(seed));
      const { headline, walkAway } = solve(instance);
      if (headline === null) continue;
      const bought = boughtIn(instance, headline.items);
      expect(Object.keys(walkAway).sort(), `seed ${seed}`).toEqual(bought.map(({ id }) => id).sort());
      for (const { id, members } of bought) {
        const price = walkAway[id] ?? null;
        if (price === null) continue;
        for (const [at, reaches] of [
          [price, true],
          [price + 1, false],
        ] as const) {
          const priced: Instance = {
            ...instance,
            budget: null,
            items: instance.items.map((x) => (x.id === id ? { ...x, price: at } : x)),
            lots: instance.lots.map((x) => (x.id === id ? { ...x, price: at } : x)),
          };
          const { legal, idsOf } = every(priced);
          const least = leastCost(legal, headline.penalty);
          const anew = solve(priced).frontier.find((point) => point.penalty <= headline.penalty);
          expect(anew?.cost, `seed ${seed}, ${id}`).toBe(least);
          const withIt = legal.filter((bag) => idsOf(bag).some((x) => members.includes(x)));
          expect(leastCost(withIt, headline.penalty) === least, `seed ${seed}, ${id} at ${at}`).toBe(reaches);
        }
        checked++;
      }
    }
    tell('solver against all bags tried one by one: instances, every answer equal', INSTANCES);
    tell('solver against all bags tried one by one: walk-away prices solved again at W and W + 1', checked);
    expect(checked).toBeGreaterThanOrEqual(least(251));
  });

  test('the order of the input changes nothing', () => {
    for (const seed of seeds) {
      const instance = smallInstance(seed, sizeOf(seed));
      expect(answersOf(shuffled(instance, seed + 1)), `seed ${seed}`).toEqual(answersOf(instance));
    }
  });

  test("the product's own evaluation of every bag", () => {
    for (const seed of seeds.slice(0, runs(300))) {
      const instance = smallInstance(seed, 4 + (seed % 5));
      const { legal, idsOf } = every(instance);
      const byIds = new Map(legal.map((bag) => [idsOf(bag).join('\n'), bag]));
      const ids = instance.items.map((x) => x.id);
      for (let mask = 0; mask < 2 ** ids.length; mask++) {
        const bag = ids.filter((_, i) => (mask >> i) & 1).sort();
        const { legal: isLegal, ...verdict } = evaluate(instance, bag);
        const want = byIds.get(bag.join('\n'));
        expect(isLegal, `seed ${seed}`).toBe(want !== undefined);
        if (want === undefined) continue;
        const { cost, penalty, changes, purchases } = want;
        expect(verdict, `seed ${seed}`).toEqual({ cost, penalty, changes, purchases });
      }
    }
  });
});
