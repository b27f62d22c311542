import { describe, expect, it } from 'vitest';
import { bagFile } from '../../support/bags.ts';
import { useService } from './kit.ts';

const { call, refused, open } = useService();
const carryOf = async (bagId: number, clubId: string) =>
  (await call('bags.read', { bagId })).bag.clubs.find((club) => club.id === clubId)?.carry;

describe('a club’s history', () => {
  it('keeps dated carries; the newest day counts, whatever is added later', async () => {
    const { bagId } = await open();
    const at = { bagId, clubId: '7i' };
    await call('clubs.recordCarry', { ...at, on: '2099-03-01', carry: 135 });
    await call('clubs.recordCarry', {
      ...at,
      on: '2099-01-01',
      carry: 131,
      carrySd: 4,
      shots: 12,
      total: 140,
    });
    const { entries, trend } = await call('clubs.history', at);
    // The carry that the bag came in with is the first entry.
    expect(entries.map(({ on, carry, counts }) => [on.slice(0, 4), carry, counts])).toEqual([
      ['2099', 135, true],
      ['2099', 131, false],
      [String(new Date().getFullYear()), 129, false],
    ]);
    expect(entries[1]).toMatchObject({
      source: 'measured',
      carrySd: 4,
      shots: 12,
      total: 140,
      imported: false,
    });
    expect(trend?.perYear).toBeLessThan(1);
    expect(await carryOf(bagId, '7i')).toBe(135);
    await call('clubs.removeCarry', { ...at, carryId: entries[0]?.id ?? 0 });
    expect(await carryOf(bagId, '7i')).toBe(131);
    await call('history.undo', {});
    expect(await carryOf(bagId, '7i')).toBe(135);
    for (let i = 0; i < 2; i++) await call('history.undo', {});
    expect((await call('bags.read', { bagId })).bag).toEqual(bagFile());
    expect((await call('clubs.history', at)).entries).toEqual([]);
  });
  it('a carry typed into the bag is today’s, and the last one of the day', async () => {
    const { bagId } = await open();
    const at = { bagId, clubId: '7i' };
    await call('clubs.recordCarry', { ...at, on: '2020-01-01', carry: 120 });
    expect(await carryOf(bagId, '7i')).toBe(120); // the bag's own carry has no day before that
    await call('bags.updateClub', { ...at, patch: { carry: 130 } });
    await call('bags.updateClub', { ...at, patch: { carry: 132 } });
    await call('bags.updateClub', { ...at, patch: { shots: 20, carrySd: 3 } });
    const { entries } = await call('clubs.history', at);
    expect(entries.map(({ carry, source }) => [carry, source])).toEqual([
      [132, 'measured'],
      [120, 'stated'],
    ]);
    expect(await carryOf(bagId, '7i')).toBe(132);
    // What is typed counts, also where a day to come is there.
    await call('clubs.recordCarry', { ...at, on: '2099-01-01', carry: 150 });
    await call('bags.updateClub', { ...at, patch: { carry: 133 } });
    expect(await carryOf(bagId, '7i')).toBe(133);
    // Cleared is cleared; the history stays.
    await call('bags.updateClub', { ...at, patch: { carry: null, carrySd: null, shots: null } });
    expect(await carryOf(bagId, '7i')).toBeUndefined();
    expect((await call('clubs.history', at)).entries.length).toBe(entries.length + 1);
  });
  it('an imported session is one entry, and an older session does not overtake what is newer', async () => {
    const { bagId } = await open();
    const at = { bagId, clubId: '7i' };
    await call('bags.updateClub', { ...at, patch: { carry: 130 } });
    const mapping = {
      columns: { club: 0, carry: 1 },
      decimal: '.' as const,
      distance: 'yd' as const,
      speed: 'mph' as const,
      clubs: { seven: '7i' },
    };
    await call('shots.import', {
      bagId,
      source: { text: 'Club,Carry\nseven,120\nseven,122\n' },
      mapping,
      leaveOut: [],
      skipBad: false,
      sessionOn: '2026-01-01',
    });
    expect(await carryOf(bagId, '7i')).toBe(130);
    const { entries } = await call('clubs.history', at);
    expect(entries.find((entry) => entry.imported)).toMatchObject({
      carry: 121,
      on: '2026-01-01',
      counts: false,
    });
  });
  it('is told in the bag’s unit', async () => {
    const { bagId } = await open();
    await call('bags.setUnits', { bagId, distance: 'm' });
    await call('clubs.recordCarry', { bagId, clubId: '7i', on: '2099-01-01', carry: 120 });
    expect((await call('clubs.history', { bagId, clubId: '7i' })).entries[0]?.carry).toBe(120);
    await call('bags.setUnits', { bagId, distance: 'yd' });
    expect((await call('clubs.history', { bagId, clubId: '7i' })).entries[0]?.carry).toBe(131.2);
  });
  it('refuses what a bag would refuse', async () => {
    const { bagId } = await open();
    const at = { bagId, clubId: '7i', on: '2026-01-01' };
    expect(await refused('clubs.recordCarry', { ...at, carry: 900 })).toMatchObject({ kind: 'refused' });
    expect(await refused('clubs.recordCarry', { ...at, carry: 100, total: 90 })).toMatchObject({
      kind: 'refused',
    });
    expect(await refused('clubs.recordCarry', { ...at, on: '2026-02-30', carry: 100 })).toMatchObject({
      refusals: [{ path: '$.on' }],
    });
    expect(await refused('clubs.recordCarry', { ...at, clubId: 'x', carry: 100 })).toMatchObject({
      kind: 'not-found',
    });
    expect(await refused('clubs.removeCarry', { bagId, clubId: '7i', carryId: 99 })).toMatchObject({
      kind: 'not-found',
    });
    expect(await carryOf(bagId, '7i')).toBe(129);
  });
});

describe('moving a club', () => {
  it('to the shelf, sold, and back; its history and its id go with it', async () => {
    const { bagId } = await open();
    const at = { bagId, clubId: '4h' };
    await call('clubs.recordCarry', { ...at, on: '2099-01-01', carry: 165 });
    await call('clubs.move', { ...at, to: 'shelf' });
    expect(await carryOf(bagId, '4h')).toBeUndefined();
    expect(await call('clubs.elsewhere', { bagId })).toEqual([
      { clubId: '4h', kind: 'hybrid', label: '4h', place: 'shelf' },
    ]);
    expect(
      await refused('bags.addClub', { bagId, club: { id: '4h', kind: 'hybrid', loftDeg: 22 } }),
    ).toMatchObject({ refusals: [{ path: '$.club.id', message: 'a club on the shelf has this id' }] });
    await call('clubs.move', { ...at, to: 'sold', price: 35.5 });
    expect(await call('clubs.elsewhere', { bagId })).toMatchObject([
      { place: 'sold', soldFor: { amount: 35.5, currency: 'GBP' } },
    ]);
    await call('clubs.move', { ...at, to: 'bag' });
    expect(await carryOf(bagId, '4h')).toBe(165);
    expect(await call('clubs.elsewhere', { bagId })).toEqual([]);
    for (let i = 0; i < 4; i++) await call('history.undo', {});
    expect((await call('bags.read', { bagId })).bag).toEqual(bagFile());
  });
  it('a set whose clubs are all away is none of the bag’s, and comes back with them', async () => {
    const file = bagFile({ sets: [{ id: 'irons', sell: { low: 50, likely: 60, high: 70 } }] });
    const { bagId } = await open({
      ...file,
      clubs: file.clubs.map((club) => (club.id === '5i' ? { ...club, set: 'irons' } : club)),
    });
    await call('clubs.move', { bagId, clubId: '5i', to: 'shelf' });
    expect((await call('bags.read', { bagId })).bag).not.toHaveProperty('sets');
    await call('bags.setBudget', { bagId, budget: { amount: 50 } }); // the bag can still be edited
    await call('clubs.move', { bagId, clubId: '5i', to: 'bag' });
    expect((await call('bags.read', { bagId })).bag.sets).toEqual(file.sets);
  });
});
