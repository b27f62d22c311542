import { describe, expect, it } from 'vitest';
import {
  cheapestClean,
  frontier,
  solve,
  type Instance,
  type Point,
} from '../../../src-main/domain/solve/index.ts';
import { realistic } from '../../bench/support/solve-instances.ts';
import { mulberry32 } from '../../support/random.ts';
import { priced } from './highs/answers.ts';
import { mixedInstance } from './highs/instances.ts';

/*
 * What must hold between the answers of two instances, whatever the answers are. Source of each: DESIGN §8's words; a
 * change that only adds bags, or only makes some of them cheaper, cannot make a least cost higher.
 */

const SEEDS = Array.from({ length: 250 }, (_, i) => i + 5000);

const clean = (instance: Instance): number => cheapestClean(instance)?.cost ?? Number.POSITIVE_INFINITY;

/** The points of `curve` that no point of `other` reaches at the same or a lower cost and penalty. */
const unreached = (curve: readonly Point[], other: readonly Point[]): Point[] =>
  curve.filter((point) => !other.some(({ cost, penalty }) => cost <= point.cost && penalty <= point.penalty));

/** Clubs bought singly and sets: everything that has a price. */
const forSale = ({ items, lots }: Instance) => [
  ...items.filter((item) => item.origin === 'candidate' && item.lot === null),
  ...lots.filter((lot) => lot.origin === 'candidate'),
];

const withoutItem = (instance: Instance, id: string): Instance => ({
  ...instance,
  items: instance.items.filter((item) => item.id !== id),
  excused: instance.excused.filter((pair) => !pair.includes(id)),
});

function shuffle<T>(random: () => number, list: readonly T[]): T[] {
  return list
    .map((value) => ({ value, at: random() }))
    .sort((a, b) => a.at - b.at)
    .map(({ value }) => value);
}

describe('answers of related instances', () => {
  it('are never worse for more budget', () => {
    let bettered = 0;
    for (const seed of SEEDS) {
      const instance = { ...mixedInstance(seed), budget: 0 };
      const sums = [0, 1, 37, 500, 5000, 40_000, 10 ** 7];
      const best = [...sums, null].map((budget) => solve({ ...instance, budget }).bestWithinBudget);
      best.forEach((point, i) => {
        const before = best[i - 1];
        if (!before) return;
        const better = point !== null && point.penalty < before.penalty;
        if (better) bettered += 1;
        // No better: then not another bag either, as the least of the larger budget's is the smaller's too.
        else expect({ seed, budget: sums[i], point }).toEqual({ seed, budget: sums[i], point: before });
      });
    }
    expect(bettered).toBeGreaterThan(50);
  });

  it('never cost more when a club or set is cheaper', () => {
    let cheaper = 0;
    for (const seed of SEEDS) {
      const instance = mixedInstance(seed);
      const before = frontier(instance);
      const least = clean(instance);
      for (const { id, price } of forSale(instance).filter((sale) => sale.price > 0)) {
        const discounted = priced(instance, id, Math.floor(price / 2));
        const after = clean(discounted);
        expect({ seed, id, dearer: after > least }).toEqual({ seed, id, dearer: false });
        expect({ seed, id, lost: unreached(before, frontier(discounted)) }).toEqual({ seed, id, lost: [] });
        if (after < least) cheaper += 1;
      }
    }
    expect(cheaper).toBeGreaterThan(30);
  });

  it('never cost less when a candidate is gone', () => {
    let dearer = 0;
    for (const seed of SEEDS) {
      const instance = mixedInstance(seed);
      const before = frontier(instance);
      const least = clean(instance);
      for (const { id } of instance.items.filter((item) => item.origin === 'candidate')) {
        const fewer = withoutItem(instance, id);
        const after = clean(fewer);
        expect({ seed, id, cheaper: after < least }).toEqual({ seed, id, cheaper: false });
        expect({ seed, id, gained: unreached(frontier(fewer), before) }).toEqual({ seed, id, gained: [] });
        if (after > least) dearer += 1;
      }
    }
    expect(dearer).toBeGreaterThan(30);
  });

  it('never have fewer ways when the limit is higher', () => {
    for (const seed of SEEDS) {
      const instance = mixedInstance(seed);
      const roomier = { ...instance, limit: instance.limit + 1 };
      expect({ seed, lost: unreached(frontier(instance), frontier(roomier)) }).toEqual({ seed, lost: [] });
    }
  });

  it('cost three times as much in money three times as small', () => {
    for (const seed of SEEDS.slice(0, 120)) {
      const instance = mixedInstance(seed);
      const tripled: Instance = {
        ...instance,
        items: instance.items.map((item) => ({ ...item, price: item.price * 3, resale: item.resale * 3 })),
        lots: instance.lots.map((lot) => ({ ...lot, price: lot.price * 3, resale: lot.resale * 3 })),
        budget: instance.budget === null ? null : instance.budget * 3,
      };
      const dear = (point: Point | null) => point && { ...point, cost: point.cost * 3 };
      const solution = solve(instance);
      expect({ seed, ...solve(tripled) }).toEqual({
        seed,
        today: dear(solution.today),
        cheapestClean: dear(solution.cheapestClean),
        bestWithinBudget: dear(solution.bestWithinBudget),
        headline: dear(solution.headline),
        frontier: solution.frontier.map(dear),
        walkAway: Object.fromEntries(
          Object.entries(solution.walkAway).map(([id, price]) => [id, price === null ? null : price * 3]),
        ),
      });
    }
  });

  const permuted: [name: string, instance: Instance][] = [
    ...[39, 49, 59, 99, 239, 379].map((seed): [string, Instance] => [
      `mixed ${String(seed)}`,
      mixedInstance(seed),
    ]),
    ['realistic 24', realistic(2, 24)],
    ['realistic 40', realistic(4, 40)],
  ];
  it.each(permuted)('are the same in any order of the input: 100 permutations of %s', (_, instance) => {
    const random = mulberry32(100);
    const answer = solve(instance);
    expect(answer.frontier.length).toBeGreaterThan(4);
    for (let i = 0; i < 100; i += 1) {
      const other: Instance = {
        ...instance,
        items: shuffle(random, instance.items),
        lots: shuffle(random, instance.lots),
        excused: shuffle(random, instance.excused),
        leastTier: Object.fromEntries(shuffle(random, Object.entries(instance.leastTier))),
      };
      expect(solve(other)).toEqual(answer);
    }
  });
});
