import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LETTER_PX, nearest, shortened, spread } from '../../../../../src-renderer/charts/frame/text-fit.ts';

describe('shortened', () => {
  test('keeps what fits, to the last letter', () => {
    for (const text of ['PW', '6-iron', 'driver', 'a club of many letters']) {
      expect(shortened(text, text.length * LETTER_PX)).toBe(text);
    }
  });
  test('cuts what does not, and shows that it did', () => {
    expect(shortened('driver', 5 * LETTER_PX)).toBe('driv…');
    expect(shortened('The old club', 9 * LETTER_PX)).toBe('The old…');
  });
  test('cuts by whole letters, not by halves of one', () => {
    expect(shortened('🏌🏌🏌🏌', 3 * LETTER_PX)).toBe('🏌🏌…');
  });
  test('says nothing where there is room for nothing', () => {
    expect(shortened('driver', LETTER_PX)).toBe('');
    expect(shortened('driver', -5)).toBe('');
  });
});

describe('spread', () => {
  test('leaves alone what is apart', () => {
    expect(spread([10, 40, 80], 15, [0, 100])).toEqual([10, 40, 80]);
  });
  test('moves neighbours apart, downwards first and back where the end is near', () => {
    expect(spread([10, 12], 15, [0, 100])).toEqual([10, 25]);
    expect(spread([98, 99], 15, [0, 100])).toEqual([85, 100]);
  });
  test('keeps order, distance and ends, wherever all fit', () => {
    const wanted = fc.array(fc.integer({ min: 0, max: 400 }), { maxLength: 20 });
    fc.assert(
      fc.property(wanted, (values) => {
        const places = spread(
          values.sort((a, b) => a - b),
          20,
          [0, 400],
        );
        places.slice(1).forEach((place, i) => {
          expect(place - (places[i] ?? NaN)).toBeGreaterThanOrEqual(20);
        });
        for (const place of places) expect(place >= 0 && place <= 400).toBe(true);
      }),
      { seed: 5, numRuns: 200 },
    );
  });
  test('goes beyond the end rather than lay one on another', () => {
    expect(spread([0, 0, 0, 0], 15, [0, 30])).toEqual([0, 15, 30, 45]);
  });
  test('of nothing is nothing', () => {
    expect(spread([], 15, [0, 30])).toEqual([]);
  });
});

test('nearest: the first of two that are as near; none of none', () => {
  expect(nearest([10, 20, 30], 24)).toBe(1);
  expect(nearest([10, 20], 15)).toBe(0);
  expect(nearest([], 15)).toBeNull();
});
