import { describe, expect, it } from 'vitest';
import { formatMoney, isCurrency, minorDigits, toMajor, toMinor } from '../../../src-main/contract/money.ts';

// Minor units: ISO 4217 (from memory of the standard's table).
describe('minorDigits', () => {
  it.each([
    ['GBP', 2],
    ['EUR', 2],
    ['HUF', 2],
    ['IDR', 2],
    ['JPY', 0],
    ['ISK', 0],
    ['KWD', 3],
    ['IQD', 3],
    ['CLF', 4],
  ])('%s has %i', (code, digits) => {
    expect(minorDigits(code)).toBe(digits);
  });
});

describe('toMinor', () => {
  it.each([
    [12.34, 'GBP', 1234],
    [0.29, 'EUR', 29],
    [1.005, 'GBP', null],
    [100, 'JPY', 100],
    [100.5, 'JPY', null],
    [1.234, 'KWD', 1234],
    [9_999_999.99, 'USD', 999_999_999],
    [0, 'USD', 0],
  ])('%d %s is %s', (major, code, minor) => {
    expect(toMinor(major, code)).toBe(minor);
  });
  it('comes back as it went for every penny up to 1,000.00', () => {
    for (let minor = 0; minor <= 100_000; minor++) expect(toMinor(toMajor(minor, 'GBP'), 'GBP')).toBe(minor);
  });
});

it('knows currencies from other triples', () => {
  expect([isCurrency('GBP'), isCurrency('KWD'), isCurrency('QQQ')]).toEqual([true, true, false]);
});

it('prints round sums without digits and others with their own', () => {
  expect(formatMoney(12000, 'GBP')).toBe('£120');
  expect(formatMoney(12050, 'GBP')).toBe('£120.50');
  expect(formatMoney(1500, 'JPY')).toBe('JP¥1,500');
});
