import { JobCells } from '../../../../src-main/worker/job-cells.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../../db/catalogue/index.ts';
import type { BagFile } from '../../../../src-main/contract/formats/bag-file.ts';
import { bagFromFile, checkBagFile } from '../../../../src-main/contract/formats/read-bag.ts';
import { RefusedInput } from '../../../../src-main/contract/refusal.ts';
import { DEFAULT_ASSUMPTIONS } from '../../../../src-main/domain/prices/condition.ts';
import { extrasMinor } from '../../../../src-main/domain/prices/cost.ts';
import { withoutPurchases } from '../../../../src-main/domain/solve/model/purchases.ts';
import { answerBag } from '../../../../src-main/worker/answer.ts';
import { seenOne } from '../../../../src-main/worker/seen-one/seen-one.ts';
import { watchList } from '../../../../src-main/worker/seen-one/watch-list.ts';
import { watchedBag } from '../../../../src-main/worker/seen-one/watch-list-bag.ts';
import { bagFile, without } from '../../../support/bags.ts';
import { anyBag } from '../../../support/random-bags.ts';

const catalogue = loadCatalogue();
const today = '2026-11-26';
const ask = (file: BagFile, archetype: string, priceMinor: number) =>
  seenOne({
    file,
    catalogue,
    today,
    archetype,
    priceMinor,
    condition: 'played',
    assumptions: DEFAULT_ASSUMPTIONS,
    status: null,
  });

/** The plan's solution when the archetype is noted at that price, or null for a bag that cannot be planned. */
function planned(file: BagFile, archetype: string, price: number) {
  const band = { low: price, likely: price, high: price };
  const prices = [...file.prices.filter((one) => one.archetype !== archetype), { archetype, ...band }];
  try {
    return answerBag(checkBagFile({ ...file, prices }), catalogue, { today, withInstance: false }).advice;
  } catch (error) {
    if (error instanceof RefusedInput) return null;
    throw error;
  }
}

describe('seen one', () => {
  it('says buy just when the solver’s plan at that price buys it, with the same walk-away price', () => {
    const seen = { buy: 0, other: 0 };
    fc.assert(
      fc.property(
        anyBag,
        fc.constantFrom(...catalogue.map(({ id }) => id)),
        fc.integer({ min: 0, max: 120 }),
        (drawn, archetype, price) => {
          const file = { ...drawn, prices: drawn.prices.filter((one) => one.archetype !== archetype) };
          const advice = planned(file, archetype, price);
          if (advice === null) return;
          const told = ask(file, archetype, price * 100);
          const buys = Object.hasOwn(advice.solution.walkAway, `buy:${archetype}`);
          if (['stopped', 'coach-first'].includes(told.why)) {
            expect(told.verdict).toBe('leave');
            expect(advice.status).toBe(told.why);
            return;
          }
          expect(told.verdict === 'buy').toBe(buys);
          seen[buys ? 'buy' : 'other']++;
          if (!buys) return;
          const most = advice.solution.walkAway[`buy:${archetype}`];
          const { costs } = bagFromFile(file);
          const one = catalogue.find(({ id }) => id === archetype);
          if (!one) throw new Error('no such archetype');
          expect(told.walkAway).toBe(
            most === null || most === undefined ? null : (most - extrasMinor(one, costs)) / 100,
          );
        },
      ),
      { seed: 9, numRuns: 150 },
    );
    expect(Math.min(seen.buy, seen.other)).toBeGreaterThan(10);
  });
  it('haggles up to a quarter above the walk-away price, and no further', () => {
    fc.assert(
      fc.property(anyBag, fc.constantFrom(...catalogue.map(({ id }) => id)), (drawn, archetype) => {
        const file = { ...drawn, prices: drawn.prices.filter((one) => one.archetype !== archetype) };
        const dear = ask(file, archetype, 100_000_000);
        if (dear.why !== 'too-dear' || dear.walkAway === null) return;
        const most = Math.round(dear.walkAway * 100);
        const haggled = ask(file, archetype, Math.floor(most * 1.25));
        expect(
          haggled.verdict === 'buy' || (haggled.verdict === 'haggle' && haggled.haggleTo === most / 100),
        ).toBe(true);
        expect(ask(file, archetype, Math.floor(most * 1.25) + 1).verdict).not.toBe('haggle');
      }),
      { seed: 10, numRuns: 40 },
    );
  });
});

it('what takes no club’s place is bought beside the others, and that is said', () => {
  const told = ask(without(bagFile({ budget: { amount: 200 } }), '6i', '7i'), 'irons-5-pw-30-t3', 1000);
  expect(told).toMatchObject({ verdict: 'buy', inPlaceOf: [] });
  expect(told.reason).toContain('the plan buys it, beside the clubs that are there.');
});

describe('the watch list', () => {
  it('asks the very question of the plan, the unpriced beside it', () => {
    fc.assert(
      fc.property(anyBag, (file) => {
        const { prepared, unpriced } = watchedBag({ file, catalogue, today }, {});
        const { built } = answerBag(file, catalogue, { today, withInstance: false }).advice;
        expect(withoutPurchases(prepared.built.instance, new Set(unpriced))).toEqual(built.instance);
      }),
      { seed: 11, numRuns: 60 },
    );
  });
  it('of any bag is in order, names each once, and is empty where pain stops all', () => {
    fc.assert(
      fc.property(anyBag, (file) => {
        const { items, cancelled } = watchList({ file, catalogue, today });
        expect(cancelled).toBe(false);
        if (file.player.pain === true) expect(items).toEqual([]);
        const below = items.map((item) => item.below ?? Infinity);
        expect(below).toEqual([...below].sort((a, b) => b - a));
        expect(below.every((price) => price > 0)).toBe(true);
        const named = items.flatMap((item) => [item.archetype, ...item.alike.map((one) => one.archetype)]);
        expect(new Set(named).size).toBe(named.length);
        const priced = new Set(file.prices.map((price) => price.archetype));
        expect(named.filter((id) => priced.has(id))).toEqual([]);
        if (file.budget) expect(items.every((item) => item.below !== null)).toBe(true);
      }),
      { seed: 12, numRuns: 30 },
    );
  });
  it('ends at once when its flag is set', () => {
    const job = new JobCells();
    job.stop();
    const [file] = fc.sample(anyBag, { seed: 13, numRuns: 1 });
    if (!file) throw new Error('no bag');
    expect(watchList({ file, catalogue, today, cells: job.buffer })).toEqual({ cancelled: true, items: [] });
  });
});
