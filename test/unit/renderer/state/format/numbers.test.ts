import { describe, expect, test } from 'vitest';
import {
  fractionDigits,
  parseNumber,
  typedNumber,
} from '../../../../../src-renderer/state/format/numbers.ts';

describe('parseNumber', () => {
  test.each([
    ['en-GB', '18', 18],
    ['en-GB', ' 10.5 ', 10.5],
    ['en-GB', '10,5', 10.5],
    ['en-GB', '1,234.5', 1234.5],
    ['en-GB', '1,234', 1234],
    ['en-GB', '.5', 0.5],
    ['en-GB', '5.', 5],
    ['en-GB', '-2.1', -2.1],
    ['en-GB', '−2.1', -2.1],
    ['de-DE', '10,5', 10.5],
    ['de-DE', '10.5', 10.5],
    ['de-DE', '1.234,5', 1234.5],
    ['de-DE', '1.234', 1234],
    ['fr-FR', '1\u202f234,5', 1234.5],
    ['de-CH', '1’234.5', 1234.5],
    ['ar-EG', '١٠٫٥', 10.5],
    ['hi-IN', '12,34,567.5', 1234567.5],
  ])('in %s "%s" is %s', (locale, text, value) => {
    expect(parseNumber(text, locale)).toBe(value);
  });

  test.each(['', ' ', 'x1', '1e3', '1..2', '1.2.3', '1,2,3', '--1', '+2.1', 'NaN', 'Infinity', '0x10'])(
    '"%s" is no number',
    (text) => {
      expect(parseNumber(text, 'en-GB')).toBeNull();
      expect(parseNumber(text, 'de-DE')).toBeNull();
    },
  );

  test('reads back what a field shows, in every locale', () => {
    for (const locale of ['en-GB', 'de-DE', 'fr-FR', 'ar-EG', 'fa-IR', 'sv-SE']) {
      for (const value of [0, 18, 10.5, -2.1, 1234.25, 120000]) {
        expect(parseNumber(typedNumber(value, locale), locale)).toBe(value);
      }
    }
  });
});

test('fractionDigits counts what stands after the locale’s mark', () => {
  expect(fractionDigits('10.5', 'en-GB')).toBe(1);
  expect(fractionDigits('10,25', 'de-DE')).toBe(2);
  expect(fractionDigits('1.234', 'de-DE')).toBe(0);
  expect(fractionDigits('18', 'en-GB')).toBe(0);
});
