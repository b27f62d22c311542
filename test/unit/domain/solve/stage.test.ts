import { describe, expect, it } from 'vitest';
import { evaluate, solve } from '../../../../src-main/domain/solve/index.ts';
import { laterStage } from '../../../../src-main/domain/solve/stage.ts';
import { readInstance } from '../../../../src-main/domain/solve/model/read.ts';
import { candidate, instance, item, lot } from './instances.ts';

const owned = (id: string, set: string, carryDy: number) => item(id, { lot: set, carryDy, resale: 5 });
const member = (id: string, set: string, carryDy: number) => candidate(id, 0, { lot: set, carryDy });
const today = instance(
  [
    item('a', { carryDy: 1300, resale: 20 }),
    owned('o1', 'kept', 1250),
    owned('o2', 'kept', 1200),
    owned('p1', 'parted', 1150),
    owned('p2', 'parted', 1100),
    candidate('b', 40, { carryDy: 1050, tier: 2 }),
    candidate('c', 50, { carryDy: 1000 }),
    member('s1', 'bought', 950),
    member('s2', 'bought', 900),
    member('t1', 'other', 850),
  ],
  {
    lots: [
      lot('kept', { origin: 'owned', resale: 30 }),
      lot('parted', { origin: 'owned', resale: 30 }),
      lot('bought', { price: 100 }),
      lot('other', { price: 60 }),
    ],
    excused: [
      ['a', 'o1'],
      ['p2', 'b'],
    ],
    leastTier: { wedge: 1 },
    budget: 500,
  },
);
const then = laterStage(today, {
  bag: ['a', 'o1', 'o2', 'p1', 'b', 's1'],
  budget: 300,
  leastTier: { wedge: 3 },
  tierWeight: 40,
});
const find = (id: string) => then.items.find((one) => one.id === id);

describe('a later stage', () => {
  it('is a question that can be asked, with its own money and tiers', () => {
    expect(readInstance(then)).toEqual(then);
    expect(then).toMatchObject({ budget: 300, leastTier: { wedge: 3 }, tierWeight: 40, limit: 14 });
  });
  it('owns what the stage before left in the bag: it was paid for, and is not offered for sale anew', () => {
    expect(find('b')).toMatchObject({ origin: 'owned', price: 0, resale: 0, tier: 2, lot: null });
    expect(find('a')).toMatchObject({ origin: 'owned', resale: 20 });
  });
  it('has lost what left it, and what can no longer be excused', () => {
    expect(find('p2')).toBeUndefined();
    expect(then.excused).toEqual([['a', 'o1']]);
  });
  it('can still sell a set that is whole, of one that is not only single clubs', () => {
    expect(find('o1')?.lot).toBe('kept');
    expect(find('p1')).toMatchObject({ lot: null, resale: 5 });
    expect(then.lots.map(({ id }) => id)).toEqual(['kept', 'other']);
  });
  it('has a bought set as single clubs, its spares gone; what was not bought can still be', () => {
    expect(find('s1')).toMatchObject({ origin: 'owned', lot: null, price: 0 });
    expect(find('s2')).toBeUndefined();
    expect(find('c')).toMatchObject({ origin: 'candidate', price: 50 });
    expect(find('t1')).toMatchObject({ origin: 'candidate', lot: 'other' });
  });
  it('costs nothing to leave as it is', () => {
    const bag = ['a', 'o1', 'o2', 'p1', 'b', 's1'];
    expect(evaluate(then, bag)).toMatchObject({ legal: true, cost: 0, changes: 0 });
    expect(solve(then).today?.items).toEqual([...bag].sort());
  });
});
