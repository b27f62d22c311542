import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { bagFile } from '../../../support/bags.ts';
import { useFiles } from './kit.ts';

const { call, refused, open, folder, upload } = useFiles();

describe('the whole database', () => {
  it('is written out, looked at, and taken in by a running service, after a backup', async () => {
    await open(bagFile({}, { name: 'Ada' }));
    const { file, bytes } = await call('files.exportDatabase', {});
    expect(path.dirname(file)).toBe(path.join(folder(), 'exports'));
    expect(statSync(file).size).toBe(bytes);
    await open(bagFile({}, { name: 'Bea' }));
    const id = await upload('ada.loftledger', readFileSync(file));
    expect(await call('files.checkDatabase', { upload: id })).toMatchObject({
      rows: { player: 1, club: 12 },
      here: { player: 2, club: 24 },
    });
    expect(await call('players.roster', {})).toHaveLength(2);
    expect(await call('files.importDatabase', { upload: id })).toMatchObject({ restart: true });
    expect((await call('players.roster', {})).map((line) => line.name)).toEqual(['Ada']);
    // The records before are a backup, and can come back.
    const [backup] = await call('backups.list', {});
    expect(backup).toMatchObject({ reason: 'before-import' });
    expect(await call('backups.restore', { sequence: backup?.sequence ?? 0 })).toMatchObject({
      restart: true,
      kept: { reason: 'before-restore' },
    });
    expect((await call('players.roster', {})).map((line) => line.name)).toEqual(['Ada', 'Bea']);
    // The service goes on: an edit, and its undoing.
    await open(bagFile({}, { name: 'Cara' }));
    await call('history.undo', {});
    expect(await call('players.roster', {})).toHaveLength(2);
    expect(await call('search.all', { text: 'bea', limit: 5 })).toMatchObject({ players: [{ name: 'Bea' }] });
  });
  it('that is none leaves the records as they are, open', async () => {
    await open(bagFile({}, { name: 'Ada' }));
    const id = await upload('x.loftledger', 'SQLite format 3\u0000 but no more');
    const error = await refused('files.importDatabase', { upload: id });
    expect(error.kind).toBe('conflict');
    expect(error.message).not.toContain(folder());
    expect(await call('players.roster', {})).toHaveLength(1);
    expect(await call('backups.list', {})).toEqual([]);
    expect(await refused('backups.restore', { sequence: 9 })).toMatchObject({ kind: 'not-found' });
  });
  it('is backed up by hand, and the newest five are kept', async () => {
    for (let i = 1; i <= 6; i++) {
      expect(await call('backups.make', {})).toMatchObject({ sequence: i, reason: 'by-hand' });
    }
    expect((await call('backups.list', {})).map((backup) => backup.sequence)).toEqual([6, 5, 4, 3, 2]);
  });
});

it('a backup is deleted for good, by its number, and no other file', async () => {
  await open(bagFile({}, { name: 'Ada' }));
  for (let i = 0; i < 3; i++) await call('backups.make', {});
  const files = () => readdirSync(path.join(folder(), 'backups'));
  const [first, second] = files();
  await call('backups.remove', { sequence: 3 });
  expect(files()).toEqual([first, second]);
  expect((await call('backups.list', {})).map(({ sequence }) => sequence)).toEqual([2, 1]);
  expect(await refused('backups.remove', { sequence: 3 })).toMatchObject({ kind: 'not-found' });
  expect(await call('players.roster', {})).toHaveLength(1);
});

it('an erased player leaves no byte here; kept backups are told of', async () => {
  const { playerId } = await open(bagFile({}, { name: 'Zoë Quillfeather', missNote: 'left wrist' }));
  await open(bagFile({}, { name: 'Bea' }));
  await call('search.all', { text: 'zoe', limit: 5 });
  await call('backups.make', {});
  expect(await call('players.erase', { playerId })).toEqual({ logEmptied: true, backups: 1 });
  expect((await call('players.roster', {})).map((line) => line.name)).toEqual(['Bea']);
  expect(await call('history.list', {})).toEqual({ undo: [], redo: [] });
  expect((await call('search.all', { text: 'zoe', limit: 5 })).players).toEqual([]);
  const database = path.join(folder(), 'loftledger.db');
  expect(existsSync(database)).toBe(true);
  for (const name of readdirSync(folder()).filter((one) => one.startsWith('loftledger.db'))) {
    expect(readFileSync(path.join(folder(), name)).includes('Quillfeather')).toBe(false);
  }
  expect(await refused('players.erase', { playerId })).toMatchObject({ kind: 'not-found' });
});

it('the history lists what can be taken back and done again, the next first', async () => {
  const { bagId } = await open();
  await call('bags.setBudget', { bagId, budget: { amount: 10 } });
  await call('bags.setBudget', { bagId, budget: { amount: 20 } });
  await call('history.undo', {});
  const { undo, redo } = await call('history.list', {});
  expect(undo.map((step) => step.did)).toEqual(['bags.setBudget', 'players.importBag']);
  expect(redo.map((step) => step.did)).toEqual(['bags.setBudget']);
  expect(undo[0]?.at).toMatch(/^\d{4}-\d\d-\d\dT/);
});
