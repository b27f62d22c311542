import { describe, expect, it } from 'vitest';
import { bagFromFile, MAX_BAG_BYTES, readBagFile } from '../../../../src-main/contract/formats/read-bag.ts';
import { RefusedInput } from '../../../../src-main/contract/refusal.ts';
import { bagFile, withClub } from '../../../support/bags.ts';

function refusalOf(input: unknown) {
  const bytes = typeof input === 'string' || input instanceof Uint8Array ? input : JSON.stringify(input);
  try {
    readBagFile(bytes);
  } catch (error) {
    if (error instanceof RefusedInput) return error.refusals[0];
    throw error;
  }
  return undefined;
}

describe('readBagFile takes', () => {
  it('a usual bag', () => {
    expect(readBagFile(JSON.stringify(bagFile())).clubs).toHaveLength(12);
  });
  it('a byte order mark before it', () => {
    expect(readBagFile(`\ufeff${JSON.stringify(bagFile())}`).version).toBe(1);
  });
  it('a handicap better than scratch, as a negative number', () => {
    expect(readBagFile(JSON.stringify(bagFile({}, { handicap: -2.4 }))).player.handicap).toBe(-2.4);
  });
  it('an empty list of clubs', () => {
    expect(readBagFile(JSON.stringify(bagFile({ clubs: [] }))).clubs).toEqual([]);
  });
});

describe('readBagFile refuses, with place, value and remedy', () => {
  const band = { low: 10, likely: 20, high: 30 };
  const cases: [string, unknown, string, RegExp][] = [
    ['an unknown key', { ...bagFile(), colour: 'red' }, '$.colour', /not a key that is known/],
    [
      'an unknown key of a club',
      withClub(bagFile(), '7i', { brand: 'x' } as never),
      '$.clubs[5].brand',
      /not a key/,
    ],
    [
      '__proto__ as a key',
      JSON.stringify(bagFile()).replace('{', '{"__proto__":{"a":1},'),
      '$.__proto__',
      /not a key/,
    ],
    ['a missing kind', withClub(bagFile(), '7i', { kind: undefined } as never), '$.clubs[5].kind', /missing/],
    [
      'an unknown kind',
      withClub(bagFile(), '7i', { kind: 'chipper' } as never),
      '$.clubs[5].kind',
      /not one of/,
    ],
    ['a negative carry', withClub(bagFile(), '7i', { carry: -5 }), '$.clubs[5].carry', /above 0/],
    [
      'a carry that is text',
      withClub(bagFile(), '7i', { carry: '150' } as never),
      '$.clubs[5].carry',
      /finite number/,
    ],
    [
      'a carry that is null',
      withClub(bagFile(), '7i', { carry: null } as never),
      '$.clubs[5].carry',
      /finite number/,
    ],
    [
      'a carry of 900 yd',
      withClub(bagFile(), 'driver', { carry: 900 }),
      '$.clubs[0].carry',
      /between 1 and 450 yd/,
    ],
    [
      'a carry of 1e999',
      JSON.stringify(bagFile()).replace('201', '1e999'),
      '$.clubs[0].carry',
      /finite number/,
    ],
    ['two clubs with one id', withClub(bagFile(), '7i', { id: '8i' }), '$.clubs[6].id', /clubs\[5\]/],
    [
      'a loft beyond its kind',
      withClub(bagFile(), 'driver', { loftDeg: 46 }),
      '$.clubs[0].loftDeg',
      /between 4 and 22/,
    ],
    [
      'a spread without a carry',
      withClub(bagFile(), 'putter', { carrySd: 4 }),
      '$.clubs[11].carrySd',
      /not given/,
    ],
    [
      'a total below the carry',
      withClub(bagFile(), 'driver', { total: 190 }),
      '$.clubs[0].total',
      /below the carry/,
    ],
    ['a price without archetype', bagFile({ prices: [band] as never }), '$.prices[0].archetype', /missing/],
    [
      'one archetype priced twice',
      bagFile({
        prices: [
          { archetype: 'a', ...band },
          { archetype: 'a', ...band },
        ],
      }),
      '$.prices[1].archetype',
      /prices\[0\]/,
    ],
    [
      'low above likely',
      bagFile({ prices: [{ archetype: 'a', low: 25, likely: 20, high: 30 }] }),
      '$.prices[0].low',
      /above likely/,
    ],
    [
      'likely above high',
      bagFile({ prices: [{ archetype: 'a', low: 5, likely: 40, high: 30 }] }),
      '$.prices[0].likely',
      /above high/,
    ],
    ['a tenth of a penny', bagFile({ budget: { amount: 10.005 } }), '$.budget.amount', /2 digits/],
    [
      'a sen of yen',
      bagFile({ units: { distance: 'yd', speed: 'mph', currency: 'JPY' }, budget: { amount: 10.5 } }),
      '$.budget.amount',
      /0 digits/,
    ],
    [
      'a currency that is none',
      bagFile({ units: { distance: 'yd', speed: 'mph', currency: 'XQQ' } }),
      '$.units.currency',
      /no ISO 4217/,
    ],
    ['version 2', { ...bagFile(), version: 2 }, '$.version', /newer program/],
    [
      'version 2 with keys of tomorrow',
      { ...bagFile(), version: 2, hologram: true },
      '$.version',
      /newer program/,
    ],
    ['another format', { ...bagFile(), format: 'x' }, '$.format', /not one of/],
    ['a handicap of 60', bagFile({}, { handicap: 60 }), '$.player.handicap', /at most 54/],
    ['a speed of 300', bagFile({}, { driverSpeed: 300 }), '$.player.driverSpeed', /between 30 and 160 mph/],
    [
      'half a surrogate pair',
      JSON.stringify(bagFile({}, { name: 'QQ' })).replace('QQ', '\\ud800'),
      '$.player.name',
      /surrogate/,
    ],
    [
      'a date that is none',
      bagFile({ prices: [{ archetype: 'a', ...band, seen: '2026-02-30' }] }),
      '$.prices[0].seen',
      /date/i,
    ],
    ['a set without clubs', bagFile({ sets: [{ id: 'ghost' }] }), '$.sets[0].id', /no club/],
    ['a list', [], '$', /object/],
    ['an empty file', '', '$', /empty/],
    ['blanks only', ' \n\t ', '$', /empty/],
    ['no JSON', 'hello', '$ (line 1, column 1)', /not JSON/],
    ['JSON cut short', JSON.stringify(bagFile()).slice(0, 200), '$ (end of file)', /not JSON/],
    [
      'a comma too many, three lines down',
      '{\n "format": "loftledger-bag",\n "version": 1,,\n}',
      '$ (line 3, column 15)',
      /not JSON/,
    ],
    ['NaN', JSON.stringify(bagFile()).replace('201', 'NaN'), '$ (line 1, column', /not JSON/],
    ['binary', new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0xff, 0xfe, 0]), '$', /not UTF-8/],
    ['zero bytes', new Uint8Array(64), '$', /zero bytes/],
    ['deep nesting', '['.repeat(100_000), '$', /nested/],
    ['an oversize file', new Uint8Array(MAX_BAG_BYTES + 1).fill(32), '$', /too large/],
  ];
  it.each(cases)('%s', (_name, input, path, message) => {
    const refusal = refusalOf(input);
    expect(refusal?.path).toContain(path);
    expect(refusal?.message).toMatch(message);
    expect(refusal?.remedy).toMatch(/\.$/);
    expect(refusal?.value).not.toBe(undefined);
  });
});

describe('bagFromFile', () => {
  it('turns metres, km/h and euro into yards, mph and cents', () => {
    const file = bagFile(
      { units: { distance: 'm', speed: 'km/h', currency: 'EUR' }, budget: { amount: 120.5 } },
      { driverSpeed: 144.84096 },
    );
    const bag = bagFromFile(readBagFile(JSON.stringify(withClub(file, 'driver', { carry: 182.88 }))));
    expect(bag.player.driverSpeedMph).toBeCloseTo(90, 9);
    expect(bag.clubs[0]?.carryYd).toBeCloseTo(200, 9);
    expect(bag.budget).toEqual({ amountMinor: 12050, cashBeforeSales: false });
  });
  it('leaves out what was left out', () => {
    const bag = bagFromFile(readBagFile(JSON.stringify(bagFile())));
    expect(bag).not.toHaveProperty('holes');
    expect(bag.clubs[11]).toEqual({ id: 'putter', kind: 'putter' });
    expect(bag.costs).toEqual({ deliveryMinor: 0, regripMinor: 0, sellFeePercent: 0, sellPostageMinor: 0 });
  });
});
