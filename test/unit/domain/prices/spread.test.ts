import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  amountAtChance,
  chanceAtMost,
  spreadOf,
  type Part,
} from '../../../../src-main/domain/prices/chance.ts';

const band = (lowMinor: number, likelyMinor: number, highMinor: number, factor = 1): Part => ({
  kind: 'band',
  band: { lowMinor, likelyMinor, highMinor },
  factor,
});
const sure = (minor: number): Part => ({ kind: 'points', points: [{ minor, chance: 1 }] });

describe('the spread of a sum', () => {
  it('ends where all parts are at their best and at their worst; a sale counts the other way round', () => {
    const { lowMinor, highMinor } = spreadOf([
      band(4000, 5000, 7000),
      band(2000, 2500, 3000, -0.9),
      sure(600),
    ]);
    expect(lowMinor).toBeCloseTo(4000 - 2700 + 600, 9);
    expect(highMinor).toBeCloseTo(7000 - 1800 + 600, 9);
  });
  it('is nothing below its least and all at its most, and an even band is halved by its middle', () => {
    const { atMost } = spreadOf([band(4000, 5000, 6000), sure(100)]);
    expect(atMost(4099)).toBe(0);
    expect(atMost(5100)).toBeCloseTo(0.5, 6);
    expect(atMost(6101)).toBeCloseTo(1, 9);
  });
  it('of sure parts alone is one step', () => {
    const { lowMinor, highMinor, atMost } = spreadOf([band(500, 500, 500), sure(25)]);
    expect([lowMinor, highMinor, atMost(524), atMost(525)]).toEqual([525, 525, 0, 1]);
  });
});

const bands = fc.array(
  fc
    .tuple(fc.nat(20_000), fc.nat(5_000), fc.nat(5_000), fc.constantFrom(1, -0.87))
    .map(([low, a, b, factor]) => band(low, low + a, low + a + b, factor)),
  { minLength: 1, maxLength: 3 },
);

describe('amountAtChance', () => {
  it('is the least whole amount with that chance', () => {
    fc.assert(
      fc.property(bands, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (parts, chance) => {
        const spread = spreadOf(parts);
        const amount = amountAtChance(spread, chance);
        expect(Number.isInteger(amount)).toBe(true);
        expect(chanceAtMost(parts, amount)).toBeGreaterThanOrEqual(chance - 1e-9);
        expect(chanceAtMost(parts, amount - 1)).toBeLessThan(chance);
      }),
      { seed: 11, numRuns: 60 },
    );
  });
  it('of a sure cost is that cost, at any chance', () => {
    expect(amountAtChance(spreadOf([sure(1234)]), 0.01)).toBe(1234);
    expect(amountAtChance(spreadOf([sure(-50)]), 0.99)).toBe(-50);
  });
});
