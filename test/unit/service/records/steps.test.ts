import { describe, expect, it } from 'vitest';
import { stepLabel, stepOf } from '../../../../src-main/service/records/steps.ts';
import { bagFile, without } from '../../../support/bags.ts';
import { useService } from '../kit.ts';

const { call, open } = useService();
const undoStep = async () => (await call('history.state', {})).undo;

describe('a step names what it was done to', () => {
  it('a club by its name before the edit, also when it has none', async () => {
    const { bagId } = await open();
    await call('bags.updateClub', { bagId, clubId: '4h', patch: { label: 'Old faithful' } });
    expect(await undoStep()).toMatchObject({ club: { label: '4h' }, fields: ['label'] });
    await call('bags.removeClub', { bagId, clubId: '4h' });
    expect(await undoStep()).toEqual({
      did: 'bags.removeClub',
      player: 'Invented',
      club: { kind: 'hybrid', label: 'Old faithful', loftDeg: 22 },
    });
    await call('bags.removeClub', { bagId, clubId: 'putter' });
    expect(await undoStep()).toMatchObject({ club: { kind: 'putter' } });
    await call('bags.addClub', { bagId, club: { id: 'x', kind: 'hybrid', loftDeg: 25 } });
    expect(await undoStep()).toMatchObject({ did: 'bags.addClub', club: { kind: 'hybrid', loftDeg: 25 } });
  });

  it('a club that has left the bag, and where it went', async () => {
    const { bagId } = await open();
    await call('clubs.move', { bagId, clubId: '4h', to: 'shelf' });
    await call('clubs.move', { bagId, clubId: '4h', to: 'sold', price: 30 });
    expect(await undoStep()).toMatchObject({ club: { label: '4h' }, to: 'sold', player: 'Invented' });
  });

  it('the player, not the row', async () => {
    const { playerId, bagId } = await open(bagFile({}, { name: 'Ada Invented' }));
    for (const [name, did] of [
      ['players.archive', 'players.archive'],
      ['players.unarchive', 'players.unarchive'],
      ['players.duplicate', 'players.duplicate'],
    ] as const) {
      await call(name, { playerId });
      expect(await undoStep()).toEqual({ did, player: 'Ada Invented' });
    }
    await call('players.update', { playerId, patch: { name: 'Ada Renamed', handicap: 9 } });
    expect(await undoStep()).toMatchObject({ player: 'Ada Invented', fields: ['name', 'handicap'] });
    await call('bags.setBudget', { bagId, budget: { amount: 50 } });
    expect(await undoStep()).toEqual({ did: 'bags.setBudget', player: 'Ada Renamed' });
    await call('players.openDemo', { demo: 'invented-bag' });
    expect((await undoStep())?.player).toMatch(/^Invented player/);
  });

  it('a price by its archetype, and by its bag where it speaks for that alone', async () => {
    const { bagId } = await open();
    const note = { archetype: 'hybrid-22-t3', low: 30, likely: 40, high: 50, currency: 'GBP' };
    const { noteId } = await call('prices.add', { note });
    expect(await undoStep()).toEqual({ did: 'prices.add', archetype: 'hybrid-22-t3' });
    await call('prices.update', { noteId, patch: { place: 'attic' } });
    expect(await undoStep()).toEqual({ did: 'prices.update', archetype: 'hybrid-22-t3' });
    await call('prices.add', { note: { ...note, bagId } });
    expect(await undoStep()).toEqual({ did: 'prices.add', archetype: 'hybrid-22-t3', player: 'Invented' });
  });

  it('a cost and a plan by their names', async () => {
    const { bagId } = await open();
    const line = { kind: 'bend', label: 'sand wedge', amount: 4, enabled: true } as const;
    const { id } = await call('costs.save', { bagId, line });
    await call('costs.remove', { bagId, id });
    expect(await undoStep()).toMatchObject({ did: 'costs.remove', named: 'sand wedge', player: 'Invented' });
    const items = (await call('answers.plan', { bagId })).plan.instance.items.map((item) => item.id);
    const { planId } = await call('plans.pick', { bagId, name: 'As it is', why: '', items });
    await call('plans.remove', { planId });
    expect(await undoStep()).toMatchObject({ did: 'plans.remove', named: 'As it is' });
  });
});

it('an edit that is refused for what is gone says so itself', async () => {
  const { bagId } = await open(without(bagFile(), '4h'));
  const refused = await useless(bagId);
  expect(refused).toContain('There is no club "4h" in this bag.');
});

async function useless(bagId: number): Promise<string> {
  return call('bags.removeClub', { bagId, clubId: '4h' }).then(
    () => '',
    (error: unknown) => String(error),
  );
}

describe('what the history keeps of a step', () => {
  it('is short enough for its column, whatever the names', () => {
    const long = '"\\😀\n'.repeat(200);
    const label = stepLabel('bags.updateClub', {
      player: long,
      club: { kind: 'iron', label: long, loftDeg: 33.333333333333336 },
      fields: Array.from({ length: 40 }, () => 'loftMeasured'),
    });
    expect([...label].length).toBeLessThanOrEqual(1000);
    const step = stepOf(label);
    expect([...(step.player ?? '')]).toHaveLength(80);
    expect(step.player).toMatch(/…$/);
    expect(step.player?.isWellFormed()).toBe(true);
  });
  it('in plain words is told as it is', () => {
    expect(stepOf('long ago')).toEqual({ did: '', named: 'long ago' });
    expect(stepOf('{"did":7}')).toEqual({ did: '', named: '{"did":7}' });
  });
});
