import { join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { backupFolderOf, listBackups } from '../../../db/files/backup.ts';
import { tempFolder } from '../../unit/db/kit.ts';
import { addPlayers, serviceOn, type Service } from '../support/service-on.ts';

/** The clock was set back by years between two starts (a flat battery, a wrong time zone) and forward again. */
beforeEach(() => {
  vi.useFakeTimers({ toFake: ['Date'] });
});
afterEach(() => {
  vi.useRealTimers();
});

const TIMES = [
  '2026-11-26T10:00:00Z',
  '1998-01-01T00:00:00Z',
  '2026-11-27T10:00:00Z',
  '2095-06-01T00:00:00Z',
];

test('edits, undo, backups and prices go on in the order in which they were made', async () => {
  const folder = tempFolder();
  const states: string[] = [];
  for (const time of TIMES) {
    vi.setSystemTime(new Date(time));
    const service = await serviceOn(folder);
    states.push(service.state());
    await addPlayers(service, 1);
    await service.call('backups.make', {});
    await service.gate.close();
  }
  const backups = listBackups(backupFolderOf(join(folder, 'loftledger.db')));
  expect(backups.map(({ sequence }) => sequence)).toEqual([4, 3, 2, 1]);

  vi.setSystemTime(new Date('1970-01-01T00:00:00Z'));
  const service = await serviceOn(folder);
  // The oldest goes first although its clock was not the earliest.
  for (let n = 0; n < 2; n += 1) await service.call('backups.make', {});
  expect((await service.call('backups.list', {})).map(({ sequence }) => sequence)).toEqual([6, 5, 4, 3, 2]);
  for (const state of states.toReversed()) {
    expect(await service.call('history.undo', {})).not.toBeNull();
    expect(service.state()).toBe(state);
  }
  expect(await service.call('history.undo', {})).toBeNull();
  for (const _time of TIMES) await service.call('history.redo', {});
  expect(await service.call('players.roster', {})).toHaveLength(TIMES.length);
});

test('what was written down in the future is neither stale nor refused, and can be edited', async () => {
  const folder = tempFolder();
  vi.setSystemTime(new Date('2095-06-01T00:00:00Z'));
  const later = await serviceOn(folder);
  await addPlayers(later, 1);
  const bagId = await firstBag(later);
  const note = { archetype: 'hybrid-22-t3', low: 30, likely: 40, high: 50, currency: 'GBP' };
  await later.call('prices.add', { note });
  await later.call('clubs.recordCarry', { bagId, clubId: '7i', on: '2095-05-30', carry: 130 });
  await later.gate.close();

  vi.setSystemTime(new Date('2026-11-26T10:00:00Z'));
  const service = await serviceOn(folder);
  const { notes } = await service.call('prices.notes', { bagId, archetype: 'hybrid-22-t3' });
  expect(notes).toMatchObject([{ written: '2095-06-01', stale: false }]);
  expect((await service.call('prices.bands', { bagId })).bands).toMatchObject([{ likely: 40 }]);
  await service.call('prices.update', { noteId: notes[0]?.id ?? 0, patch: { remark: 'seen again' } });
  const { entries } = await service.call('clubs.history', { bagId, clubId: '7i' });
  expect(entries[0]).toMatchObject({ on: '2095-05-30', counts: true });
  const answer = await service.call('answers.plan', { bagId });
  expect(answer.plan.ladder.length).toBeGreaterThan(5);
});

async function firstBag(service: Service): Promise<number> {
  return (await service.call('players.roster', {}))[0]?.bagId ?? 0;
}
