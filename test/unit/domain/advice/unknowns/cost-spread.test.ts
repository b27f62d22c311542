import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../../../db/catalogue/index.ts';
import { readerFor } from '../../../../../src-main/contract/reader.ts';
import type { BagFile } from '../../../../../src-main/contract/formats/bag-file.ts';
import { ENOUGH_CHANCE, planCost } from '../../../../../src-main/domain/advice/unknowns/chance.ts';
import { prepare } from '../../../../../src-main/domain/advice/question/prepare.ts';
import { english } from '../../../../../src-main/domain/advice/words/en.ts';
import { bagFile, domainBag, withClub } from '../../../../support/bags.ts';

const prices: BagFile['prices'] = [{ archetype: 'hybrid-25-t3', low: 30, likely: 45, high: 70 }];
const costs = { delivery: 6, regrip: 8 };

function spreadOf(file: BagFile, without: string[], ...bought: string[]) {
  const { view, built } = prepare({
    bag: domainBag(file),
    catalogue: loadCatalogue(),
    reader: readerFor(file.units),
    words: english,
    today: '2026-11-26',
  });
  const owned = built.instance.items.filter(({ origin }) => origin === 'owned').map(({ id }) => id);
  const items = [...owned.filter((id) => !without.includes(id)), ...bought];
  const { spread, chanceInBudget: chance } = planCost(view, built, items);
  return { spread, chance };
}

describe('what a plan may cost', () => {
  it('is the band with delivery and grip, and no budget is needed for it', () => {
    const { spread, chance } = spreadOf(bagFile({ prices, costs }), [], 'buy:hybrid-25-t3');
    expect(chance).toBeNull();
    expect([spread?.lowMinor, spread?.highMinor]).toEqual([3000 + 1400, 7000 + 1400]);
    expect(spread?.points).toHaveLength(41);
    expect(spread?.points[0]).toEqual({ minor: 4400, atMost: 0 });
    expect(spread?.points.at(-1)).toEqual({ minor: 8400, atMost: 1 });
    const chances = spread?.points.map(({ atMost }) => atMost) ?? [];
    expect(chances).toEqual([...chances].sort((a, b) => a - b));
  });
  it('says which amount is enough four times in five, as the chance in budget does', () => {
    const file = (amount: number) => bagFile({ prices, costs, budget: { amount } });
    const enough = spreadOf(file(500), [], 'buy:hybrid-25-t3').spread?.enoughMinor ?? NaN;
    const at = (minor: number) => spreadOf(file(minor / 100), [], 'buy:hybrid-25-t3').chance ?? NaN;
    expect(at(enough)).toBeGreaterThanOrEqual(ENOUGH_CHANCE - 0.0005);
    expect(at(enough - 20)).toBeLessThan(ENOUGH_CHANCE);
  });
  it('takes off what a sale brings, unless money from sales does not count', () => {
    const sold = withClub(bagFile({ prices, costs }), 'gw', { sell: { low: 20, likely: 25, high: 40 } });
    const net = spreadOf({ ...sold, budget: { amount: 100 } }, ['own:gw'], 'buy:hybrid-25-t3').spread;
    expect([net?.lowMinor, net?.highMinor]).toEqual([4400 - 4000, 8400 - 2000]);
    const cash = spreadOf(
      { ...sold, budget: { amount: 100, cashBeforeSales: true } },
      ['own:gw'],
      'buy:hybrid-25-t3',
    ).spread;
    expect([cash?.lowMinor, cash?.highMinor]).toEqual([4400, 8400]);
  });
  describe('a sale', () => {
    const bought = 'buy:hybrid-25-t3';
    const band = (low: number, likely: number, high: number) => ({ sell: { low, likely, high } });
    /** Ends of what is spent, in pounds, under the £44 to £84 of the purchase. */
    const brings = (file: BagFile, ...out: string[]) => {
      const { spread } = spreadOf(
        { ...file, budget: { amount: 100 } },
        out.map((id) => `own:${id}`),
        bought,
      );
      return [84 - (spread?.highMinor ?? NaN) / 100, 44 - (spread?.lowMinor ?? NaN) / 100];
    };
    const irons = (more: Partial<BagFile> = {}) => {
      const clubs = withClub(
        withClub(bagFile({ prices, costs, ...more }), '8i', { set: 'a', ...band(5, 8, 10) }),
        '9i',
        { set: 'a', ...band(4, 6, 9) },
      );
      return { ...clubs, sets: [{ id: 'a', ...band(40, 60, 70) }] };
    };
    it('of a whole set is the set’s, once', () => {
      expect(brings(irons(), '8i', '9i')).toEqual([40, 70]);
    });
    it('of a part of a set, or of a set without a price, is each club’s', () => {
      expect(brings(irons(), '8i')).toEqual([5, 10]);
      expect(brings({ ...irons(), sets: [{ id: 'a' }] }, '8i', '9i')).toEqual([9, 19]);
      expect(brings(withClub(irons(), 'gw', band(20, 25, 40)), '9i', 'gw')).toEqual([24, 49]);
    });
    it('brings less the fee', () => {
      const [low, high] = brings(irons({ costs: { ...costs, sellFeePercent: 10 } }), '8i', '9i');
      expect(low).toBeCloseTo(36, 6);
      expect(high).toBeCloseTo(63, 6);
    });
    it('that postage eats up has no part in it', () => {
      const file = withClub(bagFile({ prices, costs: { ...costs, sellPostage: 6 } }), 'gw', band(3, 5, 9));
      expect(brings(file, 'gw')).toEqual([0, 0]);
      expect(brings(withClub(file, 'gw', band(3, 7, 9)), 'gw')).toEqual([3 - 6, 9 - 6]);
    });
    it('of a club that nothing places is not reckoned: it stays', () => {
      const file = bagFile({ prices, costs });
      const mystery = { id: 'mystery', kind: 'hybrid' as const, ...band(20, 25, 40) };
      expect(brings({ ...file, clubs: [...file.clubs, mystery] })).toEqual([0, 0]);
    });
  });
  it('what stays in the bag brings nothing, whatever it could be sold for', () => {
    const kept = withClub(bagFile({ prices, costs }), 'gw', { sell: { low: 20, likely: 25, high: 40 } });
    const { spread } = spreadOf({ ...kept, budget: { amount: 100 } }, [], 'buy:hybrid-25-t3');
    expect([spread?.lowMinor, spread?.highMinor]).toEqual([4400, 8400]);
  });
  it('is nothing to draw where no price has a part in it', () => {
    expect(spreadOf(bagFile({ prices, costs }), ['own:gw']).spread).toBeNull();
  });
  it('is one sure point where the price is', () => {
    const file = bagFile({ prices: [{ archetype: 'hybrid-25-t3', low: 45, likely: 45, high: 45 }] });
    expect(spreadOf(file, [], 'buy:hybrid-25-t3').spread).toMatchObject({
      lowMinor: 4500,
      highMinor: 4500,
      enoughMinor: 4500,
      points: [{ minor: 4500, atMost: 1 }],
    });
  });
});
