import { describe, expect, test } from 'vitest';
import { createFormats, isoDay } from '../../../../../src-renderer/state/format/formats.ts';

const pounds = { distance: 'yd', speed: 'mph', currency: 'GBP' } as const;
const yen = { ...pounds, currency: 'JPY' } as const;

describe('figures as they are printed', () => {
  const formats = createFormats('en-GB', 'en');

  test('distances are whole, ranges have one dash', () => {
    expect(formats.distance(178.4, pounds)).toBe('178\u00a0yd');
    expect(formats.range(172.6, 183.4)).toBe('173–183');
  });

  test('money has the currency’s digits, round sums none, and a true minus', () => {
    expect(formats.money(180, pounds)).toBe('£180');
    expect(formats.money(54.88, pounds)).toBe('£54.88');
    expect(formats.money(-7.12, pounds)).toBe('−£7.12');
    expect(formats.amount(-7.1, pounds)).toBe('−7.10');
    expect(formats.amount(1200, yen)).toBe('1,200');
  });

  test('the padding of a column is what the number lacks', () => {
    expect(formats.padding(1)).toBe('.0');
    expect(createFormats('de-DE', 'en').padding(2)).toBe(',00');
  });
});

test('a handicap better than scratch is written with a plus, and read with either sign', () => {
  const [english, german] = [createFormats('en-GB', 'en'), createFormats('de-DE', 'de')];
  expect(english.handicap(-2)).toBe('+2');
  expect(english.handicap(18.4)).toBe('18.4');
  expect(german.typedHandicap(-2.1)).toBe('+2,1');
  for (const typed of ['+2,1', '−2,1', '-2.1', ' + 2,1 ']) expect(german.parseHandicap(typed)).toBe(-2.1);
  expect(english.parseHandicap('2.1')).toBe(2.1);
  expect(english.parseHandicap('+')).toBeNull();
});

test('lists of names follow the words, not the figures', () => {
  expect(createFormats('de-DE', 'en').list(['PW', 'GW'])).toBe('PW and GW');
});

test('a day is the reader’s own, not the one of Greenwich', () => {
  expect(isoDay(new Date(2026, 0, 5, 23, 59))).toBe('2026-01-05');
});

test('a day is that day in every time zone', () => {
  // Midnight of that day in Greenwich is still the day before in America.
  const zone = process.env['TZ'];
  process.env['TZ'] = 'America/Los_Angeles';
  try {
    const { day } = createFormats('en-GB', 'en');
    expect(day('2026-11-10')).toBe('10 Nov 2026');
    expect(day('2026-11-10T02:00:00.000Z')).toBe('9 Nov 2026');
  } finally {
    if (zone === undefined) delete process.env['TZ'];
    else process.env['TZ'] = zone;
  }
});
