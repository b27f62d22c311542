import { expect, it } from 'vitest';
import { calls } from '../../../src-main/contract/calls/index.ts';
import { createService } from '../../../src-main/service/service.ts';
import type { HostServices } from '../../../src-main/service/handler.ts';
import { bagFile } from '../../support/bags.ts';
import { useService } from './kit.ts';

const { call, open, refused } = useService();

async function asked(host?: HostServices) {
  const gate = await createService({ dataDir: ':memory:', version: '1.2.3', ...(host ? { host } : {}) });
  try {
    const about = await gate.call({ call: 'program.about', args: {} });
    const opened = await gate.call({ call: 'program.openDataFolder', args: {} });
    if (!about.ok || !opened.ok) throw new Error('refused');
    return {
      about: calls['program.about'].result.parse(about.value),
      ...calls['program.openDataFolder'].result.parse(opened.value),
    };
  } finally {
    await gate.close();
  }
}

it('tells the version, the data folder and the host', async () => {
  const { about, opened } = await asked();
  expect(about).toEqual({ version: '1.2.3', dataFolder: ':memory:', host: null, canOpenFolder: false });
  expect(opened).toBe(false);
});

it('the folder is shown by the host, which says whether it was; the window names none', async () => {
  let shown = 0;
  const host = (result: boolean): HostServices => ({
    name: 'electron',
    openDataFolder: () => Promise.resolve((shown++, result)),
  });
  expect(await asked(host(true))).toMatchObject({
    about: { host: 'electron', canOpenFolder: true },
    opened: true,
  });
  expect((await asked(host(false))).opened).toBe(false);
  expect(shown).toBe(2);
  expect(await asked({ name: 'browser', openDataFolder: null })).toMatchObject({
    about: { host: 'browser', canOpenFolder: false },
    opened: false,
  });
  expect((await refused('program.openDataFolder', { folder: '/etc' })).kind).toBe('refused');
});

it('theme and language are kept apart; what is no choice falls back', async () => {
  expect(await call('settings.read', {})).toEqual({ theme: 'system', language: 'system' });
  await call('settings.update', { language: 'de' });
  await call('settings.update', { theme: 'lamp-lit' });
  expect(await call('settings.read', {})).toEqual({ theme: 'lamp-lit', language: 'de' });
  expect((await refused('settings.update', { language: 'xx' })).refusals?.[0]?.path).toBe('$.language');
});

it('a bag’s amounts are told before they would mean another currency', async () => {
  const { bagId } = await open();
  expect(await call('bags.amounts', { bagId })).toEqual({ currency: 'GBP', count: 0, kinds: [] });
  const { bagId: other } = await open(
    bagFile({
      budget: { amount: 200 },
      costs: { delivery: 8, sellFeePercent: 10 },
      prices: [{ archetype: 'hybrid-22-t3', low: 30, likely: 45, high: 60 }],
    }),
  );
  expect(await call('bags.amounts', { bagId: other })).toEqual({
    currency: 'GBP',
    count: 3,
    kinds: ['budget', 'costs', 'prices'],
  });
  expect((await refused('bags.setUnits', { bagId: other, currency: 'EUR' })).kind).toBe('refused');
  await call('bags.setUnits', { bagId: other, currency: 'EUR', keepNumbers: true });
  const { bag } = await call('bags.read', { bagId: other });
  expect(bag.units.currency).toBe('EUR');
  expect(bag.budget?.amount).toBe(200);
  expect(await call('bags.amounts', { bagId: other })).toMatchObject({ currency: 'EUR', count: 3 });
});
