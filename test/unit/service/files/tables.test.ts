import { describe, expect, it } from 'vitest';
import { bagFile } from '../../../support/bags.ts';
import { text, units, useFiles } from './kit.ts';

const { call, refused, open } = useFiles();

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
  it('calls the clubs of the new bags in the reader’s language', async () => {
    const labels = async (name: string) => {
      const line = (await call('players.roster', {})).find((one) => one.name === name);
      const { bag } = await call('bags.read', { bagId: line?.bagId ?? 0 });
      return bag.clubs.map(({ label }) => label);
    };
    const args = { units, skipBad: false, skipKnown: true };
    await call('files.importRoster', { ...args, ...text('Name,Handicap\nAda,18\n'), locale: 'de' });
    await call('files.importRoster', { ...args, ...text('Name,Handicap\nBea,18\n') });
    expect(await labels('Ada')).toEqual(expect.arrayContaining(['Hybrid 4', 'Eisen 7', 'Sand Wedge']));
    expect(await labels('Bea')).toEqual(expect.arrayContaining(['4-hybrid', '7-iron', 'Sand wedge']));
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
