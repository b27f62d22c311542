import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { createService } from '../../../src-main/service/service.ts';
import { bagFile } from '../../support/bags.ts';
import { useService } from './kit.ts';

const { call, refused, open } = useService();
const SECRET = 'zwrist since spring';
const list = (playerId: number, most = 50) => call('diary.list', { playerId, most });

describe('a diary', () => {
  it('takes dated notes, the newest day first, and gives as many as are asked for', async () => {
    const { playerId } = await open();
    expect(await list(playerId)).toEqual({ entries: [], count: 0 });
    const first = await call('diary.add', {
      playerId,
      on: '2026-03-01',
      text: '  Grip stronger.\n\nAgain.  ',
    });
    const later = await call('diary.add', { playerId, on: '2026-05-01', text: 'Better.' });
    expect(await list(playerId)).toEqual({
      entries: [
        { id: later.entryId, on: '2026-05-01', text: 'Better.' },
        { id: first.entryId, on: '2026-03-01', text: 'Grip stronger.\n\nAgain.' },
      ],
      count: 2,
    });
    expect(await list(playerId, 1)).toMatchObject({ entries: [{ text: 'Better.' }], count: 2 });
    expect(await call('players.roster', {})).toMatchObject([{ notedOn: '2026-05-01' }]);
  });
  it('is of today where no day is given', async () => {
    const { playerId } = await open();
    const before = await call('diary.add', { playerId, text: 'x' });
    const [entry] = (await list(playerId)).entries;
    expect(entry).toMatchObject({ id: before.entryId });
    expect(entry?.on).toMatch(/^\d{4}-\d\d-\d\d$/);
    expect((await call('history.list', {})).undo[0]).toMatchObject({ did: 'diary.add', on: entry?.on });
  });
  it('is changed and struck out, each a step that undo takes back and names by player and day', async () => {
    const { playerId } = await open(bagFile({}, { name: 'Ada' }));
    const { entryId } = await call('diary.add', { playerId, on: '2026-03-01', text: 'one' });
    await call('diary.change', { playerId, entryId, patch: { text: 'two' } });
    await call('diary.change', { playerId, entryId, patch: { on: '2026-03-02' } });
    await call('diary.strike', { playerId, entryId });
    expect((await list(playerId)).count).toBe(0);
    const seen: unknown[] = [];
    for (let n = 0; n < 4; n += 1) {
      seen.push([await call('history.undo', {}), (await list(playerId)).entries]);
    }
    const entry = (on: string, text: string) => ({ id: entryId, on, text });
    expect(seen).toMatchObject([
      [{ did: 'diary.strike', player: 'Ada', on: '2026-03-02' }, [entry('2026-03-02', 'two')]],
      [{ did: 'diary.change', player: 'Ada', on: '2026-03-01' }, [entry('2026-03-01', 'two')]],
      [{ did: 'diary.change', player: 'Ada', on: '2026-03-01' }, [entry('2026-03-01', 'one')]],
      [{ did: 'diary.add', player: 'Ada', on: '2026-03-01' }, []],
    ]);
    for (let n = 0; n < 4; n += 1) await call('history.redo', {});
    expect((await list(playerId)).count).toBe(0);
  });
  it('refuses what is no text, no day, too long, or of nobody', async () => {
    const { playerId } = await open();
    const add = (args: object) => refused('diary.add', { playerId, on: '2026-03-01', text: 'x', ...args });
    for (const bad of [
      { text: ' \n ' },
      { text: 'x'.repeat(100_001) },
      { text: 'a\u0000' },
      { on: '2026-02-30' },
    ]) {
      expect((await add(bad)).kind).toBe('refused');
    }
    expect((await add({ playerId: 99 })).message).toContain('There is no player 99');
    expect((await refused('diary.list', { playerId: 99, most: 1 })).message).toContain(
      'There is no player 99',
    );
    expect((await call('history.list', {})).undo).toHaveLength(1);
  });
  it('an entry is only reached through its own player', async () => {
    const { playerId } = await open();
    const other = await open(bagFile({}, { name: 'Bea' }));
    const { entryId } = await call('diary.add', { playerId, text: 'x' });
    const foreign = { playerId: other.playerId, entryId };
    expect((await refused('diary.strike', foreign)).message).toContain('no entry 1 in this diary');
    expect((await refused('diary.change', { ...foreign, patch: { text: 'y' } })).kind).toBe('not-found');
    expect((await list(playerId)).entries).toMatchObject([{ text: 'x' }]);
  });
});

describe('what is noted stays in the records', () => {
  it('a copy of the player begins without a diary, and the player keeps theirs', async () => {
    const { playerId } = await open();
    await call('diary.add', { playerId, text: SECRET });
    const copy = await call('players.duplicate', { playerId });
    expect(await list(copy.playerId)).toEqual({ entries: [], count: 0 });
    expect((await list(playerId)).count).toBe(1);
  });
  it('is in no bag file, roster list, answer or hand-over', async () => {
    const { playerId, bagId } = await open();
    await call('diary.add', { playerId, text: SECRET });
    const told = [
      await call('bags.export', { bagId }),
      await call('bags.read', { bagId }),
      await call('files.exportRoster', {}),
      await call('answers.plan', { bagId }),
      await call('handover.text', { bagId, format: 'md' }),
    ];
    expect(JSON.stringify(told)).not.toContain('zwrist');
  });
  it('goes for good with an erased player, every byte, and is in the whole records until then', async () => {
    const folder = mkdtempSync(path.join(tmpdir(), 'loftledger-diary-'));
    const gate = await createService({ dataDir: folder, version: '0.0.0-test' });
    try {
      const ask = async (name: string, args: unknown) => {
        const answer = await gate.call({ call: name, args });
        if (!answer.ok) throw new Error(answer.error.message);
        return answer.value;
      };
      const bytes = () =>
        readdirSync(folder, { recursive: true, withFileTypes: true })
          .filter((one) => one.isFile())
          .map((one) => readFileSync(path.join(one.parentPath, one.name), 'latin1'))
          .join('');
      const { playerId } = (await ask('players.importBag', { text: JSON.stringify(bagFile()) })) as {
        playerId: number;
      };
      await ask('diary.add', { playerId, text: SECRET });
      await ask('diary.change', { playerId, entryId: 1, patch: { text: `${SECRET}, worse` } });
      expect(bytes()).toContain('zwrist');
      await ask('players.erase', { playerId });
      await gate.close();
      expect(bytes()).not.toContain('zwri');
    } finally {
      await gate.close();
      rmSync(folder, { recursive: true, force: true });
    }
  });
});

describe('the search', () => {
  it('finds entries by their words, with whose they are, also those of archived players', async () => {
    const ada = await open(bagFile({}, { name: 'Ada' }));
    const bea = await open(bagFile({}, { name: 'Bea' }));
    await call('diary.add', { ...pick(ada), on: '2026-03-01', text: 'Left wríst; rests it until May.' });
    await call('diary.add', {
      ...pick(bea),
      on: '2026-03-02',
      text: 'Wrist cocked late.\nGap wedge to try.',
    });
    await call('players.archive', pick(bea));
    const found = async (text: string) =>
      (await call('search.all', { text, limit: 5 })).diary.map(({ player, on }) => [player, on]);
    expect(await found('wrist')).toEqual([
      ['Bea', '2026-03-02'],
      ['Ada', '2026-03-01'],
    ]);
    expect(await found('rest wrist')).toEqual([['Ada', '2026-03-01']]);
    expect(await found('wrisst late')).toEqual([['Bea', '2026-03-02']]);
    expect(await found('gw')).toEqual([['Bea', '2026-03-02']]);
    expect(await found('zanzibar')).toEqual([]);
    expect((await call('search.all', { text: 'wrist', limit: 5 })).notes).toEqual([]);
    expect((await call('search.all', { text: 'until', limit: 5 })).diary).toEqual([
      { entryId: 1, ...ada, player: 'Ada', on: '2026-03-01', text: 'Left wríst; rests it until May.' },
    ]);
    await call('diary.change', { ...pick(ada), entryId: 1, patch: { text: 'Healed.' } });
    expect(await found('wrist')).toEqual([['Bea', '2026-03-02']]);
    await call('history.undo', {});
    expect(await found('wrist')).toHaveLength(2);
  });
});

function pick({ playerId }: { playerId: number }) {
  return { playerId };
}
