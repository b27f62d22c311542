import { describe, expect, it } from 'vitest';
import { percentOf, purchaseMinor, resaleMinor } from '../../../../src-main/domain/prices/cost.ts';
import type { Archetype } from '../../../../src-main/domain/bag/types.ts';

const costs = { deliveryMinor: 800, regripMinor: 900, sellFeePercent: 12.9, sellPostageMinor: 600 };
const band = { lowMinor: 4000, likelyMinor: 5000, highMinor: 6000 };
const hybrid: Archetype = {
  id: 'hybrid-22-t3',
  kind: 'hybrid',
  loftDeg: 22,
  forgiveness: 3,
  spinTier: 'mid',
  lengthIn: 40,
};

describe('percentOf', () => {
  it.each([
    [1000, 12.5, 125],
    [500, 12.9, 65], // 64.5 rounds up
    [100, 0.5, 1], // .5 rounds up
    [100, 0.49, 0],
    [0, 13, 0],
    [333, 100, 333],
  ])('%d at %d %% is %d', (amount, percent, expected) => {
    expect(percentOf(amount, percent)).toBe(expected);
  });
});

describe('purchaseMinor', () => {
  it('adds delivery once and a grip to a single club', () => {
    expect(purchaseMinor(band, hybrid, costs)).toBe(5000 + 800 + 900);
  });
  it('adds delivery once and a grip for each member of a set', () => {
    const members = ['7', '8', '9'].map((number, i) => ({
      kind: 'iron' as const,
      number,
      loftDeg: 33 + 4 * i,
    }));
    expect(purchaseMinor(band, { ...hybrid, kind: 'irons', members }, costs)).toBe(5000 + 800 + 2700);
  });
});

describe('resaleMinor', () => {
  it('takes fee and postage off', () => {
    expect(resaleMinor(band, costs)).toBe(5000 - 645 - 600);
  });
  it('is never below nothing', () => {
    expect(resaleMinor({ lowMinor: 0, likelyMinor: 300, highMinor: 300 }, costs)).toBe(0);
  });
  it('is nothing for what is not for sale', () => {
    expect(resaleMinor(undefined, costs)).toBe(0);
  });
});
