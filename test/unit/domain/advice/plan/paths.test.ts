import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../../../db/catalogue/index.ts';
import type { BagFile } from '../../../../../src-main/contract/formats/bag-file.ts';
import { readerFor } from '../../../../../src-main/contract/reader.ts';
import { advise } from '../../../../../src-main/domain/advice/advise.ts';
import { english } from '../../../../../src-main/domain/advice/words/en.ts';
import { bagFile, domainBag, without } from '../../../../support/bags.ts';

const adviceOf = (file: BagFile) =>
  advise({
    bag: domainBag(file),
    catalogue: loadCatalogue(),
    reader: readerFor(file.units),
    words: english,
    today: '2026-11-26',
  });
const priced = (...list: [string, number][]): BagFile['prices'] =>
  list.map(([archetype, likely]) => ({ archetype, low: likely - 10, likely, high: likely + 20 }));

describe('paths', () => {
  const gappy = {
    ...without(bagFile(), '4h', '5i', 'gw'),
    prices: priced(['hybrid-22-t3', 50], ['hybrid-25-t3', 45], ['wedge-50-t3', 30], ['wedge-52-t3', 28]),
    budget: { amount: 110 },
  };
  it('A is the headline; B spends at most half now and the rest later', () => {
    const advice = adviceOf(gappy);
    const [a, b] = advice.paths;
    expect(a?.stages[0]?.items).toEqual(advice.items);
    expect(b?.stages[0]?.netMinor).toBeLessThanOrEqual(5500);
    expect(b?.stages.length).toBe(2);
    expect(b?.stages[1]?.when).toEqual({ kind: 'season' });
  });
  it('no stage leaves the bag worse than the one before, nor spends more than the budget', () => {
    for (const path of adviceOf(gappy).paths) {
      path.stages.forEach((stage, i) => {
        expect(stage.penalty).toBeLessThanOrEqual(path.stages[i - 1]?.penalty ?? Infinity);
      });
      expect(path.stages.reduce((sum, stage) => sum + stage.netMinor, 0)).toBeLessThanOrEqual(11000);
    }
  });
  it('B has no second stage where half the budget mends all there is to mend', () => {
    const [a, b] = adviceOf({ ...gappy, budget: { amount: 1000 } }).paths;
    expect(b?.stages.map(({ when }) => when.kind)).toEqual(['now']);
    expect(b?.stages[0]?.items).toEqual(a?.stages[0]?.items);
  });
  it('B is left out where there is nothing to halve', () => {
    const { budget: _budget, ...free } = gappy;
    const names = (file: BagFile) => adviceOf(file).paths.map(({ name }) => name);
    expect(names(free)).toEqual(['A']);
    expect(names({ ...gappy, budget: { amount: 0 } })).toEqual(['A']);
    expect(names(gappy)).toEqual(['A', 'B']);
  });
  it('what a sale brings is waited for, where one is made now', () => {
    // A second fairway wood of nearly the same carry: the plan sells it.
    const spare = { id: 'spare', kind: 'fairway' as const, loftDeg: 18.5, carry: 176 };
    const sell = { low: 5, likely: 10, high: 15 };
    const seller = { ...gappy, clubs: [...gappy.clubs, { ...spare, sell }] };
    const b = adviceOf({ ...seller, budget: { amount: 80 } }).paths[1];
    expect(b?.stages[0]?.netMinor).toBe((b?.stages[0]?.cashMinor ?? 0) - 1000);
    expect(b?.stages[1]?.when).toEqual({ kind: 'sale' });
    // The second stage starts from the first one's bag: it tells what it adds.
    expect(b?.stages[1]?.items).not.toContain('own:spare');
    expect(b?.stages[1]?.netMinor).toBeGreaterThan(0);
  });
  it('what only adds forgiveness waits for the handicap, as a stage of its own', () => {
    const file = bagFile(
      { prices: priced(['irons-5-pw-33-t3', 150]), budget: { amount: 200 } },
      { handicap: 22, targetHandicap: 17 },
    );
    const blades = {
      ...file,
      clubs: file.clubs.map((club) =>
        club.kind === 'iron' ? { ...club, forgiveness: 1 as const, set: 'blades' } : club,
      ),
    };
    const advice = adviceOf(blades);
    expect(advice.swaps.filter((swap) => swap.stage === 'now' && swap.action === 'buy')).toEqual([]);
    expect(advice.paths[0]?.stages[1]?.when).toEqual({ kind: 'handicap', atMost: 17 });
    expect(
      advice.swaps.filter((swap) => swap.action === 'buy').map((swap) => [swap.archetype, swap.stage]),
    ).toEqual([['irons-5-pw-33-t3', 'when handicap ≤ 17']]);
    expect(advice.cashMinor).toBe(0);
    // Without a budget the stage has no bound.
    const { budget: _budget, ...free } = blades;
    expect(adviceOf(free).paths.map(({ stages }) => stages.map(({ when }) => when.kind))).toEqual([
      ['now', 'handicap'],
    ]);
  });
});
