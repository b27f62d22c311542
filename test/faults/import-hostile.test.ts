import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { logicalDump } from '../../db/schema/dump.ts';
import { openDatabase } from '../../db/open.ts';
import { bagFile } from '../support/bags.ts';
import { useService } from '../unit/service/kit.ts';

/** Files that are meant to hurt: each is refused with place, value and remedy, and not one row changes. */

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'loftledger-hostile-'));
});
const { call, refused, open, gate } = useService(() => folder);
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

function dump(): string {
  const { db } = openDatabase({
    file: path.join(folder, 'loftledger.db'),
    now: '2026-11-26T00:00:00Z',
    readonly: true,
  });
  try {
    return logicalDump(db);
  } finally {
    db.close();
  }
}

type Refused = { kind: string; message: string; refusals: { path: string; value: string; remedy: string }[] };

async function refusedUnchanged(name: string, args: unknown): Promise<Refused> {
  await open(bagFile({ budget: { amount: 10 } }));
  await call('prices.add', {
    note: { archetype: 'hybrid-22-t3', low: 1, likely: 2, high: 3, currency: 'GBP', remark: 'mine' },
  });
  const before = dump();
  const steps = await call('history.list', {});
  const answer = await gate().call({ call: name, args });
  if (answer.ok) throw new Error(`${name} was taken`);
  expect(dump()).toBe(before);
  expect(await call('history.list', {})).toEqual(steps);
  const { kind, message, refusals = [] } = answer.error;
  expect(kind).toBe('refused');
  expect(refusals.length).toBeGreaterThan(0);
  for (const { path: place, value, remedy } of refusals) {
    expect(place).not.toBe('');
    expect(typeof value).toBe('string');
    expect(remedy).toMatch(/\w/);
  }
  return { kind, message, refusals };
}

const units = { distance: 'yd', speed: 'mph', currency: 'GBP' };
const bag = (change: (file: Record<string, unknown>) => void): string => {
  const file = JSON.parse(JSON.stringify(bagFile())) as Record<string, unknown>;
  change(file);
  return JSON.stringify(file);
};

describe('a bag file', () => {
  const CASES: [string, string, string][] = [
    ['of a million brackets', '['.repeat(1_000_000), '$'],
    ['of a million objects in each other', '{"a":'.repeat(1_000_000), '$'],
    ['with NaN', bag(() => undefined).replace('"handicap":15', '"handicap":NaN'), 'line'],
    [
      'with a huge number',
      bag(() => undefined).replace('"handicap":15', '"handicap":1e999'),
      '$.player.handicap',
    ],
    [
      'with a carry of the moon',
      bag(() => undefined).replace('"carry":201', '"carry":1e308'),
      '$.clubs[0].carry',
    ],
    [
      'with half a letter in a name',
      bag((file) => Object.assign(file['player'] as object, { name: '\ud800' })),
      '$.player.name',
    ],
    [
      'with control characters in a name',
      bag((file) => Object.assign(file['player'] as object, { name: 'a\u0000\u001b[2J' })),
      '$.player.name',
    ],
    ['with a key of another kind', bag((file) => Object.assign(file, { constructor: 1 })), '$.constructor'],
    [
      'with a prototype',
      bag(() => undefined).replace('"player":{', '"player":{"__proto__":{"handicap":0},'),
      '$.player',
    ],
    [
      'with a name of a megabyte',
      bag((file) => Object.assign(file['player'] as object, { name: 'x'.repeat(1_000_000) })),
      '$.player.name',
    ],
    [
      'with ten thousand clubs',
      bag((file) =>
        Object.assign(file, {
          clubs: Array.from({ length: 10_000 }, (_, i) => ({ id: `c${String(i)}`, kind: 'iron' })),
        }),
      ),
      '$.clubs',
    ],
    ['of 3 MB', bag(() => undefined) + ' '.repeat(3 * 1024 * 1024), '$'],
    ['with bytes after its end', `${bag(() => undefined)}\u0000`, '$'],
  ];
  it.each(CASES)('%s', async (_, text, place) => {
    for (const name of ['files.importBag', 'players.importBag']) {
      const args = name === 'files.importBag' ? { source: { text } } : { text };
      const { refusals } = await refusedUnchanged(name, args);
      expect(refusals[0]?.path).toContain(place);
    }
  });
});

describe('a price list', () => {
  const row = (cells: string) =>
    `archetype,price,currency,seen,remark\nhybrid-22-t3,45,GBP,,fine\n${cells}\n`;
  const CASES: [string, string, string][] = [
    ['with a formula', row('hybrid-22-t3,45,GBP,,"=HYPERLINK(""http://x"",""y"")"'), 'row 3, remark'],
    ['with a command', row('hybrid-22-t3,45,GBP,,@SUM(1)*cmd|x!A0'), 'row 3, remark'],
    ['with a formula for a price', row('hybrid-22-t3,=1+1,GBP,,'), 'row 3, likely'],
    ['with markup', row('hybrid-22-t3,45,GBP,,<img src=x onerror=alert(1)>'), 'row 3, remark'],
    ['with NaN', row('hybrid-22-t3,NaN,GBP,,'), 'row 3, likely'],
    ['with infinity', row('hybrid-22-t3,1e999,GBP,,'), 'row 3, likely'],
    ['with a huge number', row(`hybrid-22-t3,${'9'.repeat(400)},GBP,,`), 'row 3, likely'],
    ['with a negative price', row('hybrid-22-t3,-1,GBP,,'), 'row 3, likely'],
    ['with half a letter', row('hybrid-22-t3,45,GBP,,\udc00'), 'line 3'],
    ['with control characters', row('hybrid-22-t3,45,GBP,,a\u001b[2Jb'), 'row 3, remark'],
    ['with zero bytes', row('hybrid-22-t3,45,GBP,,a\u0000'), 'file'],
    ['with a quote that never ends', row('hybrid-22-t3,45,GBP,,"and so on'), 'row'],
    ['with a cell of a megabyte', row(`hybrid-22-t3,45,GBP,,${'x'.repeat(1_000_000)}`), 'row 3, remark'],
    ['of another thing', 'a,b\n1,2\n', 'row 1'],
    ['of nothing', '', 'row 1'],
    ['with a thousand columns', `archetype,price${',x'.repeat(1000)}\n`, 'row 1'],
    ['with a prototype for an archetype', row('__proto__,45,GBP,,'), 'row 3, archetype'],
    ['of more rows than fit', `archetype,price\n${'x,1\n'.repeat(100_002)}`, 'file'],
  ];
  it.each(CASES)('%s', async (_, text, place) => {
    const { refusals } = await refusedUnchanged('files.importPrices', { source: { text }, skipBad: false });
    expect(refusals[0]?.path).toContain(place);
  });
});

describe('a roster', () => {
  const row = (cells: string) => `name,handicap\nAda,18\n${cells}\n`;
  const CASES: [string, string, string][] = [
    ['with a formula for a name', row('"=cmd|\' /C calc\'!A0",1'), 'row 3, name'],
    ['with markup in a name', row('<script>alert(1)</script>,1'), 'row 3, name'],
    ['with NaN for a handicap', row('Bea,NaN'), 'row 3, handicap'],
    ['with a huge handicap', row(`Bea,${'9'.repeat(400)}`), 'row 3, handicap'],
    ['with half a letter in a name', row('\ud83c,1'), 'line 3'],
    ['with a name of ten thousand letters', row(`${'x'.repeat(9999)},1`), 'row 3, name'],
  ];
  it.each(CASES)('%s', async (_, text, place) => {
    const args = { source: { text }, units, skipBad: false, skipKnown: true };
    const { refusals } = await refusedUnchanged('files.importRoster', args);
    expect(refusals[0]?.path).toContain(place);
  });
});

describe('an upload', () => {
  it('of a 100 MB table is given up on at 20 MB, and nothing of it is kept', async () => {
    const chunk = new TextEncoder().encode('hybrid-22-t3,45,GBP\n'.repeat(50_000));
    let sent = 0;
    async function* endless() {
      while (sent < 100 * 1024 * 1024) {
        sent += chunk.length;
        yield chunk;
        await Promise.resolve();
      }
    }
    const answer = await gate().upload('prices.csv', endless());
    expect(answer).toMatchObject({
      ok: false,
      error: { kind: 'refused', refusals: [{ path: 'prices.csv', value: 'more than 20 MB' }] },
    });
    expect(sent).toBeLessThan(22 * 1024 * 1024);
    expect(readdirSync(path.join(folder, 'incoming'))).toEqual([]);
  });
  const sent = (name: string, ...chunks: Uint8Array[]) => {
    async function* parts() {
      yield* chunks;
      await Promise.resolve();
    }
    return gate().upload(name, parts());
  };
  it('of a table that is no text from somewhere on is refused when it is read', async () => {
    const text = new TextEncoder().encode(
      `archetype,price,currency\n${'hybrid-22-t3,45,GBP\n'.repeat(5000)}`,
    );
    const answer = await sent('prices.csv', text, new Uint8Array([0xff, 0xd8, 0xff, 0xe0]));
    const { upload } = answer.ok ? (answer.value as { upload: string }) : { upload: '' };
    const { refusals } = await refusedUnchanged('files.importPrices', { source: { upload }, skipBad: true });
    expect(refusals[0]).toMatchObject({ path: 'file', remedy: 'Save it as CSV in UTF-8.' });
  });
  it.each([
    ['a picture called a table', 'prices.csv', [0xff, 0xd8, 0xff, 0xe0]],
    ['a program called a bag', 'bag.json', [0x7f, 0x45, 0x4c, 0x46, 0]],
    ['nothing', 'prices.csv', []],
    ['a picture', 'a.png', [0x89, 0x50, 0x4e, 0x47, 0]],
  ])('of %s is refused at once, and nothing is kept', async (_, name, bytes) => {
    const answer = await sent(name, new Uint8Array(bytes));
    expect(answer).toMatchObject({ ok: false, error: { kind: 'refused', refusals: [{ path: name }] } });
    expect(readdirSync(folder)).not.toContain('incoming');
  });
  it('of a bag of 3 MB, or records that are none, is refused; the records stay open', async () => {
    const bag = new TextEncoder().encode(`{${' '.repeat(3 * 1024 * 1024)}}`);
    expect(await sent('bag.json', bag)).toMatchObject({
      ok: false,
      error: { refusals: [{ value: 'more than 2 MB' }] },
    });
    const answer = await sent('all.loftledger', new Uint8Array(9000).fill(7));
    const { upload } = answer.ok ? (answer.value as { upload: string }) : { upload: '' };
    await open();
    const before = dump();
    expect(await refused('files.checkDatabase', { upload })).toMatchObject({ kind: 'conflict' });
    expect(await refused('files.importDatabase', { upload })).toMatchObject({ kind: 'conflict' });
    expect(dump()).toBe(before);
  });
});

it('shots: a hostile table is refused as well', async () => {
  const mapping = {
    columns: { club: 0, carry: 1 },
    decimal: '.',
    distance: 'yd',
    speed: 'mph',
    clubs: { a: '7i' },
  };
  await open();
  const [player] = await call('players.roster', {});
  for (const text of [
    'a,b\na,1e999\n',
    'a,b\na,NaN\n',
    'a,b\na,"=1+1"\n',
    'a,b\n"a,1',
    '',
    'a,b\na,1\u0000',
  ]) {
    const args = {
      bagId: player?.bagId,
      source: { text },
      mapping,
      leaveOut: [],
      skipBad: false,
      sessionOn: '2026-01-01',
    };
    await refusedUnchanged('shots.import', args);
  }
});

it('what is taken in as text goes out as text: no cell of an export begins like a formula', async () => {
  await open(bagFile({}, { name: "=cmd|' /C calc'!A0" }));
  const remark = '+1';
  await call('prices.add', {
    note: { archetype: 'hybrid-22-t3', low: 1, likely: 2, high: 3, currency: 'GBP', place: '@x', remark },
  });
  for (const name of ['files.exportRoster', 'files.exportPrices'] as const) {
    const { text } = await call(name, {});
    const cells = text.replace(/^\ufeff/, '').split(/\r\n|,/);
    expect(cells.filter((cell) => /^"?[=+@\t]/.test(cell))).toEqual([]);
  }
});
