import { expect, test } from 'vitest';
import { currencies, defaultUnits } from '../../../../../src-renderer/state/format/default-units.ts';

test.each([
  ['en-GB', { distance: 'yd', speed: 'mph', currency: 'GBP' }],
  ['en', { distance: 'yd', speed: 'mph', currency: 'USD' }],
  ['de', { distance: 'm', speed: 'km/h', currency: 'EUR' }],
  ['de-CH', { distance: 'm', speed: 'km/h', currency: 'CHF' }],
  ['sv', { distance: 'm', speed: 'km/h', currency: 'SEK' }],
])('%s', (locale, units) => {
  expect(defaultUnits(locale)).toEqual(units);
});

test('the currency that a locale begins with is among the choices', () => {
  const known = new Set(currencies('en').map(({ value }) => value));
  for (const locale of ['en-GB', 'de', 'ja', 'ko', 'pl', 'th']) {
    expect(known.has(defaultUnits(locale).currency)).toBe(true);
  }
});
