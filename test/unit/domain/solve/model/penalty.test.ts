import { describe, expect, test } from 'vitest';
import type { Instance } from '../../../../../src-main/domain/solve/instance.ts';
import { evaluate } from '../../../../../src-main/domain/solve/model/penalty.ts';
import { candidate, instance, item, lot } from '../instances.ts';

const band = (fromDy: number, wideDy: number): Instance['bands'][number] => ({
  fromDy,
  wideDy,
  crowdedDy: 50,
  wideWeight: 2,
  crowdWeight: 1,
});

const at = (carryDy: number, rest = {}) => item(`c${carryDy}`, { carryDy, ...rest });
const penalty = (of: Instance, ids = of.items.map((x) => x.id)): number => evaluate(of, ids).penalty;

describe('pairs', () => {
  test.each([
    ['wide', 1000, 800, 100],
    ['at the wide limit', 1000, 850, 0],
    ['between the limits', 1000, 900, 0],
    ['at the crowded limit', 1000, 950, 0],
    ['crowded', 1000, 970, 20],
  ])('%s', (_, longer, shorter, want) => {
    expect(penalty(instance([at(longer), at(shorter)], { bands: [band(0, 150)] }))).toBe(want);
  });

  test('equal carries are a gap of 0, whatever their ids', () => {
    const items = [item('b', { carryDy: 1000 }), item('a', { carryDy: 1000 })];
    expect(penalty(instance(items, { bands: [band(0, 150)] }))).toBe(50);
  });

  test("the longer club's carry chooses the band", () => {
    const bands = [band(0, 100), band(1000, 180)];
    expect(penalty(instance([at(1000), at(820)], { bands }))).toBe(0);
    expect(penalty(instance([at(999), at(819)], { bands }))).toBe(160);
  });

  test('one ladder club: both anchors, no pairs', () => {
    const of = instance([at(1000)], {
      bands: [band(0, 100)],
      top: { atLeastDy: 1100, weight: 3 },
      bottom: { atMostDy: 990, weight: 5 },
    });
    expect(penalty(of)).toBe(350);
  });
});

describe('the first pair', () => {
  const bands = [band(0, 150)];
  const firstPair = { wideDy: 400, secondAtLeastDy: 1900 };
  const driver = at(2300, { kind: 'driver' });

  test('has its own wide limit and the usual crowded one', () => {
    expect(penalty(instance([driver, at(1900)], { bands, firstPair }))).toBe(0);
    expect(penalty(instance([driver, at(2290)], { bands, firstPair }))).toBe(40);
  });

  test('may be stricter than the band', () => {
    expect(penalty(instance([driver, at(2200)], { bands, firstPair: { ...firstPair, wideDy: 60 } }))).toBe(
      80,
    );
  });

  test.each([
    ['when the second is too short', [driver, at(1899)], 502],
    ['when the longest is no driver', [at(2301), driver, at(1900)], 49 + 500],
    ['when the longer is no driver', [at(2300, { kind: 'fairway' }), at(1900)], 500],
  ])('not %s', (_, items, want) => {
    expect(penalty(instance(items, { bands, firstPair }))).toBe(want);
  });
});

describe('excused pairs', () => {
  const items = [at(1300), at(1000), at(700)];
  const bands = [band(0, 150)];

  test('cost nothing while they are neighbours', () => {
    const of = instance(items, { bands, excused: [['c1300', 'c700']] });
    expect(penalty(of)).toBe(600);
    expect(penalty(of, ['c1300', 'c700'])).toBe(0);
  });

  test('nor as the first pair', () => {
    const of = instance([at(2300, { kind: 'driver' }), at(1000)], {
      bands,
      firstPair: { wideDy: 0, secondAtLeastDy: 0 },
      excused: [['c2300', 'c1000']],
    });
    expect(penalty(of)).toBe(0);
  });
});

describe('single clubs', () => {
  const rest = { leastTier: { iron: 3 }, tierWeight: 40 };
  const iron = (tier: number | null, more = {}) => item('i', { kind: 'iron', tier, ...more });

  test.each([
    ['two steps below', iron(1), 80],
    ['at the least tier', iron(3), 0],
    ['tier unknown', iron(null), 0],
    ['a kind without least tier', item('w', { kind: 'wedge', tier: 1 }), 0],
    ['a kind that objects inherit', item('w', { kind: 'constructor', tier: 1 }), 0],
    ['misfit', iron(2, { misfit: 60 }), 100],
    ['locked', iron(1, { misfit: 60, locked: true }), 0],
  ])('%s', (_, club, want) => {
    expect(penalty(instance([club], rest))).toBe(want);
  });

  test('a putter has neither tier, misfit nor place on the ladder', () => {
    const putter = item('p', { kind: 'putter', tier: 1, misfit: 60, carryDy: 5000 });
    const of = instance([at(1000), putter], {
      ...rest,
      leastTier: { putter: 4 },
      top: { atLeastDy: 1100, weight: 1 },
    });
    expect(penalty(of)).toBe(100);
  });
});

describe('money, changes and purchases', () => {
  const owned = [
    item('o1', { resale: 10, lot: 'own' }),
    item('o2', { resale: 20, lot: 'own' }),
    item('o3', { resale: 5 }),
  ];
  const bought = [candidate('s', 7), candidate('m1', 0, { lot: 'set' }), candidate('m2', 0, { lot: 'set' })];
  const lots = [lot('own', { origin: 'owned', resale: 50 }), lot('set', { price: 100 })];
  const of = instance([...owned, ...bought], { lots });
  const verdict = (ids: string[], basis: 'net' | 'cash' = 'net') => {
    const { cost, changes, purchases } = evaluate({ ...of, basis }, ids);
    return { cost, changes, purchases };
  };

  test('today costs nothing', () => {
    expect(verdict(['o1', 'o2', 'o3'])).toEqual({ cost: 0, changes: 0, purchases: 0 });
  });
  test('a lot is paid once, spares count in nothing', () => {
    expect(verdict(['o1', 'o2', 'o3', 'm1'])).toEqual({ cost: 100, changes: 1, purchases: 1 });
    expect(verdict(['o1', 'o2', 'o3', 'm1', 'm2', 's'])).toEqual({ cost: 107, changes: 2, purchases: 2 });
  });
  test('an owned lot kept in part brings what its members bring', () => {
    expect(verdict(['o1', 'o3'])).toEqual({ cost: -20, changes: 1, purchases: 0 });
  });
  test('left out whole it brings its own price, its members nothing', () => {
    expect(verdict(['o3'])).toEqual({ cost: -50, changes: 2, purchases: 0 });
  });
  test('on the cash basis sales count in nothing', () => {
    expect(verdict(['s'], 'cash')).toEqual({ cost: 7, changes: 4, purchases: 1 });
  });
  test('a putter is bought, sold and in a lot as any club', () => {
    const putters = [
      item('p', { kind: 'putter', resale: 30 }),
      candidate('q', 0, { kind: 'putter', lot: 'set' }),
    ];
    const with2 = instance([item('a'), ...putters], { lots: [lot('set', { price: 100 })] });
    expect(evaluate(with2, ['a', 'q'])).toEqual({
      legal: true,
      cost: 70,
      penalty: 0,
      changes: 2,
      purchases: 1,
    });
  });
});

describe('legal', () => {
  const putter = item('p', { kind: 'putter' });
  const other = candidate('q', 1, { kind: 'putter' });
  const legal = (of: Instance, ids: string[]): boolean => evaluate(of, ids).legal;

  test('at least one ladder club', () => {
    expect(legal(instance([item('a')]), [])).toBe(false);
    expect(legal(instance([putter]), ['p'])).toBe(false);
  });
  test('an owned putter: exactly one of all', () => {
    const of = instance([item('a'), putter, other]);
    expect(legal(of, ['a'])).toBe(false);
    expect(legal(of, ['a', 'q'])).toBe(true);
    expect(legal(of, ['a', 'p', 'q'])).toBe(false);
  });
  test('none owned: at most one', () => {
    const of = instance([item('a'), other, { ...other, id: 'r' }]);
    expect(legal(of, ['a'])).toBe(true);
    expect(legal(of, ['a', 'q'])).toBe(true);
    expect(legal(of, ['a', 'q', 'r'])).toBe(false);
  });
  test('the limit counts the putter', () => {
    const of = instance([item('a'), item('b'), putter], { limit: 2 });
    expect(legal(of, ['a', 'p'])).toBe(true);
    expect(legal(of, ['a', 'b', 'p'])).toBe(false);
  });
  test('locked items stay', () => {
    expect(legal(instance([item('a', { locked: true }), item('b')]), ['b'])).toBe(false);
  });
});

test.each([
  ['unknown', ['x']],
  ['twice', ['a', 'a']],
])('an id that is %s is an error that names it', (_, ids) => {
  expect(() => evaluate(instance([item('a')]), ids)).toThrow(`"${ids.at(-1)}"`);
});
