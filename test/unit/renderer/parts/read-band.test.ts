import { expect, test } from 'vitest';
import { readBand } from '../../../../src-renderer/parts/band/read-band.ts';
import { parseNumber } from '../../../../src-renderer/state/format/numbers.ts';

const read = (low: string, likely: string, high: string) =>
  readBand({ low, likely, high }, (text) => parseNumber(text, 'en-GB'));

test('three numbers are a band, three blanks none', () => {
  expect(read('40', '55', '70.5')).toEqual({ band: { low: 40, likely: 55, high: 70.5 } });
  expect(read('', ' ', '')).toEqual({ band: null });
});

test('a band in the making is unfinished, not wrong', () => {
  expect(read('40', '', '')).toMatchObject({ unfinished: true });
  expect(read('', '55', '70')).toMatchObject({ unfinished: true });
});

test('what is no number is wrong at once, and named', () => {
  expect(read('40', 'much', '')).toMatchObject({
    unfinished: false,
    message: expect.stringContaining('“much”') as string,
  });
});
