import { readdirSync, statSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { bagFile } from '../../../support/bags.ts';
import { useFiles } from './kit.ts';

const { call, refused, open, gate, folder, incoming, upload } = useFiles();

describe('a bag file', () => {
  it('is looked at before it is taken in', async () => {
    const { playerId } = await open();
    const source = { text: JSON.stringify(bagFile()) };
    expect(await call('files.previewBag', { source })).toEqual({
      name: 'Invented',
      handicap: 15,
      clubs: 12,
      prices: 0,
      known: [playerId],
    });
    expect(await call('players.roster', {})).toHaveLength(1);
    await call('files.importBag', { source });
    expect(await call('players.roster', {})).toHaveLength(2);
  });
});

describe('several bag files', () => {
  const sources = (...names: string[]) =>
    names.map((name) => ({ text: JSON.stringify(bagFile({}, { name })) }));

  it('come in as one step, which undo takes back', async () => {
    const { players } = await call('files.importBags', { sources: sources('Ada', 'Bea', 'Cara') });
    const roster = await call('players.roster', {});
    expect(roster.map(({ name }) => name)).toEqual(['Ada', 'Bea', 'Cara']);
    expect(players.map(({ bagId }) => bagId)).toEqual(roster.map(({ bagId }) => bagId));
    await call('history.undo', {});
    expect(await call('players.roster', {})).toEqual([]);
  });
  it('come in all or not at all, and the one to blame is named', async () => {
    const id = await upload('cara.json', JSON.stringify(bagFile({}, { name: 'Cara', handicap: 99 })));
    const error = await refused('files.importBags', { sources: [...sources('Ada'), { upload: id }] });
    expect(error.refusals?.[0]).toMatchObject({ path: 'cara.json: $.player.handicap', value: '99' });
    expect(await call('players.roster', {})).toEqual([]);
  });
});

describe('files that were opened from outside of the window', () => {
  const stream = async function* (text: string) {
    yield new TextEncoder().encode(text);
    await Promise.resolve();
  };
  it('wait, in their order, for the window to ask; it is told', async () => {
    const events: string[] = [];
    gate().subscribe(({ event }) => events.push(event));
    const first = gate().open({ name: 'a.json', stream: stream(JSON.stringify(bagFile())) });
    const refusal = { kind: 'refused' as const, message: 'It is a folder.' };
    const second = gate().open({ name: 'b', refused: refusal });
    await gate().open({ name: 'c.png', stream: stream('x') });
    await Promise.all([first, second]);
    expect(events).toEqual(['opened', 'opened', 'opened']);
    const waiting = await call('files.opened', {});
    expect(waiting).toMatchObject([
      { name: 'a.json', kind: 'bag' },
      { name: 'b', error: refusal },
      { name: 'c.png', error: { kind: 'refused' } },
    ]);
    expect(await call('files.opened', {})).toEqual([]);
    // A preview first: nothing has come in.
    expect(await call('players.roster', {})).toEqual([]);
  });
  it('that break off while they are read are told of, and leave nothing', async () => {
    async function* broken() {
      yield new TextEncoder().encode('name,handicap\n'.repeat(10_000));
      await Promise.resolve();
      throw new Error('EIO');
    }
    await gate().open({ name: 'a.csv', stream: broken() });
    expect(await call('files.opened', {})).toMatchObject([{ error: { kind: 'refused' } }]);
    expect(incoming()).toEqual([]);
  });
});

describe('uploads', () => {
  it('of tables are kept, private, until they are read, and go with the service', async () => {
    const id = await upload('prices.csv', 'archetype,price,currency\nhybrid-22-t3,45,GBP\n');
    const [file = ''] = readdirSync(path.join(folder(), 'incoming'));
    expect(statSync(path.join(folder(), 'incoming', file)).mode & 0o777).toBe(0o600);
    expect(await call('files.previewPrices', { source: { upload: id } })).toMatchObject({ ready: 1 });
    await call('files.dropUpload', { upload: id });
    expect(readdirSync(path.join(folder(), 'incoming'))).toEqual([]);
    expect(await refused('files.previewPrices', { source: { upload: id } })).toMatchObject({
      kind: 'not-found',
    });
    expect(await refused('files.previewPrices', { source: { upload: '../../x' } })).toMatchObject({
      kind: 'refused',
    });
  });
  it('of other files are refused, and a cut one leaves nothing', async () => {
    async function* cut() {
      yield new TextEncoder().encode('name,handicap\n'.repeat(10_000));
      await Promise.resolve();
      throw new Error('cut');
    }
    await expect(upload('x.png', new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0]))).rejects.toThrow(/\.json/);
    await expect(gate().upload('x.csv', cut())).rejects.toThrow('cut');
    expect(incoming()).toEqual([]);
  });
});
