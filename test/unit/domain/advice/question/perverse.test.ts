import { describe, expect, it } from 'vitest';
import type { BagFile } from '../../../../../src-main/contract/formats/bag-file.ts';
import { readerFor } from '../../../../../src-main/contract/reader.ts';
import { loadCatalogue } from '../../../../../db/catalogue/index.ts';
import { advise } from '../../../../../src-main/domain/advice/advise.ts';
import { english } from '../../../../../src-main/domain/advice/words/en.ts';
import { rewardsLeavingOut } from '../../../../../src-main/domain/advice/question/perverse.ts';
import { prepare } from '../../../../../src-main/domain/advice/question/prepare.ts';
import { headline, type Instance } from '../../../../../src-main/domain/solve/index.ts';
import { bagFile, domainBag, without } from '../../../../support/bags.ts';

const input = (file: BagFile) => ({
  bag: domainBag(file),
  catalogue: loadCatalogue(),
  reader: readerFor(file.units),
  words: english,
  today: '2026-11-26',
});

const rewards = (instance: Instance) => rewardsLeavingOut(instance, headline(instance), 2);

/** A sparse bag: a long driver, three short irons, and a 60° wedge far below them. */
const sparse: BagFile = bagFile(
  {
    clubs: [
      { id: 'driver', kind: 'driver', loftDeg: 9, carry: 278 },
      { id: '7i', kind: 'iron', loftDeg: 33, carry: 166 },
      { id: '8i', kind: 'iron', loftDeg: 37, carry: 153 },
      { id: '9i', kind: 'iron', loftDeg: 41, carry: 141 },
      { id: 'lw', kind: 'wedge', loftDeg: 60, carry: 62 },
      { id: 'putter', kind: 'putter' },
    ],
    prices: [{ archetype: 'fairway-18-t1', low: 50, likely: 60, high: 80 }],
    budget: { amount: 140 },
  },
  { handicap: 4, driverSpeed: 116 },
);

describe('weights by need', () => {
  it('never make it pay to leave good clubs at home', () => {
    const { swaps } = advise(input(sparse));
    expect(swaps.filter((swap) => swap.action === 'drop')).toEqual([]);
  });
  it('are equal where they would, and stay as they are where they would not', () => {
    const weightsOf = (file: BagFile) =>
      new Set(prepare(input(file)).built.instance.bands.map((band) => band.wideWeight));
    expect([...weightsOf(sparse)]).toEqual([2]);
    expect(weightsOf(without(bagFile(), '4h')).size).toBeGreaterThan(1);
  });
  it('the check sees the trap, and only the trap', () => {
    const { instance } = prepare(input(sparse)).built;
    const light = { fromDy: 2000, wideDy: 220, crowdedDy: 60, wideWeight: 1, crowdWeight: 1 };
    const heavy = { fromDy: 0, wideDy: 180, crowdedDy: 60, wideWeight: 4, crowdWeight: 1 };
    expect(rewards({ ...instance, bands: [heavy, light] })).toBe(true);
    expect(rewards(instance)).toBe(false);
  });
});
