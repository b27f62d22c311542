import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  calls,
  type CallArgs,
  type CallName,
  type CallResult,
} from '../../../src-main/contract/calls/index.ts';
import type { Gate, HostEvent } from '../../../src-main/contract/gate.ts';
import { createService } from '../../../src-main/service/service.ts';
import { bagFile } from '../../support/bags.ts';

let gate: Gate;
beforeEach(async () => {
  gate = await createService({ dataDir: ':memory:', version: '0.0.0-test' });
});
afterEach(async () => {
  await gate.close();
});

/** A call that must succeed; its result is checked against the contract. */
async function call<K extends CallName>(name: K, args: CallArgs<K>): Promise<CallResult<K>> {
  const answer = await gate.call({ call: name, args });
  if (!answer.ok) throw new Error(`${name}: ${answer.error.message}`);
  return calls[name].result.parse(answer.value) as CallResult<K>;
}
async function refused(name: string, args: unknown) {
  const answer = await gate.call({ call: name, args });
  if (answer.ok) throw new Error(`${name} was taken`);
  return answer.error;
}
const units = { distance: 'yd', speed: 'mph', currency: 'GBP' } as const;

describe('players', () => {
  it('a new player has a pre-ruled bag and stands in the roster', async () => {
    const { playerId, bagId } = await call('players.create', { name: 'Ada', handicap: 20, units });
    expect(await call('players.roster', {})).toMatchObject([{ id: playerId, bagId, name: 'Ada', clubs: 12 }]);
    const { bag } = await call('bags.read', { bagId });
    expect(bag.clubs.every((club) => club.carry === undefined)).toBe(true);
  });
  it('a bag file comes back as it went in', async () => {
    const file = bagFile(
      {
        budget: { amount: 120.5 },
        costs: { delivery: 8, sellFeePercent: 12.5 },
        prices: [{ archetype: 'hybrid-22-t3', low: 30, likely: 45.5, high: 60, seen: '2026-11-01' }],
      },
      { miss: ['left', 'high'], pain: false },
    );
    const { bagId } = await call('players.importBag', { text: JSON.stringify(file) });
    expect((await call('bags.read', { bagId })).bag).toEqual(file);
    expect(JSON.parse((await call('bags.export', { bagId })).text)).toEqual(file);
  });
  it('in metres and km/h as well', async () => {
    const file = bagFile(
      { units: { distance: 'm', speed: 'km/h', currency: 'JPY' } },
      { driverSpeed: 144.8 },
    );
    const { bagId } = await call('players.importBag', { text: JSON.stringify(file) });
    expect((await call('bags.read', { bagId })).bag).toEqual(file);
  });
  it('the demo is opened once', async () => {
    const first = await call('players.openDemo', { demo: 'invented-bag' });
    expect(await call('players.openDemo', { demo: 'invented-bag' })).toEqual(first);
    expect(await call('players.roster', {})).toHaveLength(1);
  });
  it('an edit clears with null, and is refused with its place', async () => {
    const { playerId, bagId } = await call('players.create', { name: 'Ada', handicap: 20, units });
    await call('players.update', { playerId, patch: { driverSpeed: 92, targetHandicap: 15 } });
    await call('players.update', { playerId, patch: { targetHandicap: null } });
    const { bag } = await call('bags.read', { bagId });
    expect(bag.player).toMatchObject({ driverSpeed: 92 });
    expect(bag.player).not.toHaveProperty('targetHandicap');
    const error = await refused('players.update', { playerId, patch: { driverSpeed: 400 } });
    expect(error).toMatchObject({ kind: 'refused', refusals: [{ path: '$.player.driverSpeed' }] });
    expect((await call('bags.read', { bagId })).bag.player.driverSpeed).toBe(92);
  });
  it('duplicates, archives and brings back', async () => {
    const { playerId } = await call('players.create', { name: 'Ada', handicap: 20, units });
    await call('players.duplicate', { playerId });
    expect((await call('players.roster', {})).map((line) => line.name)).toEqual(['Ada', 'Ada (copy)']);
    await call('players.archive', { playerId });
    expect(await call('players.roster', {})).toHaveLength(1);
    expect(await call('players.roster', { archived: true })).toMatchObject([{ id: playerId }]);
    await call('players.unarchive', { playerId });
    expect(await call('players.roster', {})).toHaveLength(2);
  });
});

describe('bags', () => {
  const open = async () => call('players.importBag', { text: JSON.stringify(bagFile()) });
  const club = async (bagId: number, id: string) =>
    (await call('bags.read', { bagId })).bag.clubs.find((one) => one.id === id);

  it('adds, places, changes and strikes out a club', async () => {
    const { bagId } = await open();
    await call('bags.addClub', {
      bagId,
      club: { id: 'lw', kind: 'wedge', loftDeg: 59, carry: 70 },
      before: 'putter',
    });
    expect((await call('bags.read', { bagId })).bag.clubs.map((one) => one.id).slice(-2)).toEqual([
      'lw',
      'putter',
    ]);
    await call('bags.updateClub', { bagId, clubId: 'lw', patch: { carry: 72, loftDeg: null, goTo: true } });
    expect(await club(bagId, 'lw')).toEqual({ id: 'lw', kind: 'wedge', carry: 72, goTo: true });
    await call('bags.removeClub', { bagId, clubId: 'lw' });
    expect(await club(bagId, 'lw')).toBeUndefined();
  });
  it('refuses a carry of 900 yd with its place, and keeps what was', async () => {
    const { bagId } = await open();
    const error = await refused('bags.updateClub', { bagId, clubId: '7i', patch: { carry: 900 } });
    expect(error).toMatchObject({ kind: 'refused', refusals: [{ path: '$.clubs[5].carry' }] });
    expect((await club(bagId, '7i'))?.carry).toBe(129);
  });
  it('refuses a second club of one id', async () => {
    const { bagId } = await open();
    expect(await refused('bags.addClub', { bagId, club: { id: '7i', kind: 'iron' } })).toMatchObject({
      kind: 'refused',
    });
  });
  it('sets, changes and takes away a price, a budget, costs and a sale', async () => {
    const { bagId } = await open();
    const band = { low: 30, likely: 45, high: 60 };
    await call('bags.setPrice', { bagId, archetype: 'hybrid-22-t3', band, seen: '2026-11-20' });
    await call('bags.setPrice', { bagId, archetype: 'hybrid-22-t3', band: { ...band, likely: 50 } });
    await call('bags.setBudget', { bagId, budget: { amount: 100, cashBeforeSales: true } });
    await call('bags.setCosts', { bagId, costs: { delivery: 8, sellFeePercent: 12.5 } });
    await call('bags.setCosts', { bagId, costs: { delivery: 9 } });
    await call('bags.updateClub', { bagId, clubId: '5i', patch: { set: 'irons' } });
    await call('bags.sellSet', { bagId, setId: 'irons', sell: band });
    const { bag } = await call('bags.read', { bagId });
    expect(bag.prices).toEqual([{ archetype: 'hybrid-22-t3', ...band, likely: 50 }]);
    expect(bag.budget).toEqual({ amount: 100, cashBeforeSales: true });
    expect(bag.costs).toEqual({ delivery: 9 });
    expect(bag.sets).toEqual([{ id: 'irons', sell: band }]);
    await call('bags.setPrice', { bagId, archetype: 'hybrid-22-t3', band: null });
    await call('bags.setBudget', { bagId, budget: null });
    const after = (await call('bags.read', { bagId })).bag;
    expect(after.prices).toEqual([]);
    expect(after).not.toHaveProperty('budget');
    expect(await refused('bags.setPrice', { bagId, archetype: 'no-such', band })).toMatchObject({
      kind: 'refused',
    });
  });
  it('says so when the bag is gone', async () => {
    expect(await refused('bags.read', { bagId: 4711 })).toMatchObject({ kind: 'not-found' });
  });
});

describe('answers', () => {
  it('plans the demo away from this thread, and the roster knows its open findings', async () => {
    const { bagId } = await call('players.openDemo', { demo: 'invented-bag' });
    const answer = await call('answers.plan', { bagId });
    expect(answer.plan.plan.status).toBe('ok');
    expect(answer.marks).toContainEqual({ state: 'wide', longer: '5w', shorter: '6i', gap: 37, limit: 20 });
    expect(answer.names['driver']).toBe('driver');
    expect(await call('players.roster', {})).toMatchObject([{ openFindings: 2 }]);
  });
  it('tries another budget without keeping it', async () => {
    const { bagId } = await call('players.openDemo', { demo: 'invented-bag' });
    const poor = await call('answers.plan', { bagId, budget: 5 });
    expect(poor.plan.plan.swaps.filter((swap) => swap.action === 'buy')).toEqual([]);
    expect((await call('bags.read', { bagId })).bag.budget).toEqual({ amount: 180 });
  });
});

describe('side by side', () => {
  it('reckons today, the plan and a path on the same question, and keeps the pick with its reason', async () => {
    const { bagId } = await call('players.openDemo', { demo: 'invented-bag' });
    const { plan, paths } = await call('answers.plan', { bagId });
    const today = plan.instance.items.filter((item) => item.origin === 'owned').map((item) => item.id);
    const mended = plan.plan.items ?? [];
    const { sides } = await call('answers.compare', { bagId, bags: [today, mended] });
    expect(sides[0]).toMatchObject({ cash: 0, net: 0, swaps: [] });
    expect(sides[0]?.marks.map((mark) => mark.state)).toContain('wide');
    expect(sides[1]).toMatchObject({ cash: plan.plan.cash, net: plan.plan.net, marks: [] });
    expect(paths[0]?.stages[0]?.items).toEqual(mended);
    const { planId } = await call('plans.pick', {
      bagId,
      name: 'Path A',
      why: 'It mends all of it.',
      items: mended,
    });
    expect(await call('plans.list', { bagId })).toMatchObject([
      { id: planId, picked: true, why: 'It mends all of it.', side: { cash: 62 } },
    ]);
    await call('history.undo', {});
    expect(await call('plans.list', { bagId })).toEqual([]);
  });
  it('refuses an item that the bag and its prices do not have, by its place', async () => {
    const { bagId } = await call('players.openDemo', { demo: 'invented-bag' });
    expect(await refused('answers.compare', { bagId, bags: [['buy:nothing']] })).toMatchObject({
      refusals: [{ path: '$.bags[0][0]' }],
    });
  });
});

it('what if: shifts the ladder, stores nothing', async () => {
  const { bagId } = await call('players.importBag', { text: JSON.stringify(bagFile()) });
  const { ladder } = await call('answers.whatIf', { bagId, temperatureC: 30, altitudeM: 1500 });
  expect(ladder[0]?.carry).toBeGreaterThan(201);
  expect((await call('bags.read', { bagId })).bag).toEqual(bagFile());
});

it('flights: of today’s clubs, and the bag stays as it is', async () => {
  const { bagId } = await call('players.openDemo', { demo: 'range-bag' });
  const before = (await call('bags.read', { bagId })).bag;
  const { flights } = await call('answers.flight', { bagId });
  expect(new Set(flights.map(({ from }) => from))).toEqual(new Set(['launch', 'loft']));
  expect((await call('bags.read', { bagId })).bag).toEqual(before);
  expect(await refused('answers.flight', { bagId: bagId + 7 })).toMatchObject({ kind: 'not-found' });
});

describe('undo', () => {
  it('takes back and does again, by name', async () => {
    const { bagId } = await call('players.importBag', { text: JSON.stringify(bagFile()) });
    await call('bags.updateClub', { bagId, clubId: '7i', patch: { carry: 140 } });
    const step = {
      did: 'bags.updateClub',
      player: 'Invented',
      club: { kind: 'iron', label: '7i', loftDeg: 33 },
      fields: ['carry'],
    };
    expect(await call('history.state', {})).toEqual({ undo: step, redo: null });
    expect(await call('history.undo', {})).toEqual(step);
    expect((await call('bags.read', { bagId })).bag).toEqual(bagFile());
    await call('history.redo', {});
    expect((await call('bags.read', { bagId })).bag.clubs[5]?.carry).toBe(140);
  });
  it('a refused edit leaves no step', async () => {
    const { bagId } = await call('players.importBag', { text: JSON.stringify(bagFile()) });
    await refused('bags.updateClub', { bagId, clubId: '7i', patch: { carry: 900 } });
    expect((await call('history.state', {})).undo).toEqual({ did: 'players.importBag', player: 'Invented' });
  });
  it('answers and "last looked at" are no steps', async () => {
    const { playerId, bagId } = await call('players.importBag', { text: JSON.stringify(bagFile()) });
    await call('answers.plan', { bagId });
    await call('players.look', { playerId });
    expect((await call('history.state', {})).undo).toEqual({ did: 'players.importBag', player: 'Invented' });
  });
});

describe('the gate', () => {
  it('refuses an unknown call, a prototype’s name and wrong arguments', async () => {
    expect(await refused('dance', {})).toMatchObject({ kind: 'not-found' });
    expect(await refused('toString', {})).toMatchObject({ kind: 'not-found' });
    expect(await refused('__proto__', {})).toMatchObject({ kind: 'not-found' });
    expect(await refused('bags.read', { bagId: 'x' })).toMatchObject({
      kind: 'refused',
      refusals: [{ path: '$.bagId' }],
    });
    expect(await refused('bags.read', null)).toMatchObject({ kind: 'refused' });
    expect(await refused('bags.read', { bagId: 1, more: true })).toMatchObject({
      refusals: [{ path: '$.more' }],
    });
  });
  it('tells of changes, not of readings', async () => {
    const events: HostEvent[] = [];
    const stop = gate.subscribe((event) => events.push(event));
    const { playerId, bagId } = await call('players.create', { name: 'Ada', handicap: 20, units });
    await call('players.roster', {});
    expect(events).toEqual([{ event: 'changed', data: { call: 'players.create', playerId, bagId } }]);
    stop();
  });
  it('keeps an uploaded bag until it is asked for, and nothing of one that is cut short', async () => {
    async function* parts(text: string, cut = false) {
      const bytes = new TextEncoder().encode(text);
      yield bytes.slice(0, 100);
      if (cut) throw new Error('cut');
      yield bytes.slice(100);
    }
    const answer = await gate.upload('my.json', parts(JSON.stringify(bagFile())));
    expect(answer).toMatchObject({ ok: true, value: { name: 'my.json', kind: 'bag' } });
    expect(await gate.upload('my.png', parts('x'))).toMatchObject({ ok: false });
    await expect(gate.upload('my.json', parts(JSON.stringify(bagFile()), true))).rejects.toThrow('cut');
    expect(await call('players.roster', {})).toEqual([]);
    const { upload } = answer.ok ? (answer.value as { upload: string }) : { upload: '' };
    await call('files.importBag', { source: { upload } });
    expect(await call('players.roster', {})).toHaveLength(1);
  });
});

describe('shots', () => {
  const source = { text: 'Club,Carry,Spin\n7 iron,150,6400\n7 iron,154,6300\n7 iron,x,1\n8 iron,140,7000\n' };
  const mapping = {
    columns: { club: 0, carry: 1, spin: 2 },
    decimal: '.' as const,
    distance: 'yd' as const,
    speed: 'mph' as const,
    clubs: { '7 iron': '7i' },
  };
  it('looks, previews, refuses bad rows without consent, imports with it, and remembers the mapping', async () => {
    const { bagId } = await call('players.importBag', { text: JSON.stringify(bagFile()) });
    expect(await call('shots.look', { source })).toMatchObject({
      header: ['Club', 'Carry', 'Spin'],
      remembered: null,
    });
    const preview = await call('shots.preview', { bagId, source, mapping, leaveOut: [] });
    expect(preview.words).toEqual([
      { label: '7 iron', shots: 2, clubId: '7i', proposed: '7i' },
      { label: '8 iron', shots: 1, clubId: null, proposed: '8i' },
    ]);
    expect(preview.clubs).toMatchObject([{ clubId: '7i', labels: ['7 iron'], shots: 2, mean: 152 }]);
    expect(preview.bad).toEqual([
      { rowNumber: 4, column: 'carry', value: 'x', message: 'carry is not a number' },
    ]);
    const args = { bagId, source, mapping, leaveOut: [], sessionOn: '2026-11-20' };
    expect(await refused('shots.import', { ...args, skipBad: false })).toMatchObject({
      refusals: [{ path: 'row 4, carry' }],
    });
    expect((await call('bags.read', { bagId })).bag.clubs[5]?.carry).toBe(129);
    expect(await call('shots.import', { ...args, skipBad: true })).toEqual({
      shots: 3,
      skipped: 1,
      clubs: 1,
    });
    expect((await call('bags.read', { bagId })).bag.clubs[5]).toMatchObject({ carry: 152, shots: 2 });
    expect((await call('shots.look', { source })).remembered).toEqual(mapping);
    await call('history.undo', {});
    expect((await call('bags.read', { bagId })).bag).toEqual(bagFile());
  });
});
