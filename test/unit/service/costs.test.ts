import { describe, expect, it } from 'vitest';
import { bagFile } from '../../support/bags.ts';
import { useService } from './kit.ts';

const { call, refused, open } = useService();
const units = { distance: 'yd', speed: 'mph', currency: 'GBP' } as const;

describe('cost lines', () => {
  it('of a bag: those of the plan are those of its file, off counts in nothing, others stand beside', async () => {
    const { bagId } = await open(bagFile({ costs: { delivery: 8, sellFeePercent: 12.5 } }));
    const costs = async () => (await call('bags.read', { bagId })).bag.costs;
    const [delivery, fee] = await call('costs.list', { bagId });
    expect(delivery).toMatchObject({ kind: 'delivery', amount: 8, currency: 'GBP', enabled: true });
    expect(fee).toMatchObject({ kind: 'sell-fee', percent: 12.5 });
    const id = delivery?.id ?? 0;
    await call('costs.save', { bagId, id, line: { kind: 'delivery', amount: 9.5, enabled: false } });
    expect(await costs()).toEqual({ sellFeePercent: 12.5 });
    await call('costs.save', {
      bagId,
      line: { kind: 'bend', label: 'sand wedge', amount: 4, enabled: true },
    });
    await call('costs.save', { bagId, line: { kind: 'bend', label: 'gap wedge', amount: 4, enabled: true } });
    expect(await costs()).toEqual({ sellFeePercent: 12.5 });
    await call('costs.save', { bagId, id, line: { kind: 'delivery', amount: 9.5, enabled: true } });
    expect(await costs()).toEqual({ delivery: 9.5, sellFeePercent: 12.5 });
    await call('costs.remove', { bagId, id });
    for (let i = 0; i < 5; i++) await call('history.undo', {});
    expect(await costs()).toEqual({ delivery: 8, sellFeePercent: 12.5 });
    expect(await call('costs.list', { bagId })).toHaveLength(2);
  });
  it('of nobody are what new bags of that currency begin with', async () => {
    for (const line of [
      { kind: 'delivery', amount: 12, currency: 'GBP', enabled: true },
      { kind: 'regrip', amount: 9, currency: 'GBP', enabled: false },
      { kind: 'sell-fee', percent: 13, enabled: true },
      { kind: 'shaft', amount: 20, currency: 'EUR', enabled: true },
    ] as const) {
      await call('costs.save', { bagId: null, line });
    }
    const { bagId } = await call('players.create', { name: 'Ada', handicap: 20, units });
    expect((await call('bags.read', { bagId })).bag.costs).toEqual({ delivery: 12, sellFeePercent: 13 });
    expect((await call('costs.list', { bagId })).map((line) => line.kind)).toEqual([
      'delivery',
      'regrip',
      'sell-fee',
    ]);
  });
  it('refuses a second of a kind, an amount that does not fit, a line of another bag', async () => {
    const { bagId } = await open(bagFile({ costs: { delivery: 8 } }));
    const save = (line: object, more: object = {}) => refused('costs.save', { bagId, line, ...more });
    const at = (path: string) => ({ kind: 'refused', refusals: [{ path }] });
    const on = { enabled: true };
    expect(await save({ kind: 'delivery', amount: 1, ...on })).toMatchObject(at('$.line.kind'));
    expect(await save({ kind: 'regrip', ...on })).toMatchObject(at('$.line'));
    expect(await save({ kind: 'regrip', amount: 1, percent: 1, ...on })).toMatchObject(at('$.line'));
    expect(await save({ kind: 'regrip', percent: 1, ...on })).toMatchObject(at('$.line.percent'));
    expect(await save({ kind: 'sell-fee', amount: 1, ...on })).toMatchObject(at('$.line.amount'));
    expect(await save({ kind: 'regrip', amount: 1.234, ...on })).toMatchObject(at('$.line.amount'));
    expect(await save({ kind: 'regrip', amount: 1, currency: 'EUR', ...on })).toMatchObject(
      at('$.line.currency'),
    );
    expect(await save({ kind: 'other', amount: 1, ...on }, { bagId: null })).toMatchObject(
      at('$.line.currency'),
    );
    const other = await open();
    const [line] = await call('costs.list', { bagId });
    const foreign = { bagId: other.bagId, id: line?.id };
    expect(await save({ kind: 'other', amount: 1, ...on }, foreign)).toMatchObject({ kind: 'not-found' });
    expect(await refused('costs.remove', foreign)).toMatchObject({ kind: 'not-found' });
    expect(await call('costs.list', { bagId })).toHaveLength(1);
  });
});

describe('the user’s own archetypes', () => {
  const mine = {
    id: 'wedge-53-mine',
    kind: 'wedge',
    loftDeg: 53,
    forgiveness: 2,
    spinTier: 'mid',
    lengthIn: 34,
  } as const;

  it('stand beside the catalogue, are priced and found like it, and go with their notes', async () => {
    const { bagId } = await open();
    await call('archetypes.add', { archetype: mine });
    await call('archetypes.update', { archetype: { ...mine, lengthIn: 34.5 } });
    expect(await call('archetypes.own', {})).toEqual([{ ...mine, lengthIn: 34.5 }]);
    await call('bags.setPrice', { bagId, archetype: mine.id, band: { low: 1, likely: 2, high: 3 } });
    expect((await call('search.all', { text: '53 wedge', limit: 5 })).archetypes[0]?.id).toBe(mine.id);
    await call('archetypes.remove', { id: mine.id });
    expect((await call('bags.read', { bagId })).bag.prices).toEqual([]);
    await call('history.undo', {});
    expect((await call('bags.read', { bagId })).bag.prices).toHaveLength(1);
  });
  it('never take an id of the catalogue, nor change one of its own', async () => {
    expect(await refused('archetypes.add', { archetype: { ...mine, id: 'wedge-50-t2' } })).toMatchObject({
      refusals: [{ path: '$.archetype.id', message: 'the catalogue has one of this id' }],
    });
    expect(await refused('archetypes.update', { archetype: { ...mine, id: 'wedge-50-t2' } })).toMatchObject({
      kind: 'not-found',
    });
    expect(await refused('archetypes.remove', { id: 'wedge-50-t2' })).toMatchObject({ kind: 'not-found' });
    expect(await refused('archetypes.add', { archetype: { ...mine, id: 'Bad Id' } })).toMatchObject({
      refusals: [{ path: '$.archetype.id' }],
    });
    expect(await call('archetypes.own', {})).toEqual([]);
  });
});
