import { describe, expect, it } from 'vitest';
import { bagFile, without } from '../../support/bags.ts';
import { useService } from './kit.ts';

const { call, refused, open } = useService();

const note = { archetype: 'hybrid-22-t3', low: 30, likely: 45, high: 60, currency: 'GBP' };

describe('notes', () => {
  it('are everybody’s: added, listed, changed, cleared, struck out, undone', async () => {
    const { bagId } = await open();
    const { noteId } = await call('prices.add', {
      note: { ...note, seen: '2026-11-01', condition: 'worn', place: 'Car boot', remark: 'grip gone' },
    });
    expect(await call('prices.list', { limit: 10 })).toMatchObject([
      { id: noteId, ...note, seen: '2026-11-01', condition: 'worn', place: 'Car boot' },
    ]);
    await call('prices.update', {
      noteId,
      patch: { likely: 50, condition: null, place: null, seen: null },
    });
    const [after] = (await call('prices.notes', { bagId, archetype: note.archetype })).notes;
    expect(after).toMatchObject({ low: 30, likely: 50, high: 60, share: 1, outlier: false });
    expect(after).not.toHaveProperty('condition');
    expect(after).not.toHaveProperty('seen');
    await call('prices.remove', { noteId });
    expect(await call('prices.list', { limit: 10 })).toEqual([]);
    expect(await call('history.undo', {})).toEqual({ did: 'prices.remove', archetype: note.archetype });
    expect(await call('prices.list', { limit: 10 })).toHaveLength(1);
  });
  it('are refused with place, value and remedy', async () => {
    const { bagId } = await open();
    const add = (change: object) => refused('prices.add', { note: { ...note, ...change } });
    expect(await add({ low: 50 })).toMatchObject({
      kind: 'refused',
      refusals: [{ path: '$.note.low', value: '50', remedy: 'Give low ≤ likely ≤ high.' }],
    });
    expect(await add({ likely: 70 })).toMatchObject({ refusals: [{ path: '$.note.likely' }] });
    expect(await add({ likely: 45.123 })).toMatchObject({
      refusals: [{ path: '$.note.likely', value: '45.123' }],
    });
    expect(await add({ currency: 'XQX' })).toMatchObject({ refusals: [{ path: '$.note.currency' }] });
    expect(await add({ currency: 'JPY', likely: 45.5 })).toMatchObject({ refusals: [{ value: '45.5' }] });
    expect((await add({ archetype: 'hybird-22-t3' })).message).toContain('hybrid-22-t3');
    expect(await add({ condition: 'fine' })).toMatchObject({ refusals: [{ path: '$.note.condition' }] });
    expect(await add({ low: Number.NaN })).toMatchObject({ kind: 'refused' });
    expect(await add({ remark: '\ud800' })).toMatchObject({ kind: 'refused' });
    expect(await add({ bagId: bagId + 7 })).toMatchObject({ kind: 'not-found' });
    expect(await refused('prices.update', { noteId: 4711, patch: {} })).toMatchObject({ kind: 'not-found' });
    expect(await call('prices.list', { limit: 10 })).toEqual([]);
  });
  it('are shown as they go into the band, too: in the condition that it speaks of', async () => {
    const { bagId } = await open();
    const { factors, condition } = await call('prices.assumptions', {});
    expect(condition).toBe('played');
    await call('prices.add', { note: { ...note, condition: 'unmarked' } });
    await call('prices.add', { note });
    const { notes } = await call('prices.notes', { bagId, archetype: note.archetype });
    const of = (wanted: string | undefined) => notes.find((one) => one.condition === wanted);
    expect(of('unmarked')).toMatchObject({ low: 30, likely: 45, high: 60 });
    expect(of('unmarked')?.inBand.high).toBeCloseTo((60 * factors.played) / factors.unmarked, 2);
    expect(of(undefined)?.inBand).toEqual({ low: 30, likely: 45, high: 60 });
  });
  it('of another currency convert nothing: the band must come with it', async () => {
    await open();
    const { noteId } = await call('prices.add', { note });
    expect(await refused('prices.update', { noteId, patch: { currency: 'EUR' } })).toMatchObject({
      refusals: [{ path: '$.patch.currency', message: 'nothing is converted: the price is in GBP' }],
    });
    await call('prices.update', { noteId, patch: { currency: 'JPY', low: 1, likely: 2, high: 3 } });
    expect(await call('prices.list', { limit: 1 })).toMatchObject([{ currency: 'JPY', high: 3 }]);
  });
});

describe('bands', () => {
  it('come from everybody’s notes, and the plan reckons with them', async () => {
    const file = bagFile({ prices: [], budget: { amount: 200 } });
    const { bagId } = await open(without(file, '4h'));
    expect((await call('answers.plan', { bagId })).plan.plan.swaps.filter((s) => s.action === 'buy')).toEqual(
      [],
    );
    await call('prices.add', { note: { ...note, likely: 40, seen: '2026-11-01' } });
    await call('prices.add', { note: { ...note, low: 20, likely: 34, high: 50, seen: '2026-09-02' } });
    expect(await call('prices.bands', { bagId })).toMatchObject({
      condition: 'played',
      bands: [
        {
          archetype: 'hybrid-22-t3',
          low: 20,
          likely: 38,
          high: 60,
          method: 'two',
          counted: 2,
          outliers: 0,
          newest: '2026-11-01',
          own: false,
        },
      ],
      otherCurrencies: [],
    });
    const { plan } = await call('answers.plan', { bagId });
    expect(plan.plan.swaps).toContainEqual(
      expect.objectContaining({ action: 'buy', archetype: 'hybrid-22-t3', price: 38 }),
    );
    // They are nobody's own: the bag's file stays as it was, and its export holds what the plan reckons with.
    expect((await call('bags.read', { bagId })).bag.prices).toEqual([]);
    expect(JSON.parse((await call('bags.export', { bagId })).text)).toMatchObject({
      prices: [{ archetype: 'hybrid-22-t3', low: 20, likely: 38, high: 60, seen: '2026-11-01' }],
    });
  });
  it('of the bag’s own notes stand alone', async () => {
    const { bagId } = await open();
    const other = await open();
    await call('prices.add', { note });
    await call('prices.add', { note: { ...note, low: 5, likely: 6, high: 7, bagId } });
    expect((await call('prices.bands', { bagId })).bands).toMatchObject([
      { likely: 6, own: true, method: 'one' },
    ]);
    expect((await call('prices.bands', { bagId: other.bagId })).bands).toMatchObject([
      { likely: 45, own: false },
    ]);
    // A typed band takes their place; struck out, everybody's notes speak again.
    await call('prices.add', { note: { ...note, low: 8, likely: 9, high: 10, bagId } });
    await call('bags.setPrice', { bagId, archetype: note.archetype, band: { low: 1, likely: 2, high: 3 } });
    expect((await call('prices.bands', { bagId })).bands).toMatchObject([
      { low: 1, likely: 2, high: 3, counted: 1 },
    ]);
    await call('bags.setPrice', { bagId, archetype: note.archetype, band: null });
    expect((await call('prices.bands', { bagId })).bands).toMatchObject([{ likely: 45, own: false }]);
  });
  it('never mix currencies: others are listed apart', async () => {
    const { bagId } = await open();
    await call('prices.add', { note: { ...note, currency: 'EUR', seen: '2026-10-01' } });
    await call('prices.add', { note: { ...note, currency: 'EUR', seen: '2026-11-02' } });
    await call('prices.add', { note: { ...note, currency: 'USD', bagId } });
    const { bands, otherCurrencies } = await call('prices.bands', { bagId });
    expect(bands).toEqual([]);
    expect(otherCurrencies).toMatchObject([
      { archetype: note.archetype, currency: 'USD', notes: 1 },
      { archetype: note.archetype, currency: 'EUR', notes: 2, newest: '2026-11-02' },
    ]);
    const notes = await call('prices.notes', { bagId, archetype: note.archetype });
    expect([notes.notes.length, notes.otherCurrencies.length]).toEqual([0, 3]);
    expect((await call('bags.read', { bagId })).bag.prices).toEqual([]);
    expect((await call('answers.plan', { bagId })).plan.frontier.every((point) => point.cost <= 0)).toBe(
      true,
    );
  });
  it('mark outliers and stale notes, and follow the user’s assumptions', async () => {
    const { bagId } = await open();
    for (const likely of [45, 46, 47, 460]) {
      await call('prices.add', { note: { ...note, low: likely, likely, high: likely, seen: '2020-01-01' } });
    }
    const { bands } = await call('prices.bands', { bagId });
    expect(bands).toMatchObject([{ low: 45, likely: 46, high: 47, counted: 3, outliers: 1, stale: true }]);
    const { notes } = await call('prices.notes', { bagId, archetype: note.archetype });
    expect(notes.map((one) => [one.likely, one.outlier, one.stale])).toEqual([
      [460, true, true],
      [47, false, true],
      [46, false, true],
      [45, false, true],
    ]);
    await call('prices.setAssumptions', { staleDays: 3650 });
    expect((await call('prices.bands', { bagId })).bands[0]?.stale).toBe(false);
    await call('prices.add', { note: { ...note, archetype: 'wedge-50-t2', condition: 'unmarked' } });
    const likely = async () =>
      (await call('prices.bands', { bagId })).bands.find((band) => band.archetype === 'wedge-50-t2')?.likely;
    expect(await likely()).toBe(32.4);
    await call('prices.setAssumptions', { condition: 'unmarked' });
    expect(await likely()).toBe(45);
    expect(await call('prices.assumptions', {})).toMatchObject({ staleDays: 3650, condition: 'unmarked' });
    await call('history.undo', {});
    await call('history.undo', {});
    expect(await call('prices.assumptions', {})).toMatchObject({ staleDays: 3650, condition: 'played' });
    expect(await refused('prices.setAssumptions', { halfLifeDays: 0 })).toMatchObject({ kind: 'refused' });
  });
  it('a copy of a player takes the bag’s own prices along, not everybody’s', async () => {
    const { playerId, bagId } = await open();
    await call('prices.add', { note });
    await call('prices.add', { note: { ...note, archetype: 'wedge-50-t2', bagId } });
    const copy = await call('players.duplicate', { playerId });
    expect((await call('bags.read', { bagId: copy.bagId })).bag.prices).toHaveLength(1);
    expect((await call('prices.bands', { bagId: copy.bagId })).bands).toHaveLength(2);
  });
});

describe('seen one', () => {
  const gap = () => without(bagFile({ budget: { amount: 100 }, costs: { delivery: 8 } }), '4h');

  it('says buy, haggle or leave, as the plan would, and stores nothing', async () => {
    const { bagId } = await open(gap());
    const archetype = 'hybrid-22-t3';
    const ask = (price: number) => call('prices.seenOne', { bagId, archetype, price });
    const cheap = await ask(10);
    expect(cheap).toMatchObject({ verdict: 'buy', inPlaceOf: [] });
    // The price at which it enters the plan, found by asking.
    const dear = await ask(1000);
    expect(dear).toMatchObject({ verdict: 'leave', why: 'too-dear' });
    const most = dear.walkAway ?? 0;
    expect(most).toBeGreaterThan(10);
    expect(await ask(most)).toMatchObject({ verdict: 'buy' });
    expect(await ask(most + 0.01)).toMatchObject({ verdict: 'haggle', haggleTo: most });
    expect(await ask(Math.floor(most * 125) / 100)).toMatchObject({ verdict: 'haggle' });
    expect(await ask(Math.ceil(most * 125) / 100 + 0.01)).toMatchObject({ verdict: 'leave' });
    expect((await call('bags.read', { bagId })).bag.prices).toEqual([]);
    expect((await call('history.state', {})).undo).toMatchObject({ did: 'players.importBag' });
    // And so does the plan, when the price is noted.
    for (const [likely, bought] of [
      [most, true],
      [most + 0.01, false],
    ] as const) {
      await call('bags.setPrice', { bagId, archetype, band: { low: likely, likely, high: likely } });
      const { plan } = await call('answers.plan', { bagId });
      expect(plan.plan.swaps.some((swap) => swap.archetype === archetype)).toBe(bought);
    }
  });
  it('prints the walk-away price that the plan prints, and never more than the band', async () => {
    const file = gap();
    const { bagId } = await open({
      ...file,
      prices: [
        { archetype: 'hybrid-22-t3', low: 30, likely: 40, high: 44 },
        { archetype: 'hybrid-22-t2', low: 50, likely: 60, high: 70 },
      ],
    });
    const { plan } = await call('answers.plan', { bagId });
    const printed = plan.plan.swaps.find((swap) => swap.archetype === 'hybrid-22-t3')?.walkAway;
    expect(printed).toBe(44);
    const ask = (price: number) => call('prices.seenOne', { bagId, archetype: 'hybrid-22-t3', price });
    expect(await ask(40)).toMatchObject({ verdict: 'buy', walkAway: printed });
    expect(await ask(50)).toMatchObject({ verdict: 'haggle', haggleTo: 44, why: 'above-band' });
    expect(await ask(58)).toMatchObject({ verdict: 'leave', why: 'above-band' });
  });
  it('counts the condition: one worth 72 played is worth 100 unmarked and 35 damaged', async () => {
    const { bagId } = await open(gap());
    const ask = (condition: 'played' | 'unmarked' | 'damaged', price: number) =>
      call('prices.seenOne', { bagId, archetype: 'hybrid-22-t3', price, condition });
    const most = (await ask('played', 1000)).walkAway ?? 0;
    const unmarked = (await ask('unmarked', 1000)).walkAway ?? 0;
    const damaged = (await ask('damaged', 1000)).walkAway ?? 0;
    expect(unmarked / most).toBeCloseTo(1 / 0.72, 2);
    expect(damaged / most).toBeCloseTo(0.35 / 0.72, 2);
    expect(await ask('damaged', damaged)).toMatchObject({ verdict: 'buy' });
    expect(await ask('damaged', damaged + 0.02)).toMatchObject({ verdict: 'haggle' });
  });
  it('leaves what the player cannot use, what the bag keeps, and everything when there is pain', async () => {
    const { bagId } = await open(gap());
    const why = async (archetype: string, id = bagId) =>
      (await call('prices.seenOne', { bagId: id, archetype, price: 1 })).why;
    expect(await why('iron-18-t2-low')).toBe('not-usable');
    expect(await why('putter-3-t1')).toBe('putter-stays');
    const painful = await open(without(bagFile({}, { pain: true }), '4h'));
    expect(await why('hybrid-22-t3', painful.bagId)).toBe('stopped');
    const { driverSpeed: _speed, ...unknown } = bagFile().player;
    const empty = await open({ ...bagFile({ clubs: [] }), player: unknown });
    expect(await why('hybrid-22-t3', empty.bagId)).toBe('too-little-known');
    expect(await refused('prices.seenOne', { bagId, archetype: 'nothing', price: 1 })).toMatchObject({
      kind: 'refused',
      refusals: [{ path: '$.archetype' }],
    });
    expect(await refused('prices.seenOne', { bagId, archetype: 'hybrid-22-t3', price: 1.234 })).toMatchObject(
      {
        refusals: [{ path: '$.price' }],
      },
    );
  });
});

describe('the watch list', () => {
  it('names the price at which each first enters the plan: there it is bought, a unit above not', async () => {
    const file = without(bagFile({ budget: { amount: 120 }, costs: { delivery: 8, regrip: 4 } }), '4h');
    const { bagId } = await open(file);
    const { items, cancelled } = await call('prices.watchList', { bagId });
    expect(cancelled).toBe(false);
    expect(items.length).toBeGreaterThan(3);
    expect(items.length).toBeLessThanOrEqual(12);
    const prices = items.map((item) => item.below ?? Infinity);
    expect(prices).toEqual([...prices].sort((a, b) => b - a));
    for (const { archetype, below } of items.slice(0, 4)) {
      if (below === null) throw new Error('a budget is a ceiling');
      expect(await call('prices.seenOne', { bagId, archetype, price: below })).toMatchObject({
        verdict: 'buy',
      });
      expect(await call('prices.seenOne', { bagId, archetype, price: below + 0.01 })).toMatchObject({
        verdict: 'haggle',
        haggleTo: below,
      });
    }
    const named = items.flatMap((item) => [item.archetype, ...item.alike.map((one) => one.archetype)]);
    expect(new Set(named).size).toBe(named.length);
    expect(await call('prices.watchList', { bagId })).toEqual({ items, cancelled });
  });
  it('without a budget, what nothing priced can do has no ceiling; what is priced is not on the list', async () => {
    const { bagId } = await open(
      without(bagFile({ prices: [{ archetype: 'hybrid-22-t3', low: 900, likely: 950, high: 990 }] }), '4h'),
    );
    const { items } = await call('prices.watchList', { bagId });
    const named = items.flatMap((item) => [item.archetype, ...item.alike.map((one) => one.archetype)]);
    expect(named).not.toContain('hybrid-22-t3');
    expect(items[0]?.below === null || (items[0]?.below ?? 0) > 900).toBe(true);
  });
  it('is empty for a player in pain', async () => {
    const { bagId } = await open(without(bagFile({}, { pain: true }), '4h'));
    expect(await call('prices.watchList', { bagId })).toEqual({ cancelled: false, items: [] });
  });
  it('can be cancelled, and a newer one of the same name takes its place', async () => {
    const { bagId } = await open(without(bagFile(), '4h'));
    const first = call('prices.watchList', { bagId, job: 'list' });
    const second = call('prices.watchList', { bagId, job: 'list' });
    expect((await first).cancelled).toBe(true);
    expect((await second).cancelled).toBe(false);
    const third = call('prices.watchList', { bagId, job: 'list' });
    expect(await call('jobs.cancel', { job: 'list' })).toEqual({ cancelled: true });
    expect(await third).toEqual({ cancelled: true, items: [] });
    expect(await call('jobs.cancel', { job: 'list' })).toEqual({ cancelled: false });
  });
});
