import { describe, expect, test } from 'vitest';
import { judgeFlat, type Sample } from './soak/flat.ts';

/** `npm run soak` takes minutes and is run by hand; that it can find a leak is tested here. */
const samples = (of: (n: number) => Partial<Sample>): Sample[] =>
  Array.from({ length: 40 }, (_, n) => ({ atS: n, rss: 100e6, heapUsed: 20e6, handles: 30, ...of(n) }));

describe('memory and handles', () => {
  test('that stay are flat, the warm-up left out', () => {
    expect(judgeFlat(samples((n) => ({ rss: n < 8 ? 50e6 : 100e6 + (n % 3) * 1e6 }))).isFlat).toBe(true);
  });
  test.each([
    ['memory', (n: number) => ({ rss: 100e6 + n * 1e6 })],
    ['the heap', (n: number) => ({ heapUsed: 20e6 + n * 4e5 })],
    ['handles', (n: number) => ({ handles: 30 + n })],
  ])('%s that rises is found', (_, of) => {
    expect(judgeFlat(samples(of)).isFlat).toBe(false);
  });
  test('too few are not judged', () => {
    expect(() => judgeFlat(samples(() => ({})).slice(0, 7))).toThrow('too few');
  });
});
