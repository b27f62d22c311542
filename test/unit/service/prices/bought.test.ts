import { describe, expect, it } from 'vitest';
import { bagFile, without } from '../../../support/bags.ts';
import { useService } from '../kit.ts';

const { call, refused, open } = useService();

const file = () =>
  bagFile({
    prices: [
      { archetype: 'hybrid-22-t3', low: 30, likely: 45, high: 60 },
      { archetype: 'irons-5-pw-30-t3', low: 100, likely: 120, high: 150 },
    ],
    budget: { amount: 200 },
    costs: { delivery: 8, regrip: 5, sellFeePercent: 10, sellPostage: 4 },
  });
const bagOf = async (bagId: number) => (await call('bags.read', { bagId })).bag;

describe('bought', () => {
  it('a club: it is in the bag, the money is spent, what it replaces is away, the price is gone; undone as one', async () => {
    const { bagId } = await open(file());
    const before = await bagOf(bagId);
    const answer = await call('bags.bought', {
      bagId,
      archetype: 'hybrid-22-t3',
      price: 41.5,
      replaced: [
        { clubId: '4h', to: 'sold', price: 30 },
        { clubId: '5i', to: 'shelf' },
      ],
      on: '2026-11-20',
    });
    // 41.50 + 8 delivery + 5 grip, less 30 − 3 fee − 4 postage.
    expect(answer).toEqual({ clubs: ['hybrid-22-t3'], spent: 31.5, budget: 168.5 });
    const bag = await bagOf(bagId);
    expect(bag.clubs.map((club) => club.id)).not.toContain('4h');
    expect(bag.clubs.at(-1)).toEqual({
      id: 'hybrid-22-t3',
      kind: 'hybrid',
      label: '22° hybrid',
      loftDeg: 22,
      lengthIn: 40,
      forgiveness: 3,
      spinTier: 'mid',
    });
    expect(bag.budget).toEqual({ amount: 168.5 });
    expect(bag.prices.map((price) => price.archetype)).toEqual(['irons-5-pw-30-t3']);
    expect(await call('clubs.elsewhere', { bagId })).toMatchObject([
      { clubId: '5i', place: 'shelf' },
      { clubId: '4h', place: 'sold', soldFor: { amount: 30, currency: 'GBP' }, soldOn: '2026-11-20' },
    ]);
    expect((await call('history.state', {})).undo).toEqual({
      did: 'bags.bought',
      player: 'Invented',
      archetype: 'hybrid-22-t3',
      money: { minor: 4150, currency: 'GBP' },
    });
    await call('history.undo', {});
    expect(await bagOf(bagId)).toEqual(before);
    expect(await call('clubs.elsewhere', { bagId })).toEqual([]);
  });
  it('a set: its clubs come with it, the price shared to the penny', async () => {
    const { bagId } = await open(file());
    const { clubs, spent } = await call('bags.bought', {
      bagId,
      archetype: 'irons-5-pw-30-t3',
      price: 100.03,
      replaced: ['5i', '6i', '7i', '8i', '9i', 'pw'].map((clubId) => ({ clubId, to: 'shelf' as const })),
    });
    expect(clubs).toHaveLength(6);
    expect(spent).toBe(100.03 + 8 + 30);
    const bag = await bagOf(bagId);
    const bought = bag.clubs.filter((club) => clubs.includes(club.id));
    expect(bought.map(({ label, set }) => [label, set])).toEqual(
      ['5-iron', '6-iron', '7-iron', '8-iron', '9-iron', 'PW'].map((label) => [label, 'irons-5-pw-30-t3']),
    );
    expect(bought.find((club) => club.label === '7-iron')?.lengthIn).toBeGreaterThan(30);
    for (const clubId of clubs) await call('clubs.move', { bagId, clubId, to: 'shelf' });
    const paid = (await call('clubs.elsewhere', { bagId })).flatMap((club) => club.boughtFor?.amount ?? []);
    expect(paid).toEqual([16.68, 16.67, 16.67, 16.67, 16.67, 16.67]);
  });
  it('is no candidate any more, also by everybody’s notes; sold again, it is one', async () => {
    const { bagId } = await open(without(file(), '4h'));
    const note = { archetype: 'hybrid-22-t3', low: 30, likely: 45, high: 60, currency: 'GBP' };
    await call('prices.add', { note });
    await call('bags.bought', { bagId, archetype: 'hybrid-22-t3', price: 45, replaced: [] });
    const priced = async () => (await call('prices.bands', { bagId })).bands.map((band) => band.archetype);
    expect(await priced()).toEqual(['irons-5-pw-30-t3']);
    // The plan follows: the hole is filled.
    const { plan } = await call('answers.plan', { bagId });
    expect(plan.plan.swaps.some((swap) => swap.archetype === 'hybrid-22-t3')).toBe(false);
    expect(plan.ladder.map((row) => row.clubId)).toContain('hybrid-22-t3');
    await call('clubs.move', { bagId, clubId: 'hybrid-22-t3', to: 'sold' });
    expect(await priced()).toContain('hybrid-22-t3');
    // Bought once more, it gets an id of its own.
    const again = await call('bags.bought', { bagId, archetype: 'hybrid-22-t3', price: 1, replaced: [] });
    expect(again.clubs).toEqual(['hybrid-22-t3-2']);
  });
  it('a budget of money in hand is not filled up by sales, and never goes below nothing', async () => {
    const cash = await open({ ...file(), budget: { amount: 50, cashBeforeSales: true } });
    const args = {
      archetype: 'hybrid-22-t3',
      price: 40,
      replaced: [{ clubId: '4h', to: 'sold' as const, price: 30 }],
    };
    expect(await call('bags.bought', { bagId: cash.bagId, ...args })).toMatchObject({ spent: 53, budget: 0 });
    expect((await bagOf(cash.bagId)).budget).toEqual({ amount: 0, cashBeforeSales: true });
    const { budget: _budget, ...free } = file();
    const none = await open(free);
    expect(await call('bags.bought', { bagId: none.bagId, ...args })).toMatchObject({ budget: null });
  });
  it('refuses what makes no sense, and changes nothing', async () => {
    const { bagId } = await open(file());
    const before = await bagOf(bagId);
    const args = { bagId, archetype: 'hybrid-22-t3', price: 40, replaced: [] as object[] };
    expect(await refused('bags.bought', { ...args, archetype: 'x' })).toMatchObject({ kind: 'not-found' });
    expect(await refused('bags.bought', { ...args, price: 40.123 })).toMatchObject({
      refusals: [{ path: '$.price' }],
    });
    expect(await refused('bags.bought', { ...args, price: -1 })).toMatchObject({
      refusals: [{ path: '$.price' }],
    });
    const gone = { clubId: '4h', to: 'sold', price: 1.234 };
    expect(await refused('bags.bought', { ...args, replaced: [gone] })).toMatchObject({
      refusals: [{ path: '$.replaced[0].price' }],
    });
    const twice = [
      { clubId: '4h', to: 'shelf' },
      { clubId: '4h', to: 'sold' },
    ];
    expect(await refused('bags.bought', { ...args, replaced: twice })).toMatchObject({
      refusals: [{ path: '$.replaced[1].clubId' }],
    });
    expect(
      await refused('bags.bought', { ...args, replaced: [{ clubId: 'zz', to: 'shelf' }] }),
    ).toMatchObject({
      kind: 'not-found',
    });
    expect(await bagOf(bagId)).toEqual(before);
    expect((await call('history.state', {})).undo).toMatchObject({ did: 'players.importBag' });
  });
});

describe('units', () => {
  it('of distance and speed change at any time; what is stored stays', async () => {
    const { bagId } = await open(file());
    await call('bags.setUnits', { bagId, distance: 'm', speed: 'km/h' });
    const bag = await bagOf(bagId);
    expect(bag.units).toEqual({ distance: 'm', speed: 'km/h', currency: 'GBP' });
    expect(bag.clubs[0]?.carry).toBeCloseTo(201 * 0.9144, 9);
    expect(bag.player.driverSpeed).toBeCloseTo(90 * 1.609344, 9);
    await call('bags.setUnits', { bagId, distance: 'yd', speed: 'mph' });
    expect(await bagOf(bagId)).toEqual(file());
  });
  it('another currency converts nothing: refused while there are amounts, relabelled only when asked', async () => {
    const { bagId } = await open(file());
    const error = await refused('bags.setUnits', { bagId, currency: 'EUR' });
    expect(error).toMatchObject({ refusals: [{ path: '$.currency', value: '"EUR"' }] });
    expect(error.message).toContain('6 amounts of this bag are in GBP');
    expect(error.message).toContain('nothing is converted');
    await call('bags.setUnits', { bagId, currency: 'EUR', keepNumbers: true });
    expect(await bagOf(bagId)).toEqual({ ...file(), units: { ...file().units, currency: 'EUR' } });
    expect((await call('prices.bands', { bagId })).otherCurrencies).toEqual([]);
    await call('history.undo', {});
    expect(await bagOf(bagId)).toEqual(file());
  });
  it('numbers that the new currency cannot write are named; digits follow the currency', async () => {
    const { bagId } = await open({ ...file(), budget: { amount: 200.5 } });
    expect(await refused('bags.setUnits', { bagId, currency: 'JPY', keepNumbers: true })).toMatchObject({
      refusals: [{ path: 'budget', value: '200.5' }],
    });
    expect((await bagOf(bagId)).units.currency).toBe('GBP');
    await call('bags.setUnits', { bagId, currency: 'KWD', keepNumbers: true });
    expect((await bagOf(bagId)).budget).toEqual({ amount: 200.5 });
    expect(await refused('bags.setUnits', { bagId, currency: 'XQX' })).toMatchObject({
      refusals: [{ message: 'this is no ISO 4217 currency that is known here' }],
    });
  });
  it('a bag without amounts changes its currency freely', async () => {
    const { bagId } = await open();
    await call('bags.setUnits', { bagId, currency: 'JPY' });
    expect((await bagOf(bagId)).units.currency).toBe('JPY');
  });
  it('what was paid for a club keeps its currency', async () => {
    const { bagId } = await open(file());
    await call('bags.bought', { bagId, archetype: 'hybrid-22-t3', price: 40, replaced: [] });
    await call('bags.setUnits', { bagId, currency: 'EUR', keepNumbers: true });
    await call('clubs.move', { bagId, clubId: 'hybrid-22-t3', to: 'shelf' });
    expect((await call('clubs.elsewhere', { bagId }))[0]?.boughtFor).toEqual({ amount: 40, currency: 'GBP' });
  });
});
