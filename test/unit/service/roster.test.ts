import { describe, expect, it } from 'vitest';
import type { ProgressEvent } from '../../../src-main/contract/calls/index.ts';
import { bagFile, without } from '../../support/bags.ts';
import { rosterOf } from '../../support/roster.ts';
import { useService } from './kit.ts';

const service = useService();
const { call, open, refused } = service;

async function openAll(players: number): Promise<number[]> {
  const bagIds: number[] = [];
  for (const file of rosterOf(players, 3)) bagIds.push((await open(file)).bagId);
  return bagIds;
}

const line = async (bagId: number) =>
  (await call('players.roster', {})).find((player) => player.bagId === bagId);

describe('a roster planned anew', () => {
  it('keeps of each what its own page would say', async () => {
    const bagIds = await openAll(6);
    const note = { archetype: 'hybrid-22-t3', low: 30, likely: 40, high: 50, currency: 'GBP' };
    await call('prices.add', { note });
    expect((await line(bagIds[0] ?? 0))?.plannedAt).toBeUndefined();
    expect(await call('roster.plan', { bagIds, job: 'r' })).toEqual({
      planned: 6,
      cancelled: false,
      refused: [],
    });
    for (const bagId of bagIds) {
      const brief = await line(bagId);
      const { plan } = await call('answers.plan', { bagId });
      const { status, openFindings, plannedAt } = (await line(bagId)) ?? {};
      expect(brief).toMatchObject({ status: plan.plan.status, openFindings });
      expect(status).toBe(plan.plan.status);
      expect(plannedAt).toMatch(/^\d{4}-\d\d-\d\dT/);
    }
  });

  it('leaves no step to take back, and tells the windows once', async () => {
    const bagIds = await openAll(2);
    const steps = await call('history.list', {});
    const events: string[] = [];
    const stop = service.gate().subscribe(({ event }) => events.push(event));
    await call('roster.plan', { bagIds, job: 'r' });
    stop();
    expect(await call('history.list', {})).toEqual(steps);
    expect(events.filter((event) => event === 'changed')).toEqual(['changed']);
  });

  it('tells how far it is', async () => {
    const bagIds = await openAll(3);
    const told: ProgressEvent['data'][] = [];
    service.gate().subscribe(({ event, data }) => {
      if (event === 'progress') told.push(data as ProgressEvent['data']);
    });
    await call('roster.plan', { bagIds, job: 'r' });
    expect(told.at(-1)).toEqual({ job: 'r', done: 3, of: 3 });
  });

  it('ends where it is told to: what was planned stays', async () => {
    const bagIds = await openAll(20);
    const running = call('roster.plan', { bagIds, job: 'r' });
    expect(await call('jobs.cancel', { job: 'r' })).toEqual({ cancelled: true });
    const outcome = await running;
    expect(outcome).toMatchObject({ cancelled: true, refused: [] });
    expect(outcome.planned).toBeLessThan(20);
    const planned = (await call('players.roster', {})).filter(({ plannedAt }) => plannedAt !== undefined);
    expect(planned).toHaveLength(outcome.planned);
    // The name is free again.
    expect(await call('jobs.cancel', { job: 'r' })).toEqual({ cancelled: false });
  });

  it('one that cannot be planned is told of and keeps the others from nothing', async () => {
    const good = (await open()).bagId;
    const clubs = bagFile().clubs.map((club) => ({ ...club, goTo: true }));
    const more = ['a', 'b', 'c', 'd'].map((id) => ({ id, kind: 'wedge' as const, goTo: true }));
    const bad = (await open(bagFile({ clubs: [...clubs, ...more] }, { name: 'Too Many' }))).bagId;
    const outcome = await call('roster.plan', { bagIds: [bad, good], job: 'r' });
    expect(outcome).toMatchObject({ planned: 1, refused: [{ bagId: bad, player: 'Too Many' }] });
    // In words: no key of a file.
    expect(outcome.refused[0]?.message).toMatch(
      /^This bag cannot be planned: [^$]+: \d+ clubs are marked go-to and 14 fit in a bag\. Unmark those that may go\.$/,
    );
  });

  it('one that has gone meanwhile is passed over; a currency without notes has no prices', async () => {
    const units = { distance: 'm', speed: 'km/h', currency: 'EUR' } as const;
    const { bagId } = await open(without(bagFile({ units }), '4h'));
    expect(await call('roster.plan', { bagIds: [99, bagId], job: 'r' })).toMatchObject({
      planned: 1,
      refused: [],
    });
    expect(await refused('roster.plan', { bagIds: [], job: 'r' })).toMatchObject({ kind: 'refused' });
  });
});
