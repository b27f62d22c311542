import { describe, expect, it } from 'vitest';
import { toYards } from '../../../../src-main/contract/units.ts';
import type { BagFile } from '../../../../src-main/contract/formats/bag-file.ts';
import { createBag } from '../../../../db/repositories/bags/bags.ts';
import { createPlayer } from '../../../../db/repositories/bags/players.ts';
import { besideChoices } from '../../../../src-main/service/answers/beside-choices.ts';
import { createSearch } from '../../../../src-main/service/search/index.ts';
import { memoryDb, NOW } from '../../db/kit.ts';
import { bagFile } from '../../../support/bags.ts';
import { useService } from '../kit.ts';

const { call, refused, open } = useService();

/** The usual bag as somebody writes it who plays in metres and km/h. */
function inMetres(file: BagFile): BagFile {
  const metres = (yards: number) => Math.round((yards / toYards(1, 'm')) * 10) / 10;
  return {
    ...file,
    player: { ...file.player, name: 'Metric', driverSpeed: 144.84 },
    units: { distance: 'm', speed: 'km/h', currency: 'EUR' },
    clubs: file.clubs.map(({ carry, ...club }) => ({
      ...club,
      ...(carry === undefined ? {} : { carry: metres(carry) }),
    })),
  };
}

const NOTHING: BagFile = bagFile({ clubs: [] }, { name: 'Blank' });
const { driverSpeed: _driverSpeed, ...unknown } = NOTHING.player;
NOTHING.player = unknown;

describe('two bags beside each other', () => {
  it('are told in the units of the first, whichever that is', async () => {
    const yards = await open();
    const metres = await open(inMetres(bagFile()));
    const { units, bags } = await call('beside.bags', { bagId: yards.bagId, otherId: metres.bagId });
    expect(units).toEqual({ distance: 'yd', speed: 'mph' });
    expect(bags.map(({ player, state }) => [player, state])).toEqual([
      ['Invented', 'now'],
      ['Metric', 'now'],
    ]);
    // A tenth of a metre is what the second bag was rounded to.
    bags[1].ladder.forEach((rung, i) => {
      expect(Math.abs(rung.carry - (bags[0].ladder[i]?.carry ?? NaN))).toBeLessThan(0.16);
    });
    expect(bags[0].ladder[0]?.carry).toBe(201);
    expect(bags[1].speed.value).toBeCloseTo(90, 1);

    const turned = await call('beside.bags', { bagId: metres.bagId, otherId: yards.bagId });
    expect(turned.units).toEqual({ distance: 'm', speed: 'km/h' });
    expect(turned.bags[1].ladder[0]?.carry).toBeCloseTo(183.8, 1);
    expect(turned.bags[1].speed.value).toBeCloseTo(144.8, 1);
  });

  it('findings print distances in the first bag’s unit, and are those of the bag’s own pages', async () => {
    const yards = await open();
    const clubs = bagFile().clubs.filter(({ id }) => id !== '4h');
    const metres = await open(inMetres(bagFile({ clubs })));
    const { bags } = await call('beside.bags', { bagId: yards.bagId, otherId: metres.bagId });
    const wide = bags[1].findings.find(({ kind }) => kind === 'wide-gap');
    expect(wide?.text).toMatch(/ yd /);
    expect(wide?.text).not.toMatch(/\bm\b/);
    expect(bags[1].marks).toMatchObject([{ longer: '5w', shorter: '5i', state: 'wide' }]);
    const { plan } = await call('answers.plan', { bagId: yards.bagId });
    const alone = await call('beside.bags', { bagId: yards.bagId, otherId: yards.bagId });
    expect(alone.bags[0].findings).toEqual(plan.findings);
    expect(alone.bags[0].ladder).toEqual(plan.ladder);
  });

  it('may be of different lengths; one of which nothing is known has no ladder and says what to ask', async () => {
    const full = await open();
    const blank = await open(NOTHING);
    const { bags } = await call('beside.bags', { bagId: full.bagId, otherId: blank.bagId });
    expect(bags[0].clubs).toHaveLength(12);
    expect(bags[1]).toMatchObject({ clubs: [], ladder: [], marks: [], speed: { value: null } });
    expect(bags[1].findings.map(({ verdict }) => verdict)).toContain('ask');
    const turned = await call('beside.bags', { bagId: blank.bagId, otherId: full.bagId });
    expect(turned.bags[0].ladder).toEqual([]);
    expect(turned.bags[1].ladder).toHaveLength(11);
  });

  it('names each club with its short name and loft, and says where the loft is only the usual one', async () => {
    const { bagId } = await open(
      bagFile({
        clubs: [
          { id: 'x', kind: 'iron', label: 'Eisen 7' },
          { id: 'y', kind: 'iron', loftDeg: 30.5 },
        ],
      }),
    );
    const { bags } = await call('beside.bags', { bagId, otherId: bagId });
    expect(bags[0].clubs).toEqual([
      { id: 'x', name: 'Eisen 7', kind: 'iron', short: '7i', loftDeg: 33, loftAssumed: true },
      { id: 'y', name: 'y', kind: 'iron', short: null, loftDeg: 30.5, loftAssumed: false },
    ]);
  });

  it('tells each player’s own air', async () => {
    const one = await open();
    const high = await open(bagFile({}, { name: 'High' }));
    await call('air.set', { playerId: high.playerId, air: { temperatureC: 25, altitudeM: 1500 } });
    const { bags } = await call('beside.bags', { bagId: one.bagId, otherId: high.bagId });
    expect(bags.map(({ air }) => air)).toEqual([
      { temperatureC: 15, altitudeM: 0 },
      { temperatureC: 25, altitudeM: 1500 },
    ]);
  });

  it('refuses by name: a bag that is not there, and one that cannot be planned', async () => {
    const { bagId } = await open();
    expect(await refused('beside.bags', { bagId, otherId: 999 })).toMatchObject({ kind: 'not-found' });
    const putter = (id: string) => ({ id, kind: 'putter' as const, goTo: true });
    const two = await open(bagFile({ clubs: [putter('a'), putter('b')] }, { name: 'Two Putters' }));
    const error = await refused('beside.bags', { bagId, otherId: two.bagId });
    expect(error.message).toMatch(/^Two Putters: /);
    expect(error.refusals?.[0]?.message).toMatch(/two putters/);
  });

  it('changes nothing: no plan is kept, nothing is there to undo', async () => {
    const { bagId } = await open();
    const other = await open(bagFile({}, { name: 'Other' }));
    const before = await call('players.roster', {});
    const undo = await call('history.state', {});
    await call('beside.bags', { bagId, otherId: other.bagId });
    expect(await call('players.roster', {})).toEqual(before);
    expect(await call('history.state', {})).toEqual(undo);
  });
});

describe('what can be set beside a bag', () => {
  const names = async (bagId: number, text: string, limit = 10) =>
    (await call('beside.choices', { bagId, text, limit })).map(({ player }) => player);

  it('nothing typed: those looked at last, never the bag itself, never the archived', async () => {
    const ada = await open(bagFile({}, { name: 'Ada' }));
    const bea = await open(bagFile({}, { name: 'Bea' }));
    const cleo = await open(bagFile({}, { name: 'Cleo' }));
    const dora = await open(bagFile({}, { name: 'Dora' }));
    await call('players.look', { playerId: cleo.playerId });
    await call('players.archive', { playerId: dora.playerId });
    expect(await names(ada.bagId, '')).toEqual(['Cleo', 'Bea']);
    expect(await names(ada.bagId, '', 1)).toEqual(['Cleo']);
    expect(await names(bea.bagId, ' ')).toEqual(['Cleo', 'Ada']);
  });

  it('by name, the archived too and said to be', async () => {
    const ada = await open(bagFile({}, { name: 'Ada' }));
    const dora = await open(bagFile({}, { name: 'Dora' }));
    await call('players.archive', { playerId: dora.playerId });
    expect(await call('beside.choices', { bagId: ada.bagId, text: 'dor', limit: 5 })).toEqual([
      { ...dora, player: 'Dora', archived: true, bag: null, state: 'now', clubs: 12 },
    ]);
    expect(await names(ada.bagId, 'ada')).toEqual([]);
    expect(await names(ada.bagId, 'zanzibar')).toEqual([]);
  });

  it('nothing typed: first the player’s own other bags, the newest first', () => {
    const db = memoryDb();
    const player = (name: string) =>
      createPlayer(db, { name, handicap: 9, handed: 'right', ground: 'soft' }, NOW);
    const bag = (playerId: number, state: 'now' | 'planned' | 'archived', name?: string) => {
      const units = { distanceUnit: 'yd', speedUnit: 'mph', currency: 'GBP' } as const;
      return createBag(db, playerId, { state, ...units, ...(name === undefined ? {} : { name }) }, NOW);
    };
    const [ada, bea] = [player('Ada'), player('Bea')];
    const [now, planned, old] = [bag(ada, 'now'), bag(ada, 'planned', 'For spring'), bag(ada, 'archived')];
    const beas = bag(bea, 'now');
    const context = { db, search: createSearch(), catalogue: () => [], today: () => '2026-11-26' };
    const found = (bagId: number, text: string) =>
      besideChoices(context, bagId, text, 10).map((choice) => [choice.bagId, choice.bag, choice.state]);
    expect(found(now, '')).toEqual([
      [planned, 'For spring', 'planned'],
      [old, null, 'archived'],
      [beas, null, 'now'],
    ]);
    expect(found(planned, 'ada').map(([id]) => id)).toEqual([now, old]);
    expect(found(beas, '').map(([id]) => id)).toEqual([now, planned, old]);
  });
});
