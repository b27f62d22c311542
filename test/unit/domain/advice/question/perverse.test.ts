import { describe, expect, it } from 'vitest';
import type { BagFile } from '../../../../../src-main/contract/formats/bag-file.ts';
import { readerFor } from '../../../../../src-main/contract/reader.ts';
import { loadCatalogue } from '../../../../../db/catalogue/index.ts';
import { advise } from '../../../../../src-main/domain/advice/advise.ts';
import { english } from '../../../../../src-main/domain/advice/words/en.ts';
import { rewardsLeavingOut } from '../../../../../src-main/domain/advice/question/perverse.ts';
import { prepare } from '../../../../../src-main/domain/advice/question/prepare.ts';
import { headline, type Instance, type Item } from '../../../../../src-main/domain/solve/index.ts';
import { bagFile, domainBag, without } from '../../../../support/bags.ts';
import { candidate, instance, item, lot } from '../../solve/instances.ts';

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

describe('what a plan leaves out for nothing', () => {
  // 200 and 160 yd, 15 usual: 25 yd too wide, 500 at equal weights; x leaves 200 of it.
  const bands = [{ fromDy: 0, wideDy: 150, crowdedDy: 50, wideWeight: 1, crowdWeight: 1 }];
  const ends = [item('a', { carryDy: 2000 }), item('z', { carryDy: 1600 })];
  const plan = { cost: 0, penalty: 0, changes: 0, items: ['a', 'z'] };
  const asked = (items: Item[], more: Partial<Instance> = {}) =>
    rewardsLeavingOut(instance([...ends, ...items], { bands, ...more }), plan, 2);
  const x = (more: Partial<Item> = {}) => item('x', { carryDy: 1800, ...more });
  it('is an owned club that would make the bag better', () => {
    expect(asked([x()])).toBe(true);
    expect(asked([])).toBe(false);
    // What is worse to have than the gap: too near, or unfit.
    expect(asked([x({ misfit: 301 })])).toBe(false);
    expect(asked([x({ misfit: 300 })])).toBe(false);
    expect(asked([x({ misfit: 299 })])).toBe(true);
  });
  it('is none that would have to be bought, or that is sold, alone or with its set', () => {
    expect(asked([candidate('x', 10, { carryDy: 1800 })])).toBe(false);
    expect(asked([x({ resale: 5 })])).toBe(false);
    const sets = { lots: [lot('set', { origin: 'owned', resale: 20 })] };
    expect(asked([x({ lot: 'set' })], sets)).toBe(false);
  });
  it('is none that the fourteen have no place for', () => {
    expect(asked([x()], { limit: 3 })).toBe(true);
    expect(asked([x()], { limit: 2 })).toBe(false);
  });
  it('may be two that do so only together, beside a putter that is not wanted', () => {
    // Either alone narrows the gap by 5 yd, 100 of penalty, and is unfit by 150; the pair of them is excused.
    const two = [x({ carryDy: 1950, misfit: 150 }), item('y', { carryDy: 1650, misfit: 150 })];
    const putters = [item('p', { kind: 'putter', carryDy: 0 }), item('q', { kind: 'putter', carryDy: 0 })];
    const excused: [string, string][] = [['x', 'y']];
    expect(asked(two, { excused })).toBe(true);
    expect(asked(two)).toBe(false);
    const withPutter = { ...plan, items: [...plan.items, 'p'] };
    const bag = instance([...ends, ...two, ...putters], { bands, excused });
    expect(rewardsLeavingOut(bag, withPutter, 2)).toBe(true);
  });
  it('is nothing where there is no plan', () => {
    expect(rewardsLeavingOut(instance([...ends, x()], { bands }), null, 2)).toBe(false);
  });
});
