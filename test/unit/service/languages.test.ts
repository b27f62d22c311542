import { describe, expect, it } from 'vitest';
import { clubShortName } from '../../../src-main/domain/player/typical-loft.ts';
import { useService } from './kit.ts';

const { call, open, refused } = useService();
const units = { distance: 'm', speed: 'km/h', currency: 'EUR' } as const;

describe('answers in the reader’s language', () => {
  it('says findings, names and stages in German, with German figures', async () => {
    const { bagId } = await open();
    const english = await call('answers.plan', { bagId });
    const german = await call('answers.plan', { bagId, locale: 'de-DE' });
    expect(english.stageNow).toBe('now');
    expect(german.stageNow).toBe('jetzt');
    expect(german.plan.findings.map(({ kind }) => kind)).toEqual(
      english.plan.findings.map(({ kind }) => kind),
    );
    const same = german.plan.findings.filter(({ text }, i) => text === english.plan.findings[i]?.text);
    expect(same).toEqual([]);
    expect(german.plan.cautions.join(' ')).toContain('Gesamtweiten');
  });

  it('names the catalogue in German, and finds by either name', async () => {
    const names = await call('catalogue.list', { locale: 'de' });
    expect(names.find(({ archetype }) => archetype.id === 'hybrid-22-t3')?.name).toBe(
      'Hybrid 22° (Game Improvement)',
    );
    const wanted = async (text: string) => {
      const { archetypes } = await call('search.all', { text, limit: 50, locale: 'de-AT' });
      return archetypes.map(({ id }) => id);
    };
    expect(await wanted('fairwayholz 18')).toContain('fairway-18-t3');
    expect(await wanted('fairway wood 18')).toContain('fairway-18-t3');
    expect((await wanted('Eisen 7')).length).toBeGreaterThan(0);
  });

  it('lays out a bag with German names that are understood again', async () => {
    const { bagId } = await call('players.create', { name: 'Ada', handicap: 20, units, locale: 'de-DE' });
    const { bag } = await call('bags.read', { bagId });
    expect(bag.clubs.map(({ label }) => label)).toEqual([
      'Driver',
      'Holz 5',
      'Hybrid 4',
      'Eisen 5',
      'Eisen 6',
      'Eisen 7',
      'Eisen 8',
      'Eisen 9',
      'PW',
      'Gap Wedge',
      'Sand Wedge',
      'Putter',
    ]);
    const { bagId: other } = await call('players.create', { name: 'Bea', handicap: 20, units });
    const { bag: english } = await call('bags.read', { bagId: other });
    expect(english.clubs[1]?.label).toBe('5-wood');
    expect(bag.clubs.map(clubShortName)).toEqual(english.clubs.map(clubShortName));
  });

  it('calls a copy a copy', async () => {
    const { playerId } = await call('players.create', { name: 'Ada', handicap: 20, units });
    const { bagId } = await call('players.duplicate', { playerId, locale: 'de' });
    expect((await call('bags.read', { bagId })).bag.player.name).toBe('Ada (Kopie)');
  });

  it('names what was bought', async () => {
    const { bagId } = await open();
    const { clubs } = await call('bags.bought', {
      bagId,
      archetype: 'hybrid-22-t3',
      price: 45,
      replaced: [],
      locale: 'de-DE',
    });
    const { bag } = await call('bags.read', { bagId });
    expect(bag.clubs.find(({ id }) => id === clubs[0])?.label).toBe('Hybrid 22°');
  });

  it('takes English for languages that it does not speak, and refuses what is no language', async () => {
    const { bagId } = await open();
    expect((await call('answers.plan', { bagId, locale: 'fr-FR' })).stageNow).toBe('now');
    const { refusals } = await refused('answers.plan', { bagId, locale: 'not a language' });
    expect(refusals?.[0]?.path).toBe('$.locale');
  });
});
