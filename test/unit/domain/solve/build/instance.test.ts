import { describe, expect, it } from 'vitest';
import type { BagFile } from '../../../../../src-main/contract/formats/bag-file.ts';
import { buildInstance, type BuildInput } from '../../../../../src-main/domain/solve/build/instance.ts';
import { readInstance } from '../../../../../src-main/domain/solve/model/read.ts';
import { bagFile, viewOf, withClub, without } from '../../../../support/bags.ts';

// Every figure below is reckoned by hand from DESIGN §8, “Building the instance” and “Defaults”, for 90 mph.
const build = (file: BagFile, more: Partial<BuildInput> = {}) => {
  const { bag, model, ladder, catalogue, limits, least, conventions } = viewOf(file);
  return buildInstance({
    bag,
    model,
    ladder,
    catalogue,
    limits,
    least,
    weights: conventions.weights,
    excused: [],
    misfits: new Map(),
    candidateMisfits: new Map(),
    wideWeights: [{ fromYd: 0, weight: 2 }],
    tierWeight: 40,
    ...more,
  });
};
const instanceOf = (file: BagFile, more: Partial<BuildInput> = {}) => build(file, more).instance;
const itemOf = (file: BagFile, id: string, more: Partial<BuildInput> = {}) =>
  instanceOf(file, more).items.find((item) => item.id === id);

describe('a usual bag', () => {
  it('has its limits, anchors and tiers', () => {
    const { items, lots, ...rest } = instanceOf(bagFile());
    expect(rest).toEqual({
      limit: 14,
      // Long clubs: from .70 of the driver's 201 yd.
      bands: [
        { fromDy: 0, wideDy: 160, crowdedDy: 50, wideWeight: 2, crowdWeight: 1 },
        { fromDy: 1407, wideDy: 200, crowdedDy: 50, wideWeight: 2, crowdWeight: 1 },
      ],
      firstPair: { wideDy: 460, secondAtLeastDy: 1770 },
      // 201 less 4 %, which is more than 8 yd.
      top: { atLeastDy: 1930, weight: 2 },
      bottom: { atMostDy: 850, weight: 2 },
      excused: [],
      // Handicap 15: tier 3.
      leastTier: { driver: 1, fairway: 1, hybrid: 2, iron: 2 },
      tierWeight: 40,
      budget: null,
      basis: 'net',
    });
    expect(items).toHaveLength(12);
    expect(lots).toEqual([]);
  });
  it('gives each club as an owned item, the putter off the ladder and tied down', () => {
    const clubs = { '4h': { forgiveness: 3 as const, goTo: true, sell: { low: 20, likely: 30, high: 40 } } };
    const file = withClub(bagFile(), '4h', clubs['4h']);
    const free = { tier: null, misfit: 0, lot: null, price: 0, resale: 0 };
    expect(itemOf(file, 'own:4h', { misfits: new Map([['4h', 60]]) })).toEqual({
      ...free,
      id: 'own:4h',
      origin: 'owned',
      kind: 'hybrid',
      carryDy: 1620,
      tier: 3,
      misfit: 60,
      locked: true,
      resale: 3000,
    });
    expect(itemOf(withClub(file, 'putter', { forgiveness: 2 }), 'own:putter')).toEqual({
      ...free,
      id: 'own:putter',
      origin: 'owned',
      kind: 'putter',
      carryDy: 0,
      locked: true,
    });
    expect(itemOf(file, 'own:5i')).toMatchObject({ locked: false, tier: null });
  });
  it('excuses owned pairs, and is read back as it is', () => {
    const instance = instanceOf(bagFile(), { excused: [['driver', '5w']] });
    expect(instance.excused).toEqual([['own:driver', 'own:5w']]);
    expect(readInstance(instance)).toEqual(instance);
  });
});

describe('limit', () => {
  it('keeps a place for a putter that is not listed, and for each club that nothing places', () => {
    expect(instanceOf(without(bagFile(), 'putter')).limit).toBe(13);
    const unknown = { id: 'mystery', kind: 'hybrid' as const };
    const file = bagFile({ clubs: [...bagFile().clubs, unknown] });
    expect(instanceOf(file).limit).toBe(13);
    expect(itemOf(file, 'own:mystery')).toBeUndefined();
    expect(instanceOf(without(file, 'putter')).limit).toBe(12);
  });
  it('is not raised by clubs that may go', () => {
    const many = Array.from({ length: 16 }, (_, i) => ({
      id: `c${String(i)}`,
      kind: 'iron' as const,
      loftDeg: 18 + 2 * i,
      carry: 210 - 8 * i,
      goTo: i < 3,
    }));
    expect(instanceOf(bagFile({ clubs: many })).limit).toBe(13);
  });
  it('is never below what is kept', () => {
    const kept = Array.from({ length: 14 }, (_, i) => ({
      id: `c${String(i)}`,
      kind: 'iron' as const,
      loftDeg: 18 + 3 * i,
      carry: 210 - 10 * i,
      goTo: true,
    }));
    expect(instanceOf(bagFile({ clubs: kept })).limit).toBe(14);
    expect(instanceOf(bagFile({ clubs: kept.slice(1) })).limit).toBe(13);
  });
});

describe('putters', () => {
  const second = { id: 'old', kind: 'putter' as const };
  it('the only one stays unless it may change', () => {
    expect(itemOf(bagFile(), 'own:putter')?.locked).toBe(true);
    expect(itemOf(bagFile({ choices: { changePutter: true } }), 'own:putter')?.locked).toBe(false);
  });
  it('of two one has to go: only a go-to is tied down', () => {
    const two = bagFile({ clubs: [...bagFile().clubs, second] });
    expect(itemOf(two, 'own:putter')?.locked).toBe(false);
    expect(itemOf(two, 'own:old')?.locked).toBe(false);
    expect(itemOf(withClub(two, 'old', { goTo: true }), 'own:old')?.locked).toBe(true);
  });
});

describe('bands', () => {
  it('change where limit or weight changes, each place once', () => {
    const wideWeights = [
      { fromYd: 0, weight: 3 },
      { fromYd: 100, weight: 1 },
      { fromYd: 140.7, weight: 4 },
      { fromYd: 160, weight: 2 },
    ];
    const { bands, top, bottom } = instanceOf(bagFile(), { wideWeights });
    expect(bands.map(({ fromDy, wideDy, wideWeight }) => [fromDy, wideDy, wideWeight])).toEqual([
      [0, 160, 3],
      [1000, 160, 1],
      [1407, 200, 4],
      [1600, 200, 2],
    ]);
    // Anchors weigh as much as the heaviest band.
    expect([top.weight, bottom.weight]).toEqual([4, 4]);
  });
  it('are without a long end, and without anchors, where no carry is known', () => {
    const { driverSpeed: _speed, ...player } = bagFile().player;
    const unknown = { ...bagFile({ clubs: [{ id: 'x', kind: 'iron' }] }), player };
    const { bands, top, bottom, firstPair, items } = instanceOf(unknown);
    expect(bands.map(({ fromDy }) => fromDy)).toEqual([0]);
    expect([top, bottom]).toEqual([
      { atLeastDy: 0, weight: 0 },
      { atMostDy: 0, weight: 0 },
    ]);
    expect([firstPair, items]).toEqual([null, []]);
  });
});

describe('top', () => {
  it('allows 8 yd below a short driver', () => {
    expect(instanceOf(withClub(bagFile(), 'driver', { carry: 190 })).top.atLeastDy).toBe(1820);
  });
  it('is the longest club where no driver is owned', () => {
    // With one, its own carry counts, whatever its loft: .70 of 230 yd.
    const far = instanceOf(withClub(bagFile(), 'driver', { carry: 230, loftDeg: 13 }));
    expect(far.bands[1]?.fromDy).toBe(1610);
    const { top, bands } = instanceOf(without(bagFile(), 'driver'));
    expect(top).toEqual({ atLeastDy: 1770, weight: 2 });
    // Long clubs still go by a driver, the modelled one, and not by the longest club's 177 yd.
    expect(bands[1]?.fromDy).toBeGreaterThan(0.7 * 1850);
  });
  it('is the modelled driver where nothing is owned', () => {
    const file = bagFile({ clubs: [] });
    const { top, bands } = instanceOf(file);
    const longFromDy = bands[1]?.fromDy ?? 0;
    const driverYd = longFromDy / 7;
    expect(driverYd).toBeGreaterThan(180);
    expect(driverYd).toBeLessThan(210);
    expect(Math.abs(top.atLeastDy / 10 - (driverYd - Math.max(8, 0.04 * driverYd)))).toBeLessThan(0.2);
    expect(top.weight).toBe(2);
  });
});

describe('bottom', () => {
  it('is the shortest wedge of 60° or less with 5 yd', () => {
    const lob = (loftDeg: number) => ({ id: 'lw', kind: 'wedge' as const, loftDeg, carry: 70 });
    const more = (loftDeg: number) => bagFile({ clubs: [...bagFile().clubs, lob(loftDeg)] });
    expect(instanceOf(more(60)).bottom).toEqual({ atMostDy: 750, weight: 2 });
    expect(instanceOf(more(61)).bottom).toEqual({ atMostDy: 850, weight: 2 });
    const { loftDeg: _loft, ...unknown } = lob(60);
    expect(instanceOf(bagFile({ clubs: [...bagFile().clubs, unknown] })).bottom.atMostDy).toBe(750);
  });
  it('is the modelled 55° without a wedge', () => {
    const atMostYd = instanceOf(without(bagFile(), 'pw', 'gw', 'sw')).bottom.atMostDy / 10;
    expect(atMostYd).toBeGreaterThan(70);
    expect(atMostYd).toBeLessThan(90);
  });
});

describe('firstPair', () => {
  it('asks for the longest club that is neither a driver nor a misfit', () => {
    const misfits = new Map([['5w', 60]]);
    expect(instanceOf(bagFile(), { misfits }).firstPair?.secondAtLeastDy).toBe(1620);
  });
});

describe('money', () => {
  const prices = [
    { archetype: 'hybrid-25-t3', low: 30, likely: 45, high: 70 },
    { archetype: 'irons-5-pw-33-t3', low: 100, likely: 150, high: 200 },
    { archetype: 'no-such-club', low: 1, likely: 1, high: 1 },
  ];
  const costs = { delivery: 6, regrip: 8, sellFeePercent: 10, sellPostage: 4 };
  it('a purchase is the likely price with delivery once and a grip a club', () => {
    const { instance, candidates } = build(bagFile({ prices, costs }));
    const bought = instance.items.filter(({ origin }) => origin === 'candidate');
    expect(bought[0]).toMatchObject({
      id: 'buy:hybrid-25-t3',
      kind: 'hybrid',
      tier: 3,
      lot: null,
      price: 4500 + 600 + 800,
      resale: 0,
      locked: false,
    });
    // 5-iron to pitching wedge are six grips; the 5-iron is longer than this player can use, and a spare.
    expect(instance.lots).toEqual([
      { id: 'buy:irons-5-pw-33-t3', origin: 'candidate', price: 15_000 + 600 + 6 * 800, resale: 0 },
    ]);
    expect(bought.slice(1).map(({ id, lot, price }) => [id, lot, price])).toEqual(
      ['6', '7', '8', '9', 'PW'].map((number) => [
        `buy:irons-5-pw-33-t3:${number}`,
        'buy:irons-5-pw-33-t3',
        0,
      ]),
    );
    expect([...candidates.keys()]).toEqual(['buy:hybrid-25-t3', 'buy:irons-5-pw-33-t3']);
  });
  it('an owned set is sold whole for its own price, its members for theirs', () => {
    const inSet = (id: string) => ({ set: 'irons', sell: { low: 1, likely: 10, high: 20 }, id });
    const file = withClub(withClub(bagFile({ costs }), '8i', inSet('8i')), '9i', inSet('9i'));
    const sold = { ...file, sets: [{ id: 'irons', sell: { low: 50, likely: 100, high: 150 } }] };
    // Less 10 % and postage.
    expect(instanceOf(sold).lots).toEqual([
      { id: 'own-set:irons', origin: 'owned', price: 0, resale: 10_000 - 1000 - 400 },
    ]);
    expect(itemOf(sold, 'own:8i')).toMatchObject({ lot: 'own-set:irons', resale: 1000 - 100 - 400 });
    // A set that is not offered whole is no lot.
    const unsold = { ...file, sets: [{ id: 'irons' }] };
    expect(instanceOf(unsold).lots).toEqual([]);
    expect(itemOf(unsold, 'own:8i')).toMatchObject({ lot: null, resale: 500 });
  });
  it('what this player cannot use is not in the question, whatever it costs', () => {
    const strong = { archetype: 'fairway-13.5-t2-low', low: 1, likely: 2, high: 3 };
    const { instance, candidates } = build(bagFile({ prices: [strong, ...prices] }));
    expect(instance.items.map(({ id }) => id)).not.toContain('buy:fairway-13.5-t2-low');
    expect(candidates.has('buy:fairway-13.5-t2-low')).toBe(false);
    expect(candidates.size).toBe(2);
  });
  it('budget and its basis are the bag’s', () => {
    expect(instanceOf(bagFile({ budget: { amount: 120 } }))).toMatchObject({ budget: 12_000, basis: 'net' });
    expect(instanceOf(bagFile({ budget: { amount: 120, cashBeforeSales: true } })).basis).toBe('cash');
  });
  it('a candidate carries the misfit of its head; a putter has neither carry nor tier', () => {
    const file = bagFile({
      prices: [...prices, { archetype: 'putter-3-t4', low: 10, likely: 20, high: 30 }],
      choices: { changePutter: true },
    });
    const candidateMisfits = new Map([['hybrid-25-t3', 60]]);
    expect(itemOf(file, 'buy:hybrid-25-t3', { candidateMisfits })?.misfit).toBe(60);
    expect(itemOf(file, 'buy:putter-3-t4')).toMatchObject({
      kind: 'putter',
      carryDy: 0,
      tier: null,
      misfit: 0,
      price: 2000,
    });
  });
});
