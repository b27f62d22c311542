import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { bagFile } from '../../../support/bags.ts';
import { useService } from '../kit.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'loftledger-files-'));
});
const { call, refused, open, gate } = useService(() => folder);
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

const units = { distance: 'yd', speed: 'mph', currency: 'GBP' } as const;
const text = (source: string) => ({ source: { text: source } });

/** What lies in the folder for uploads. */
const incoming = () =>
  existsSync(path.join(folder, 'incoming')) ? readdirSync(path.join(folder, 'incoming')) : [];

async function upload(name: string, bytes: Uint8Array | string): Promise<string> {
  async function* parts() {
    const all = typeof bytes === 'string' ? new TextEncoder().encode(bytes) : bytes;
    for (let at = 0; at < all.length; at += 1000) yield all.slice(at, at + 1000);
  }
  const answer = await gate().upload(name, parts());
  if (!answer.ok) throw new Error(answer.error.message);
  return (answer.value as { upload: string }).upload;
}

describe('a price list', () => {
  const list = [
    'archetype,price,low,high,currency,seen,condition,where,remark,shelf',
    'hybrid-22-t3,45,30,60,GBP,2026-11-01,worn,"Car boot, Epsom",\'=grip,3',
    'wedge-50-t2,25.5,,,,,,,,',
  ].join('\n');

  it('is looked at, taken in, known again, and written out as it came', async () => {
    await open();
    const preview = await call('files.previewPrices', { ...text(list), currency: 'EUR' });
    expect(preview).toMatchObject({
      ready: 2,
      same: 0,
      badRows: 0,
      archetypes: 2,
      currencies: ['EUR', 'GBP'],
      unknownColumns: ['shelf'],
    });
    expect(preview.sample[1]).toEqual({
      archetype: 'wedge-50-t2',
      low: 25.5,
      likely: 25.5,
      high: 25.5,
      currency: 'EUR',
    });
    expect(await call('prices.list', { limit: 10 })).toEqual([]);
    const args = { ...text(list), currency: 'EUR', skipBad: false };
    expect(await call('files.importPrices', args)).toEqual({ added: 2, same: 0, skipped: 0 });
    expect(await call('prices.list', { limit: 10 })).toMatchObject([
      { archetype: 'wedge-50-t2', currency: 'EUR' },
      { archetype: 'hybrid-22-t3', condition: 'worn', place: 'Car boot, Epsom', remark: '=grip' },
    ]);
    expect(await call('files.importPrices', args)).toEqual({ added: 0, same: 2, skipped: 0 });
    const saved = await call('files.exportPrices', {});
    expect(saved.name).toMatch(/^loftledger-prices-\d{4}-\d\d-\d\d\.csv$/);
    expect(saved.text).toContain('"Car boot, Epsom",\'=grip');
    const again = { source: { text: saved.text }, skipBad: false };
    expect(await call('files.importPrices', again)).toEqual({ added: 0, same: 2, skipped: 0 });
    await call('history.undo', {});
    expect(await call('prices.list', { limit: 10 })).toEqual([]);
    expect(await call('files.importPrices', again)).toEqual({ added: 2, same: 0, skipped: 0 });
    expect((await call('files.exportPrices', {})).text).toBe(saved.text);
  });
  it('with rows that cannot be used brings nothing, unless they may be skipped', async () => {
    const bad = [
      'archetype;price;low;high;currency;seen;condition;remark',
      'hybrid-22-t3;45,5;;;GBP;;;',
      'hybird-22-t3;45;;;GBP;;;',
      'hybrid-22-t3;forty;;;GBP;;;',
      'hybrid-22-t3;45;50;;GBP;;;',
      'hybrid-22-t3;45;;;GBP;2026-02-30;;',
      'hybrid-22-t3;45;;;GBP;;fine;',
      'hybrid-22-t3;45;;;gbp;;;',
      'hybrid-22-t3;45;;;;;;',
      'hybrid-22-t3;45;;;GBP;;;<b>x</b>',
      'hybrid-22-t3;99999999;;;GBP;;;',
      'hybrid-22-t3;45,123;;;GBP;;;',
    ].join('\n');
    const args = { ...text(bad), decimal: ',' as const };
    const preview = await call('files.previewPrices', args);
    expect(preview).toMatchObject({ ready: 1, badRows: 10 });
    expect(preview.bad.map(({ rowNumber, column }) => [rowNumber, column])).toEqual([
      [3, 'archetype'],
      [4, 'likely'],
      [5, 'low'],
      [6, 'seen'],
      [7, 'condition'],
      [8, 'currency'],
      [9, 'currency'],
      [10, 'remark'],
      [11, 'likely'],
      [12, 'likely'],
    ]);
    expect(await refused('files.importPrices', { ...args, skipBad: false })).toMatchObject({
      kind: 'refused',
      refusals: expect.arrayContaining([expect.objectContaining({ path: 'row 3, archetype' })]) as unknown,
    });
    expect(await call('prices.list', { limit: 10 })).toEqual([]);
    expect(await call('files.importPrices', { ...args, skipBad: true })).toEqual({
      added: 1,
      same: 0,
      skipped: 10,
    });
  });
});

describe('a roster', () => {
  const list =
    'Name,Handicap,Driver speed,Target handicap,Handed,Budget\nAda,18.4,85,,left,150\nBea,-1.5,,,,\n';

  it('takes a plus handicap as golfers write it', async () => {
    const plus = "Name,Handicap,Target handicap\nAda,+2,+3.5\nBea,'+1.4,\nCy,-2,\nDi,2,+0\n";
    const args = { ...text(plus), units, skipBad: false, skipKnown: true };
    expect((await call('files.previewRoster', { ...text(plus), units })).bad).toEqual([]);
    await call('files.importRoster', args);
    const players = (await call('players.roster', {})).map(({ name, handicap }) => [name, handicap]);
    expect(players).toEqual([
      ['Ada', -2],
      ['Bea', -1.4],
      ['Cy', -2],
      ['Di', 2],
    ]);
    // Written as in the bag file: a spreadsheet would make 2 of a cell +2.
    const saved = (await call('files.exportRoster', {})).text;
    expect(saved).toContain('\r\nAda,-2,-3.5,');
    expect(saved).toContain('\r\nDi,2,0,');
    const other = 'Name,Handicap\nEve,"+2,1"\nFay,++2\n';
    const found = await call('files.previewRoster', { ...text(other), units });
    expect(found).toMatchObject({ decimal: ',', bad: [{ rowNumber: 3, column: 'handicap', value: '++2' }] });
  });

  it('is looked at, taken in with usual bags, known again, and written out', async () => {
    const options = { ...text(list), units };
    expect(await call('files.previewRoster', options)).toMatchObject({
      ready: 2,
      known: 0,
      sample: [
        { name: 'Ada', handicap: 18.4, known: false },
        { name: 'Bea', handicap: -1.5, known: false },
      ],
    });
    const args = { ...options, skipBad: false, skipKnown: true };
    expect(await call('files.importRoster', args)).toEqual({ added: 2, known: 0, skipped: 0 });
    const roster = await call('players.roster', {});
    expect(roster).toMatchObject([{ name: 'Ada', clubs: 12 }, { name: 'Bea' }]);
    const { bag } = await call('bags.read', { bagId: roster[0]?.bagId ?? 0 });
    expect(bag.player).toMatchObject({ driverSpeed: 85, handed: 'left' });
    expect(bag.budget).toEqual({ amount: 150 });
    expect(await call('files.importRoster', args)).toEqual({ added: 0, known: 2, skipped: 0 });
    const saved = await call('files.exportRoster', {});
    expect(saved.text).toContain('\r\nAda,18.4,,85,left,soft,150,yd,mph,GBP,12,\r\n');
    expect(saved.text).toContain('\r\nBea,-1.5,,,right,soft,,yd,mph,GBP,12,\r\n');
    await call('history.undo', {});
    expect(await call('players.roster', {})).toEqual([]);
    const again = { source: { text: saved.text }, units: { ...units, currency: 'USD' } };
    await call('files.importRoster', { ...again, skipBad: false, skipKnown: true });
    expect((await call('files.exportRoster', {})).text).toBe(saved.text);
  });
  it('does not tell of pain and notes', async () => {
    await open(bagFile({}, { name: 'Ada', pain: true, missNote: 'since the wrist' }));
    const saved = await call('files.exportRoster', {});
    expect(saved.text).not.toMatch(/pain|wrist|true/);
  });
  it('names what is wrong by row and column', async () => {
    const bad =
      'name,handicap,driver speed,handed,budget,currency\nA,x,,,,\nB,99,,,,\nC,1,900,,,\nD,1,,both,,\nE,1,,,1.234,\nF,1,,,1.5,JPY\n,1,,,,\n=1,1,,,,\n';
    const preview = await call('files.previewRoster', { ...text(bad), units });
    expect(preview.ready).toBe(0);
    expect(preview.bad.map(({ rowNumber, column }) => [rowNumber, column])).toEqual([
      [2, 'handicap'],
      [3, 'handicap'],
      [4, 'driver speed'],
      [5, 'handed'],
      [6, 'budget'],
      [7, 'budget'],
      [8, 'name'],
      [9, 'name'],
    ]);
  });
});

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

describe('the decimal mark of a preview', () => {
  const prices = (...cells: string[]) =>
    `archetype;price\n${cells.map((cell) => `hybrid-22-t3;${cell}\n`).join('')}`;
  it.each([
    [prices('45,5', '30'), ',', 2],
    [prices('45.5', '30'), '.', 2],
    [prices('45', '30'), '.', 2],
    // Both marks: a point, and the others are listed.
    [prices('45,5', '30.5'), '.', 1],
    // A thousand is no decimal.
    [prices('1,234'), '.', 0],
  ])('of %j is %s', async (list, decimal, ready) => {
    const found = await call('files.previewPrices', { ...text(list), currency: 'GBP' });
    expect([found.decimal, found.ready]).toEqual([decimal, ready]);
    // What is chosen counts.
    const chosen = await call('files.previewPrices', { ...text(list), currency: 'GBP', decimal: '.' });
    expect(chosen.decimal).toBe('.');
  });
  it('of a roster goes by its figures, not its names', async () => {
    const list = 'name;handicap;budget\n1,5;18,4;\nBea;-2;150\n';
    const found = await call('files.previewRoster', { ...text(list), units });
    expect([found.decimal, found.ready]).toEqual([',', 2]);
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
    const [file = ''] = readdirSync(path.join(folder, 'incoming'));
    expect(statSync(path.join(folder, 'incoming', file)).mode & 0o777).toBe(0o600);
    expect(await call('files.previewPrices', { source: { upload: id } })).toMatchObject({ ready: 1 });
    await call('files.dropUpload', { upload: id });
    expect(readdirSync(path.join(folder, 'incoming'))).toEqual([]);
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

describe('the whole database', () => {
  it('is written out, looked at, and taken in by a running service, after a backup', async () => {
    await open(bagFile({}, { name: 'Ada' }));
    const { file, bytes } = await call('files.exportDatabase', {});
    expect(path.dirname(file)).toBe(path.join(folder, 'exports'));
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
    expect(error.message).not.toContain(folder);
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
  const files = () => readdirSync(path.join(folder, 'backups'));
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
  const database = path.join(folder, 'loftledger.db');
  expect(existsSync(database)).toBe(true);
  for (const name of readdirSync(folder).filter((one) => one.startsWith('loftledger.db'))) {
    expect(readFileSync(path.join(folder, name)).includes('Quillfeather')).toBe(false);
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
