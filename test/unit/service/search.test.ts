import { describe, expect, it } from 'vitest';
import { bagFile } from '../../support/bags.ts';
import { useService } from './kit.ts';

const { call, refused, open } = useService();

const note = { archetype: 'hybrid-22-t3', low: 30, likely: 45, high: 60, currency: 'GBP' };
const find = (text: string, limit = 10) => call('search.all', { text, limit });

describe('archetypes', () => {
  const ids = async (text: string) => (await find(text)).archetypes.map((archetype) => archetype.id);

  it('are found by shorthand, nearest loft first', async () => {
    expect((await ids('gap wedge'))[0]).toMatch(/^wedge-50-/);
    expect((await ids('GW'))[0]).toMatch(/^wedge-50-/);
    expect((await ids('4h'))[0]).toMatch(/^hybrid-22-/);
    expect((await ids('3w'))[0]).toMatch(/^fairway-15-/);
    expect((await ids('PW'))[0]).toMatch(/^wedge-46-/);
    // No 7-iron is sold alone, but sets hold one.
    expect((await ids('7i')).every((id) => id.startsWith('irons-'))).toBe(true);
  });
  it('by words, plurals, lofts and slips of the pen, all words wanted', async () => {
    expect((await ids('hybrids')).every((id) => id.startsWith('hybrid-'))).toBe(true);
    expect((await ids('hybird')).every((id) => id.startsWith('hybrid-'))).toBe(true);
    expect((await ids('22 hybrid')).every((id) => id.startsWith('hybrid-22'))).toBe(true);
    expect((await ids('22° hybrid')).length).toBeGreaterThan(0);
    expect(await ids('hybrid putter')).toEqual([]);
    expect((await ids('hybrid-22-t3'))[0]).toBe('hybrid-22-t3');
  });
});

describe('players and clubs', () => {
  it('are found by the beginning of a word, out of order, without accents, with a slip', async () => {
    const zoe = await open(bagFile({}, { name: 'Zoë Hollis' }));
    await open(bagFile({}, { name: 'Ada Baker' }));
    const names = async (text: string) => (await find(text)).players.map((player) => player.name);
    expect(await names('zoe')).toEqual(['Zoë Hollis']);
    expect(await names('hol zo')).toEqual(['Zoë Hollis']);
    expect(await names('b')).toEqual(['Ada Baker']);
    expect(await names('holils')).toEqual(['Zoë Hollis']);
    expect((await find('hollis')).players).toEqual([{ ...zoe, name: 'Zoë Hollis', archived: false }]);
  });
  it('follow every change of a name, undo included', async () => {
    const { playerId, bagId } = await open(bagFile({}, { name: 'Ada Baker' }));
    const players = async (text: string) => (await find(text)).players;
    expect(await players('baker')).toHaveLength(1);
    await call('players.update', { playerId, patch: { name: 'Ada Quill' } });
    expect([await players('baker'), (await players('quill')).length]).toEqual([[], 1]);
    await call('history.undo', {});
    expect(await players('baker')).toHaveLength(1);
    await call('players.archive', { playerId });
    expect(await players('baker')).toMatchObject([{ archived: true }]);
    expect((await find('mallet')).clubs).toEqual([]);
    await call('bags.updateClub', { bagId, clubId: 'putter', patch: { label: 'Old mallet' } });
    expect((await find('mallet')).clubs).toEqual([
      { bagId, playerId, player: 'Ada Baker', clubId: 'putter', name: 'Old mallet', place: 'bag' },
    ]);
  });
  it('a club is found by what it is called and by the trade’s name for it', async () => {
    const { bagId } = await open();
    await call('bags.updateClub', { bagId, clubId: '7i', patch: { label: '7-iron' } });
    await call('bags.updateClub', { bagId, clubId: 'gw', patch: { label: 'Gap wedge' } });
    const clubs = async (text: string) => (await find(text)).clubs.map((club) => club.clubId);
    expect(await clubs('7i')).toEqual(['7i']);
    expect(await clubs('7 iron')).toEqual(['7i']);
    expect(await clubs('gw')).toEqual(['gw']);
    expect(await clubs('8i')).toEqual(['8i']);
    expect(await clubs('gap wegde')).toEqual(['gw']);
  });
});

describe('notes', () => {
  const texts = [
    { place: 'Car boot, Épsom', remark: 'gap wedge, grip worn' },
    { archetype: 'wedge-50-t2', place: 'charity shop' },
    { archetype: 'irons-5-pw-30-t3', place: 'club-house', remark: 'booting' },
    { archetype: 'fairway-15-t3', remark: 'boot' },
  ];
  const fill = async () => {
    const ids: number[] = [];
    for (const text of texts) ids.push((await call('prices.add', { note: { ...note, ...text } })).noteId);
    return ids;
  };
  const found = async (text: string, limit = 10) => (await find(text, limit)).notes.map((one) => one.id);

  it('by whole words first, then beginnings, then within words, the newest of each first', async () => {
    const [a = 0, b = 0, third = 0, d = 0] = await fill();
    expect(await found('boot')).toEqual([d, a, third]);
    expect(await found('oot')).toEqual([d, third, a]);
    expect(await found('boot', 1)).toEqual([d]);
    expect(await found('epsom')).toEqual([a]);
    expect(await found('épsom worn')).toEqual([a]);
    expect(await found('charity wedge')).toEqual([b]);
  });
  it('by shorthand: in words, or by the loft of what is noted', async () => {
    const [a = 0, b = 0, third = 0, d = 0] = await fill();
    expect(await found('gw')).toEqual([b, a]);
    expect(await found('gap wedge')).toEqual([b, a]);
    expect(await found('3w')).toEqual([d]);
    expect(await found('PW')).toEqual([third]);
  });
  it('terms under three letters are beginnings of words', async () => {
    const [a = 0, , third = 0] = await fill();
    expect(await found('ep')).toEqual([a]);
    expect(await found('ps')).toEqual([]);
    expect(await found('cl')).toEqual([third]);
    expect(await found('e')).toEqual([a]);
  });
  it('forgives a slip, but not of two different words', async () => {
    const [a = 0, b = 0] = await fill();
    expect(await found('chraity')).toEqual([b]);
    expect(await found('charity shpo')).toEqual([b]);
    expect(await found('epsmo')).toEqual([a]);
    expect(await found('zanzibar')).toEqual([]);
    expect(await found('chraity epsom')).toEqual([]);
  });
  it('tells the archetype’s name with each', async () => {
    await fill();
    expect((await find('epsom')).notes).toMatchObject([
      { archetype: 'hybrid-22-t3', name: '22° hybrid (game improvement)', place: 'Car boot, Épsom' },
    ]);
  });
  it('of signs that mean something to the index mean nothing here', async () => {
    await fill();
    for (const text of [
      '"',
      '""boot"',
      'boot OR zanzibar',
      'NEAR(boot)',
      'said:boot',
      'boot*',
      '-boot',
      "'",
      '^',
      '%',
    ]) {
      expect(Array.isArray(await found(text))).toBe(true);
    }
    expect(await found('"boot"')).toHaveLength(3);
    expect(await found('boot OR zanzibar')).toEqual([]);
  });
});

it('the same search gives the same list', async () => {
  await open();
  await call('prices.add', { note });
  const first = await find('hybrid');
  expect(await find('hybrid')).toEqual(first);
  expect(await find('')).toEqual({ archetypes: [], players: [], clubs: [], diary: [], notes: [] });
});

it('refuses a text that is too long, and a limit that is none', async () => {
  expect(await refused('search.all', { text: 'x'.repeat(201), limit: 5 })).toMatchObject({ kind: 'refused' });
  expect(await refused('search.all', { text: 'x', limit: 0 })).toMatchObject({ kind: 'refused' });
});
