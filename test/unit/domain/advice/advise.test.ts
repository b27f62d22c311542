import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../../db/catalogue/index.ts';
import type { BagFile } from '../../../../src-main/contract/formats/bag-file.ts';
import { readerFor } from '../../../../src-main/contract/reader.ts';
import { advise, stageName, type AdviseInput } from '../../../../src-main/domain/advice/advise.ts';
import { english } from '../../../../src-main/domain/advice/words/en.ts';
import { evaluate } from '../../../../src-main/domain/solve/index.ts';
import { bagFile, domainBag, withClub, without } from '../../../support/bags.ts';

const adviceOf = (file: BagFile, more: Partial<AdviseInput> = {}) =>
  advise({
    bag: domainBag(file),
    catalogue: loadCatalogue(),
    reader: readerFor(file.units),
    words: english,
    today: '2026-11-26',
    ...more,
  });
const prices: BagFile['prices'] = [
  ['hybrid-22-t3', 60],
  ['hybrid-24-t3', 55],
  ['hybrid-26-t3', 50],
].map(([archetype, likely]) => ({
  archetype: String(archetype),
  low: Number(likely) - 20,
  likely: Number(likely),
  high: Number(likely) + 20,
}));
/** 177 to 138 yd without anything between; a hybrid mends it. */
const gappy = {
  ...without(bagFile({ prices, costs: { delivery: 5 } }), '4h', '5i'),
  budget: { amount: 200 },
};
const owned = (file: BagFile) => file.clubs.map(({ id }) => `own:${id}`).sort();
/** 177 to 148 yd: a hybrid or a fairway wood mends it. */
const chosen: BagFile = {
  ...without(bagFile(), '4h'),
  prices: [
    { archetype: 'hybrid-22-t3', low: 40, likely: 50, high: 70 },
    { archetype: 'fairway-21-t3', low: 50, likely: 60, high: 80 },
  ],
  budget: { amount: 200 },
};
const buysOf = (advice: ReturnType<typeof adviceOf>) =>
  advice.swaps.filter(({ action }) => action === 'buy').map(({ archetype }) => archetype);

describe('a plan', () => {
  it('says what it buys, what that costs, and what is left of the budget', () => {
    const advice = adviceOf(gappy);
    expect(advice.status).toBe('ok');
    const bought = buysOf(advice);
    expect(bought.length).toBeGreaterThan(0);
    const likely = bought.reduce(
      (sum, id) => sum + 100 * (gappy.prices.find((price) => price.archetype === id)?.likely ?? NaN) + 500,
      0,
    );
    expect(advice).toMatchObject({
      cashMinor: likely,
      netMinor: likely,
      remainingMinor: 20_000 - likely,
      items: advice.solution.headline?.items,
    });
    expect(advice.chanceInBudget).toBe(1);
    expect(advice.afterLadder.map(({ clubId }) => clubId)).toContain(`buy:${bought[0] ?? ''}`);
  });
  it('has reasons and two paths', () => {
    const advice = adviceOf(gappy);
    expect(advice.explanation.purchases.map(({ id }) => id).sort()).toEqual(
      buysOf(advice)
        .map((id) => `buy:${id ?? ''}`)
        .sort(),
    );
    expect(advice.paths.map(({ name }) => name)).toEqual(['A', 'B']);
  });
  it('counts a sale for the budget unless cash has to come before it', () => {
    const seller = withClub(gappy, '5w', { sell: { low: 30, likely: 40, high: 50 }, carry: 140 });
    const net = adviceOf(seller);
    expect(net.netMinor).toBe(net.cashMinor - (net.swaps.some(({ clubId }) => clubId === '5w') ? 4000 : 0));
    expect(net.remainingMinor).toBe(20_000 - net.netMinor);
    const cash = adviceOf({ ...seller, budget: { amount: 200, cashBeforeSales: true } });
    expect(cash.remainingMinor).toBe(20_000 - cash.cashMinor);
  });
  it('has neither rest nor chance without a budget', () => {
    const { budget: _budget, ...free } = gappy;
    expect(adviceOf(free)).toMatchObject({ remainingMinor: null, chanceInBudget: null });
  });
  it('in brief is the same but for what takes longest', () => {
    const [whole, brief] = [adviceOf(chosen), adviceOf(chosen, { isBrief: true })];
    expect(whole.alternatives.length).toBeGreaterThan(0);
    for (const key of ['status', 'items', 'cashMinor', 'netMinor', 'findings', 'costSpread'] as const)
      expect(brief[key], key).toEqual(whole[key]);
    expect(brief).toMatchObject({
      paths: [],
      alternatives: [],
      questions: [],
      explanation: { purchases: [], nextStep: null, cheapestHelp: null },
    });
  });
  it('tells of its steps: 15 the plan, 12 its reasons, 25 other ways', () => {
    const told: [number, number][] = [];
    adviceOf(gappy, { watcher: { onStep: (done, of) => told.push([done, of]) } });
    expect(told).toEqual([
      [15, 100],
      [27, 100],
      [52, 100],
    ]);
  });
});

describe('what holds a plan back', () => {
  it('pain stops all: nothing bought, nothing reckoned, one caution', () => {
    const hurt = { ...gappy, player: { ...gappy.player, pain: true } };
    const advice = adviceOf(hurt);
    expect(advice).toMatchObject({
      status: 'stopped',
      swaps: [],
      items: owned(hurt),
      cashMinor: 0,
      netMinor: 0,
      paths: [],
      alternatives: [],
      questions: [],
      costSpread: null,
      chanceInBudget: null,
      cautions: [english.cautions.pain()],
      explanation: { purchases: [], nextStep: null, cheapestHelp: null },
    });
    expect(advice.solution).toMatchObject({ frontier: [], walkAway: {} });
    // Nor is anything asked, open as it may be, or any other way shown.
    const open = withClub(chosen, 'sw', { carry: 73 });
    const { questions, alternatives } = adviceOf(open);
    expect([questions.length, alternatives.length]).toEqual([1, 1]);
    const pained = { ...open, player: { ...open.player, pain: true } };
    expect(adviceOf(pained)).toMatchObject({ questions: [], alternatives: [] });
    // Not even what was picked by hand.
    expect(adviceOf(hurt, { picked: [...owned(hurt), 'buy:hybrid-24-t3'] }).items).toEqual(owned(hurt));
  });
  it('a coach first keeps the money in the purse, and what is free', () => {
    const flat = (
      [
        ['5w', 156, 121],
        ['4h', 153, 120.5],
        ['5i', 149, 120],
      ] as const
    ).reduce((file, [id, carry, ballSpeed]) => withClub(file, id, { carry, ballSpeed }), bagFile({ prices }));
    // A wide gap at the short end, which money would mend.
    const file = {
      ...without(flat, 'gw'),
      prices: [...prices, { archetype: 'wedge-50-t3', low: 20, likely: 30, high: 40 }],
      budget: { amount: 100 },
    };
    const advice = adviceOf(file);
    expect(advice.status).toBe('coach-first');
    expect(buysOf(advice)).toEqual([]);
    expect(advice.paths).toEqual([]);
    expect(advice.cashMinor).toBe(0);
    // Held back, not forgotten: the answer still has the curve and the price.
    expect(advice.solution.headline?.items).toContain('buy:wedge-50-t3');
    // What was picked by hand stays.
    const picked = [...owned(file), 'buy:wedge-50-t3'].sort();
    expect(adviceOf(file, { picked }).items).toEqual(picked);
    expect(buysOf(adviceOf(file, { picked }))).toEqual(['wedge-50-t3']);
  });
});

describe('an open question that would change what is bought', () => {
  // 18 yd between the last wedges where 16 is the limit; and a second fairway wood a yard from the first.
  const wedge = { archetype: 'wedge-52-t3', low: 10, likely: 20, high: 40 };
  const spare = { id: 'spare', kind: 'fairway' as const, loftDeg: 18.5, carry: 176 };
  const unsure = withClub(bagFile({ prices: [...prices, wedge], budget: { amount: 200 } }), 'sw', {
    carry: 72,
  });
  const open = { ...unsure, clubs: [...unsure.clubs, spare] };
  const kept = (file: BagFile) => owned(file).filter((id) => id !== 'own:spare');
  it('is asked first, and what is free is done', () => {
    const advice = adviceOf(open);
    expect(advice.status).toBe('ask-first');
    expect(advice.swaps).toMatchObject([{ action: 'drop', clubId: 'spare' }]);
    expect(advice.items).toEqual(kept(open));
    expect(advice.questions[0]).toMatchObject({ about: ['gw', 'sw'] });
    expect(advice.questions[0]?.worth).toBeGreaterThan(1);
    expect(adviceOf(open, { isBrief: true })).toMatchObject({ status: 'ask-first', items: kept(open) });
  });
  it('is found in brief too where a surer one would change nothing', () => {
    // The 9-iron a yard or two from the 8-iron is asked about first, and nothing is bought by that.
    const both = withClub(withClub(open, '9i', { carry: 116 }), 'sw', { carry: 73 });
    const { status, questions } = adviceOf(both);
    expect(status).toBe('ask-first');
    expect(questions.find(({ about }) => about[0] === '8i')?.worth).toBeLessThan(1);
    expect(adviceOf(both, { isBrief: true }).status).toBe('ask-first');
  });
  it('holds back what a sale of a set would pay for', () => {
    const set = (file: BagFile, id: string) => withClub(file, id, { set: 'irons' });
    const seller = {
      ...set(set(without(open, '4h', '5i'), '8i'), '9i'),
      sets: [{ id: 'irons', sell: { low: 30, likely: 50, high: 60 } }],
    };
    expect(adviceOf(seller)).toMatchObject({ status: 'ask-first', cashMinor: 0, items: kept(seller) });
  });
  it('holds back other purchases as well, but not what was picked by hand', () => {
    const holed = without(open, '4h', '5i');
    const advice = adviceOf(holed);
    expect(advice).toMatchObject({
      status: 'ask-first',
      items: kept(holed),
      cashMinor: 0,
      netMinor: 0,
      remainingMinor: 20_000,
      paths: [],
      explanation: { purchases: [], nextStep: null, cheapestHelp: null },
    });
    expect(advice.solution.headline?.items.some((id) => id.startsWith('buy:hybrid'))).toBe(true);
    expect(advice.swaps).toMatchObject([{ action: 'drop', clubId: 'spare' }]);
    const picked = [...kept(holed), 'buy:hybrid-24-t3'].sort();
    expect(adviceOf(holed, { picked })).toMatchObject({ status: 'ask-first', items: picked });
  });
});

describe('a bag picked by hand', () => {
  it('is told of instead of the plan: its money, its ladder, its findings', () => {
    const picked = [...owned(gappy), 'buy:hybrid-22-t3', 'buy:hybrid-26-t3'].sort();
    const advice = adviceOf(gappy, { picked });
    expect(advice.items).toEqual(picked);
    expect(advice.cashMinor).toBe(6000 + 5000 + 1000);
    expect(buysOf(advice)).toEqual(['hybrid-22-t3', 'hybrid-26-t3']);
    expect(advice.solution.headline?.penalty).toBe(evaluate(advice.built.instance, picked).penalty);
    expect(advice.solution.frontier).toEqual(adviceOf(gappy).solution.frontier);
  });
});

it('stages are named by what they wait for', () => {
  const { view } = adviceOf(bagFile());
  expect(stageName(view, { kind: 'now' })).toBe(english.stageNow);
  expect(stageName(view, { kind: 'handicap', atMost: 12.5 })).toBe(english.stageHandicap('12.5'));
  expect(stageName(view, { kind: 'sale' })).toBe(english.stageSale);
  expect(stageName(view, { kind: 'season' })).toBe(english.stageSeason);
});

it('a plan for which too little money is there says so, with the curve to show what would help', () => {
  const poor = { ...gappy, budget: { amount: 10 } };
  const advice = adviceOf(poor);
  expect(advice).toMatchObject({
    status: 'over-budget',
    swaps: [],
    items: owned(poor),
    remainingMinor: 1000,
  });
  expect(advice.explanation.cheapestHelp?.cost).toBeGreaterThan(1000);
  expect(adviceOf({ ...gappy, budget: { amount: 10_000 } }).status).toBe('ok');
});

it('nothing to buy is a full answer', () => {
  expect(adviceOf(bagFile({ prices }))).toMatchObject({
    status: 'nothing-needed',
    swaps: [],
    cashMinor: 0,
    costSpread: null,
    items: owned(bagFile()),
  });
});
