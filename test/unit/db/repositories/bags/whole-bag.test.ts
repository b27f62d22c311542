import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { logicalDump } from '../../../../../db/schema/dump.ts';
import { findBag, listBags } from '../../../../../db/repositories/bags/bags.ts';
import { carriesOf, recordCarry } from '../../../../../db/repositories/bags/carries.ts';
import {
  addClub,
  listClubs,
  updateClub,
  type ClubFields,
} from '../../../../../db/repositories/bags/clubs.ts';
import { addCostLine, costLinesOf } from '../../../../../db/repositories/prices/cost-lines.ts';
import { addPriceNote, notesOfBag } from '../../../../../db/repositories/prices/price-notes.ts';
import { createPlayer } from '../../../../../db/repositories/bags/players.ts';
import {
  duplicateBag,
  readBag,
  rewriteBag,
  writeBag,
  type WholeBag,
} from '../../../../../db/repositories/bags/whole-bag.ts';
import type { Band, Money } from '../../../../../db/row.ts';
import { CATALOGUE, FULL_BAG, LATER, memoryDb, NOW, PLAYER, storageError } from '../../kit.ts';

const MINIMAL: WholeBag = { units: { distance: 'yd', speed: 'mph', currency: 'USD' }, clubs: [], prices: [] };

// Within what the bag file allows; text is any well-formed string.
const text = fc.string({ unit: 'binary', maxLength: 30 });
const key = fc.string({ unit: 'grapheme', minLength: 1, maxLength: 10 });
const real = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((n) => (n === 0 ? 0 : n));
const currency = fc.constantFrom('GBP', 'EUR', 'JPY', 'KWD');
const minor = fc.nat(1_000_000_000);
const money: fc.Arbitrary<Money> = fc.record({ minor, currency });
const band: fc.Arbitrary<Band> = fc.tuple(minor, minor, minor, currency).map(([a, b, c, code]) => {
  const [lowMinor = 0, likelyMinor = 0, highMinor = 0] = [a, b, c].sort((x, y) => x - y);
  return { lowMinor, likelyMinor, highMinor, currency: code };
});
const day = fc.date({ min: new Date('1990-01-01'), max: new Date('2090-01-01'), noInvalidDate: true });
const seenOn = day.map((date) => date.toISOString().slice(0, 10));

const optional = {
  label: text,
  loftDeg: real(-15, 80),
  loftMeasured: fc.boolean(),
  lieDeg: real(40, 85),
  lengthIn: real(18, 60),
  carryYd: real(1, 450),
  carrySdYd: real(0, 450),
  shots: fc.integer({ min: 1, max: 100_000 }),
  totalYd: real(1, 450),
  ballSpeedMph: real(20, 250),
  launchDeg: real(-10, 80),
  spinRpm: real(0, 20_000),
  forgiveness: fc.constantFrom(1, 2, 3, 4),
  spinTier: fc.constantFrom('low', 'mid', 'high'),
  flex: fc.constantFrom('L', 'A', 'R', 'S', 'X'),
  yearMade: fc.integer({ min: 1850, max: 2100 }),
  goTo: fc.boolean(),
  lotKey: fc.constantFrom('irons', 'a', 'ü'),
  sell: band,
};
const kind = fc.constantFrom('driver', 'fairway', 'hybrid', 'iron', 'wedge', 'putter');
const club = fc.record(
  { key, kind, ...optional },
  { requiredKeys: ['key', 'kind'] },
) as fc.Arbitrary<ClubFields>;
const lot = fc.record({ key: fc.constantFrom('irons', 'a', 'b'), sell: band }, { requiredKeys: ['key'] });
const costs = fc.record(
  { delivery: money, regrip: money, sellFeePercent: real(0, 100), sellPostage: money },
  { requiredKeys: [] },
);
const hole = fc.record({ par: fc.integer({ min: 3, max: 6 }), lengthYd: real(1, 1000) });
const bag = fc.record(
  {
    name: text,
    state: fc.constantFrom('now', 'planned', 'archived'),
    units: fc.record({
      distance: fc.constantFrom('yd', 'm'),
      speed: fc.constantFrom('mph', 'km/h', 'm/s'),
      currency,
    }),
    clubs: fc.uniqueArray(club, { selector: (c) => c.key, maxLength: 20 }),
    lots: fc.uniqueArray(lot, { selector: (l) => l.key, minLength: 1 }),
    prices: fc.array(
      fc.record(
        { archetypeId: fc.constantFrom(...CATALOGUE.map((a) => a.id)), band, seenOn },
        { requiredKeys: ['archetypeId', 'band'] },
      ),
      { maxLength: 8 },
    ),
    costs: costs.filter((c) => Object.keys(c).length > 0),
    budget: fc.record({ amount: money, cashBeforeSales: fc.boolean() }, { requiredKeys: ['amount'] }),
    choices: fc.record({ changePutter: fc.boolean() }),
    course: fc.record({ holes: fc.array(hole, { minLength: 1, maxLength: 18 }) }),
  },
  { requiredKeys: ['state', 'units', 'clubs', 'prices'] },
) as fc.Arbitrary<WholeBag>;

describe('a whole bag', () => {
  test('that gives everything reads back as written', () => {
    const db = memoryDb();
    const id = writeBag(db, createPlayer(db, PLAYER, NOW), FULL_BAG, NOW);
    expect(readBag(db, id)).toEqual(FULL_BAG);
  });

  test('that gives the least reads back as written', () => {
    const db = memoryDb();
    const id = writeBag(db, createPlayer(db, PLAYER, NOW), MINIMAL, NOW);
    expect(readBag(db, id)).toEqual({ ...MINIMAL, state: 'now' });
  });

  test('any bag reads back as written, every bit, and a copy of it too', () => {
    const db = memoryDb();
    const player = createPlayer(db, PLAYER, NOW);
    fc.assert(
      fc.property(bag, (any) => {
        const id = writeBag(db, player, any, NOW);
        expect(readBag(db, id)).toEqual(any);
        expect(readBag(db, duplicateBag(db, id, 'copy', LATER))).toEqual({
          ...any,
          name: 'copy',
          state: 'planned',
        });
      }),
      { seed: 6, numRuns: 150 },
    );
  });

  test('rewritten as any other bag it reads as that one, whatever it was before', () => {
    const db = memoryDb();
    const player = createPlayer(db, PLAYER, NOW);
    fc.assert(
      fc.property(bag, bag, (first, second) => {
        const id = writeBag(db, player, { ...first, state: 'planned' }, NOW);
        rewriteBag(db, id, second, LATER);
        const name = second.name ?? first.name;
        expect(readBag(db, id)).toEqual({
          ...second,
          ...(name === undefined ? {} : { name }),
          state: 'planned',
        });
      }),
      { seed: 8, numRuns: 100 },
    );
    expect(db.pragma('foreign_key_check')).toEqual([]);
  });
});

describe('rewriting', () => {
  test('knows clubs again by their ids: history and what was paid stay', () => {
    const db = memoryDb();
    const id = writeBag(db, createPlayer(db, PLAYER, NOW), FULL_BAG, NOW);
    const seven = listClubs(db, id)[0]?.id ?? 0;
    recordCarry(db, seven, { onDate: '2026-05-01', source: 'measured', carryYd: 150 }, NOW);
    updateClub(db, seven, { bought: { minor: 900, currency: 'GBP' } });
    addClub(db, id, { key: 'shelved', kind: 'wedge' }, { place: 'shelf' });
    rewriteBag(
      db,
      id,
      {
        ...FULL_BAG,
        clubs: [
          { key: 'new', kind: 'hybrid' },
          { key: '7i', kind: 'iron' },
        ],
      },
      LATER,
    );
    const clubs = listClubs(db, id);
    expect(clubs.map((c) => c.key)).toEqual(['new', '7i']);
    expect(clubs[1]).toEqual({
      id: seven,
      bagId: id,
      place: 'bag',
      key: '7i',
      kind: 'iron',
      bought: { minor: 900, currency: 'GBP' },
    });
    expect(carriesOf(db, seven)).toHaveLength(1);
    expect(listClubs(db, id, 'shelf').map((c) => c.key)).toEqual(['shelved']);
  });

  test('replaces the file’s own costs and prices, not the lines the user added', () => {
    const db = memoryDb();
    const id = writeBag(db, createPlayer(db, PLAYER, NOW), FULL_BAG, NOW);
    addCostLine(db, id, {
      kind: 'bend',
      label: 'lie',
      amount: { minor: 500, currency: 'GBP' },
      enabled: false,
    });
    addPriceNote(db, { archetypeId: 'hybrid-22-t3', band: FULL_BAG.prices[0]?.band as Band }, NOW);
    rewriteBag(db, id, { ...MINIMAL }, LATER);
    expect(costLinesOf(db, id).map((line) => line.kind)).toEqual(['bend']);
    expect(notesOfBag(db, id)).toEqual([]);
    expect(db.prepare('SELECT count(*) FROM price_note').pluck().get()).toBe(1);
    expect(db.prepare('SELECT count(*) FROM course').pluck().get()).toBe(0);
  });
});

describe('refusals leave everything as it was', () => {
  test.each([
    [
      'a price of no archetype',
      { prices: [{ archetypeId: 'nothing-t9', band: FULL_BAG.prices[0]?.band as Band }] },
      'prices[0] is of "nothing-t9"',
    ],
    [
      'two clubs of one id',
      {
        clubs: [
          { key: 'a', kind: 'iron' },
          { key: 'b', kind: 'iron' },
          { key: 'a', kind: 'wedge' },
        ],
      },
      'clubs[2] has the id "a", as clubs[0] has',
    ],
    ['two sets of one id', { lots: [{ key: 'a' }, { key: 'a' }] }, 'lots[1] has the id "a", as lots[0] has'],
    ['a carry of 900 yd', { clubs: [{ key: 'a', kind: 'iron', carryYd: 900 }] }, 'carry_yd is 900'],
    ['a carry of NaN', { clubs: [{ key: 'a', kind: 'iron', carryYd: NaN }] }, 'carryYd is NaN'],
    ['a negative carry', { clubs: [{ key: 'a', kind: 'iron', carryYd: -1 }] }, 'carry_yd is -1'],
    [
      'low above likely',
      {
        prices: [
          {
            archetypeId: 'hybrid-22-t3',
            band: { lowMinor: 3, likelyMinor: 2, highMinor: 3, currency: 'GBP' },
          },
        ],
      },
      'low_minor is 3, likely_minor is 2',
    ],
    [
      'a day that is none',
      {
        prices: [
          { archetypeId: 'hybrid-22-t3', band: FULL_BAG.prices[0]?.band as Band, seenOn: '2026-02-30' },
        ],
      },
      'seen_on is "2026-02-30"',
    ],
    ['a small currency', { units: { distance: 'yd', speed: 'mph', currency: 'gbp' } }, 'currency is "gbp"'],
    [
      'a huge amount',
      { budget: { amount: { minor: 2 ** 52, currency: 'GBP' } } },
      'budget_minor is 4503599627370496',
    ],
    ['a fee of 101 %', { costs: { sellFeePercent: 101 } }, 'percent is 101'],
  ] as [string, Partial<WholeBag>, string][])('%s', (_, part, message) => {
    const db = memoryDb();
    const player = createPlayer(db, PLAYER, NOW);
    const before = writeBag(db, player, FULL_BAG, NOW);
    const dump = logicalDump(db);
    const error = storageError(() => writeBag(db, player, { ...MINIMAL, ...part }, NOW));
    expect(error.message).toContain(message);
    expect(error.remedy).not.toBe('');
    expect(logicalDump(db)).toBe(dump);
    expect(storageError(() => rewriteBag(db, before, { ...MINIMAL, ...part }, NOW)).message).toContain(
      message,
    );
    expect(logicalDump(db)).toBe(dump);
  });

  test('a bag of no player', () => {
    const db = memoryDb();
    expect(storageError(() => writeBag(db, 77, MINIMAL, NOW))).toMatchObject({ code: 'constraint' });
    expect(storageError(() => readBag(db, 77))).toMatchObject({
      code: 'missing',
      message: 'There is no bag 77',
    });
  });
});

test('a new bag of now archives the one before', () => {
  const db = memoryDb();
  const player = createPlayer(db, PLAYER, NOW);
  const first = writeBag(db, player, FULL_BAG, NOW);
  const second = writeBag(db, player, FULL_BAG, LATER);
  expect(findBag(db, first).state).toBe('archived');
  expect(listBags(db, player).map((b) => [b.id, b.state])).toEqual([
    [second, 'now'],
    [first, 'archived'],
  ]);
});
