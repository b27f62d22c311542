import { describe, expect, test } from 'vitest';
import type { Gate } from '../../../../../src-main/contract/gate.ts';
import { bagFile } from '../../../../support/bags.ts';
import { useService } from '../../../service/kit.ts';
import { expectGerman, expectGermanError } from './as-german.ts';

const { call, refused, open, gate } = useService();
const units = { distance: 'yd', speed: 'mph', currency: 'GBP' } as const;
const priced = bagFile({
  budget: { amount: 200.5 },
  costs: { delivery: 8, sellFeePercent: 12.5 },
  course: { holes: [{ par: 4, length: 380 }] },
  prices: [{ archetype: 'hybrid-22-t3', low: 30, likely: 45, high: 60 }],
});
const holes = (length: number) => [{ par: 4, length }];
const on = { enabled: true };
const note = { archetype: 'hybrid-22-t3', low: 30, likely: 45, high: 60, currency: 'GBP' };
const mine = {
  id: 'wedge-50-t2',
  kind: 'wedge',
  loftDeg: 53,
  forgiveness: 2,
  spinTier: 'mid',
  lengthIn: 34,
};
const mapping = {
  columns: { club: 0, carry: 1 },
  decimal: '.',
  distance: 'yd',
  speed: 'mph',
  clubs: { '7': '7i' },
};
const shots = (text: string, part: object = {}) => ({
  source: { text },
  mapping: { ...mapping, ...part },
  leaveOut: [],
  skipBad: false,
  sessionOn: '2026-11-20',
});

/** Calls with wrong arguments; those for a bag get its id. */
const OF_BAG: readonly (readonly [call: string, args: object])[] = [
  ['bags.updateClub', { clubId: '7i', patch: { carry: 900 } }],
  ['bags.updateClub', { clubId: 'no. such', patch: { carry: 90 } }],
  ['bags.addClub', { club: { id: '7i', kind: 'iron' } }],
  ['bags.setPrice', { archetype: 'no-such', band: { low: 1, likely: 2, high: 3 } }],
  ['bags.setUnits', { currency: 'EUR' }],
  ['bags.setUnits', { currency: 'JPY', keepNumbers: true }],
  ['bags.setUnits', { currency: 'XQX' }],
  ['bags.bought', { archetype: 'x', price: 40, replaced: [] }],
  ['bags.bought', { archetype: 'hybrid-22-t3', price: 40.123, replaced: [] }],
  [
    'bags.bought',
    {
      archetype: 'hybrid-22-t3',
      price: 40,
      replaced: [
        { clubId: '4h', to: 'shelf' },
        { clubId: '4h', to: 'sold' },
      ],
    },
  ],
  ['answers.compare', { bags: [['buy:nothing']] }],
  ['answers.plan', { locale: 'not a language' }],
  ['beside.bags', { otherId: 999 }],
  ['clubs.recordCarry', { clubId: '7i', on: '2026-02-30', carry: 100 }],
  ['clubs.removeCarry', { clubId: '7i', carryId: 99 }],
  ['costs.save', { line: { kind: 'delivery', amount: 1, ...on } }],
  ['costs.save', { line: { kind: 'regrip', ...on } }],
  ['costs.save', { line: { kind: 'regrip', percent: 1, ...on } }],
  ['costs.save', { line: { kind: 'sell-fee', amount: 1, ...on } }],
  ['costs.save', { line: { kind: 'regrip', amount: 1.234, ...on } }],
  ['costs.save', { line: { kind: 'regrip', amount: 1, currency: 'EUR', ...on } }],
  ['costs.remove', { id: 99 }],
  ['courses.save', { name: 'Long', holes: holes(1200) }],
  ['courses.save', { name: 'None', holes: [] }],
  ['courses.pick', { id: 99 }],
  ['prices.seenOne', { archetype: 'nothing', price: 1 }],
  ['prices.seenOne', { archetype: 'hybrid-22-t3', price: 1.234 }],
  ['handover.preview', { record: 7 }],
  ['handover.text', { format: 'doc' }],
  ['handover.pdf', {}],
  ['handover.setAdded', { patch: { language: 'fr' } }],
  ['shots.import', shots('a')],
  ['shots.import', shots('')],
  ['shots.import', shots('club,carry\n7,x\n8,900\n,1\n=1,100\n<b>,100\n9,\n')],
  ['shots.import', shots('club,carry\n7,1\n7,2\n7,449\n')],
  ['shots.import', shots('club,carry\nputt,2\n', { clubs: { putt: 'putter' } })],
  ['shots.import', shots('club,carry\n7,100\n', { columns: { club: 0, carry: 9 } })],
  ['shots.import', shots('club,carry\n\ud800,100\n')],
  ['shots.import', shots('club,carry\n"7,100\n')],
  ['shots.import', shots('club,carry\n"7"x,100\n')],
  [
    'shots.import',
    shots(`carry,n\n${Array.from({ length: 101 }, (_, i) => `1,${String(i)}`).join('\n')}`, {
      columns: { club: 1, carry: 0 },
    }),
  ],
  ['shots.import', shots(`${'a,'.repeat(300)}\n1`)],
  ['shots.look', { source: { upload: 'x' } }],
];
const OF_NOBODY: readonly (readonly [call: string, args: object | null])[] = [
  ['dance', {}],
  ['bags.read', null],
  ['bags.read', { bagId: 4711 }],
  ['bags.read', { bagId: 'x' }],
  ['bags.read', { bagId: 1, more: true }],
  ['answers.flight', { bagId: 4711 }],
  ['diary.list', { playerId: 99, most: 1 }],
  ['diary.add', { playerId: 1, on: '2026-03-01', text: ' ' }],
  ['diary.strike', { playerId: 1, entryId: 3 }],
  ['players.update', { playerId: 1, patch: { driverSpeed: 400 } }],
  ['players.erase', { playerId: 99 }],
  ['archetypes.add', { archetype: mine }],
  ['archetypes.update', { archetype: mine }],
  ['archetypes.remove', { id: 'wedge-50-t2' }],
  ['courses.remove', { id: 99 }],
  ['limits.set', { tierUpTo: [5, 5, 9] }],
  ['limits.set', { weights: { wide: -1, crowd: 1, tier: 1 } }],
  ['air.set', { playerId: null, air: { temperatureC: 80, altitudeM: 0 } }],
  ['prices.add', { note: { ...note, low: 50 } }],
  ['prices.add', { note: { ...note, archetype: 'hybird-22-t3' } }],
  ['prices.add', { note: { ...note, condition: 'fine' } }],
  ['prices.update', { noteId: 4711, patch: {} }],
  ['prices.setAssumptions', { halfLifeDays: 0 }],
  ['backups.list', {}],
  ['backups.restore', { sequence: 9 }],
  ['files.exportDatabase', {}],
  ['files.importDatabase', { upload: 'x' }],
  ['handover.setPicture', { picture: 'https://example.org/x.png' }],
  ['handover.setPicture', { picture: 'data:image/png;base64,AAAA' }],
  ['roster.plan', { bagIds: [], job: 'r' }],
  ['settings.update', { language: 'xx' }],
  ['files.importPrices', { source: { text: 'a,b\n1,2' }, skipBad: false }],
  ['files.importPrices', { source: { text: 'archetype,price,price\n' }, skipBad: false }],
  ['files.importPrices', { source: { text: ',\n' }, skipBad: false }],
  ['files.importBags', { sources: [{ text: '{}' }] }],
];

describe('the German window says why a call is refused', () => {
  test.each(OF_BAG)('%s %j', async (name, args) => {
    const { bagId } = await open(priced);
    expectGermanError(await refused(name, { bagId, ...args }));
  });
  test.each(OF_NOBODY)('%s %j', async (name, args) => {
    await open(priced);
    // Backups of records in memory are none, and that is an answer.
    const answer = await gate().call({ call: name, args });
    if (!answer.ok) expectGermanError(answer.error);
  });
  test('limits that contradict each other, a name twice, a club on the shelf', async () => {
    const { bagId } = await open(priced);
    const { now } = await call('limits.read', {});
    const row = (at: number, part: object) =>
      now.limits.map((one, i) => (i === at ? { ...one, ...part } : one));
    expectGermanError(await refused('limits.set', { limits: row(1, { wideYd: 4.5 }) }));
    expectGermanError(await refused('limits.set', { limits: row(3, { fromMph: 100 }) }));
    await call('courses.save', { bagId, name: 'Club', holes: holes(400) });
    expectGermanError(await refused('courses.save', { bagId, name: 'club', holes: holes(400) }));
    await call('clubs.move', { bagId, clubId: '4h', to: 'shelf' });
    expectGermanError(await refused('bags.addClub', { bagId, club: { id: '4h', kind: 'hybrid' } }));
    const { noteId } = await call('prices.add', { note });
    expectGermanError(await refused('prices.update', { noteId, patch: { currency: 'EUR' } }));
  });
});

describe('the German window says why a row or a file is left out', () => {
  test('rows of prices', async () => {
    await open(priced);
    const rows = [
      'x;45;GBP',
      'hybrid-22-t3;forty;GBP',
      'hybrid-22-t3;1,234;GBP',
      'hybrid-22-t3;45;',
      '<b>;45;GBP',
    ];
    const text = ['archetype;price;currency', ...rows, 'hybrid-22-t3;99999999;GBP', 'a;1;GBP;x'].join('\n');
    const { bad } = await call('files.previewPrices', { source: { text }, decimal: ',' });
    expect(bad).toHaveLength(7);
    for (const { message } of bad) expectGerman(message);
  });
  test('rows of a roster', async () => {
    const rows = ['=Ada,18,,', '<i>,18,,', 'Ada,x,,', 'Ada,,,', 'Ada,99,,', 'Ada,18,ft,', 'Ada,18,,knots'];
    const text = ['name,handicap,distance unit,speed unit', ...rows].join('\n');
    const { bad } = await call('files.previewRoster', { source: { text }, units });
    expect(bad).toHaveLength(7);
    for (const { message } of bad) expectGerman(message);
  });
  test.each<[string, string | Uint8Array]>([
    ['x.csv', ''],
    ['x.png', new Uint8Array([0x89, 0x50, 0])],
    ['x.xlsx', 'PK\u0003\u0004'],
    ['x.csv', new Uint8Array([0xff, 0xfe, 0x43, 0])],
    ['x.csv', new Uint8Array([0x41, 0xe4, 0x42])],
    ['x.json', new Uint8Array([0x7b, 0])],
    ['x.json', '{"format": "loftledger-plan"}'],
    ['x.md', 'Dear coach, here is\nmy bag.'],
    ['x.txt', 'Dear coach'],
    ['x.json', new TextEncoder().encode('{').slice(0, 1)],
  ])('the file %s', async (name, bytes) => {
    const answer = await sent(gate(), name, bytes);
    if (!answer.ok) expectGermanError(answer.error);
    else expect(name).toBe('x.json');
  });
  test('records that are none', async () => {
    for (const text of ['', 'no records', 'SQLite format 3\u0000 but no more']) {
      const answer = await sent(gate(), 'x.loftledger', text);
      if (answer.ok) {
        const { upload } = answer.value as { upload: string };
        expectGermanError(await refused('files.checkDatabase', { upload }));
      } else expectGermanError(answer.error);
    }
  });
});

function sent(to: Gate, name: string, bytes: string | Uint8Array) {
  async function* parts() {
    await Promise.resolve();
    yield typeof bytes === 'string' ? new TextEncoder().encode(bytes) : bytes;
  }
  return to.upload(name, parts());
}
