import { describe, expect, it } from 'vitest';
import { amountAtChance, chanceAtMost, spreadOf, type Part } from '../../../src-main/domain/prices/chance.ts';
import { mulberry32 } from '../../support/random.ts';

const band = (lowMinor: number, likelyMinor: number, highMinor: number, factor = 1): Part => ({
  kind: 'band',
  band: { lowMinor, likelyMinor, highMinor },
  factor,
});

/** Gamma(shape ≥ 1) by Marsaglia & Tsang 2000; a beta draw is a ratio of two. Independent of the product's code. */
function drawer(seed: number) {
  const random = mulberry32(seed);
  const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  const gamma = (shape: number): number => {
    const d = shape - 1 / 3;
    const c = 1 / Math.sqrt(9 * d);
    for (;;) {
      const x = normal();
      const v = (1 + c * x) ** 3;
      if (v > 0 && Math.log(1 - random()) < 0.5 * x * x + d - d * v + d * Math.log(v)) return d * v;
    }
  };
  return ({ low, likely, high, factor }: { low: number; likely: number; high: number; factor: number }) => {
    const x = gamma(1 + (4 * (likely - low)) / (high - low));
    const y = gamma(1 + (4 * (high - likely)) / (high - low));
    return factor * (low + ((high - low) * x) / (x + y));
  };
}

describe('chance in budget against Monte Carlo, 10^6 seeded draws', () => {
  const cases: [string, { low: number; likely: number; high: number; factor: number }[], number[]][] = [
    ['one band', [{ low: 4000, likely: 5000, high: 7000, factor: 1 }], [4500, 5100, 6000]],
    [
      'three bands and a sale less 13 %',
      [
        { low: 4000, likely: 5500, high: 7500, factor: 1 },
        { low: 3500, likely: 5000, high: 7000, factor: 1 },
        { low: 14000, likely: 18000, high: 23000, factor: 1 },
        { low: 6000, likely: 8000, high: 11000, factor: -0.87 },
      ],
      [20000, 21500, 23000],
    ],
    [
      'a narrow band beside a wide one',
      [
        { low: 5000, likely: 5100, high: 5200, factor: 1 },
        { low: 10000, likely: 12000, high: 20000, factor: 1 },
      ],
      [16000, 17500, 20000],
    ],
  ];
  it.each(cases)('%s: within .003', (_name, bands, limits) => {
    const draw = drawer(20261126);
    const hits = limits.map(() => 0);
    const draws = 1_000_000;
    for (let i = 0; i < draws; i++) {
      let sum = 0;
      for (const one of bands) sum += draw(one);
      limits.forEach((limit, at) => {
        if (sum <= limit) hits[at] = (hits[at] ?? 0) + 1;
      });
    }
    const parts = bands.map(({ low, likely, high, factor }) => band(low, likely, high, factor));
    limits.forEach((limit, at) => {
      expect(Math.abs(chanceAtMost(parts, limit) - (hits[at] ?? 0) / draws)).toBeLessThan(0.003);
    });
  });
});

it('the amount that is enough four times in five, against the sorted draws of two bands and a sale', () => {
  const bands = [
    { low: 4000, likely: 5500, high: 7500, factor: 1 },
    { low: 14000, likely: 18000, high: 23000, factor: 1 },
    { low: 6000, likely: 8000, high: 11000, factor: -0.87 },
  ];
  const draw = drawer(20261127);
  const sums = Float64Array.from({ length: 400_000 }, () => bands.reduce((sum, one) => sum + draw(one), 0));
  sums.sort();
  const spread = spreadOf(bands.map(({ low, likely, high, factor }) => band(low, likely, high, factor)));
  // The standard error of this quantile is about 4 minor units.
  expect(Math.abs(amountAtChance(spread, 0.8) - (sums[320_000] ?? NaN))).toBeLessThan(20);
});

describe('two-point prices: equal to the exact sum', () => {
  const two = (a: number, b: number, chance: number): Part => ({
    kind: 'points',
    points: [
      { minor: a, chance },
      { minor: b, chance: 1 - chance },
    ],
  });
  it('of three clubs, at every step of the sum', () => {
    const parts = [two(100, 200, 0.5), two(30, 50, 0.25), two(7, 9, 0.125)];
    // All eight sums by hand: 137 139 157 159 237 239 257 259
    const exact: [number, number][] = [
      [136, 0],
      [137, 0.015625],
      [139, 0.125],
      [157, 0.171875],
      [159, 0.5],
      [237, 0.515625],
      [258, 0.671875],
      [259, 1],
    ];
    for (const [limit, chance] of exact) expect(chanceAtMost(parts, limit)).toBe(chance);
  });
  it('a sure price is in budget when it is the budget', () => {
    expect(chanceAtMost([band(500, 500, 500)], 500)).toBe(1);
    expect(chanceAtMost([band(500, 500, 500)], 499)).toBe(0);
  });
  it('no purchase costs nothing', () => {
    expect(chanceAtMost([], 0)).toBe(1);
  });
});
