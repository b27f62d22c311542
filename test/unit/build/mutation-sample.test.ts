import { describe, expect, it, test } from 'vitest';
import { drawn, wilsonPercent } from '../../../build/mutation/sample.ts';

describe('a sample of mutants', () => {
  const ids = Array.from({ length: 50 }, (_, i) => String(i));
  it('has as many as asked for, each once, or all', () => {
    const sample = drawn(ids, 20, 1);
    expect(new Set(sample).size).toBe(20);
    expect(ids).toEqual(expect.arrayContaining(sample));
    expect(drawn(ids, 80, 1).sort()).toEqual([...ids].sort());
    expect(drawn([], 3, 1)).toEqual([]);
  });
  it('is the same for the same seed, another for another', () => {
    expect(drawn(ids, 20, 7)).toEqual(drawn(ids, 20, 7));
    expect(drawn(ids, 20, 8)).not.toEqual(drawn(ids, 20, 7));
  });
  it('takes each as often as any other', () => {
    const times = new Map(ids.map((id) => [id, 0]));
    for (let seed = 1; seed <= 2000; seed++)
      for (const id of drawn(ids, 10, seed)) times.set(id, (times.get(id) ?? 0) + 1);
    // Binomial(2000, 1/5): 400 with a standard deviation of 18.
    for (const count of times.values()) expect(Math.abs(count - 400)).toBeLessThan(5 * 18);
  });
});

// Newcombe (1998), Statistics in Medicine 17, 857–872, Table I, the score method without continuity correction.
test.each([
  [81, 263, 25.53, 36.62],
  [15, 148, 6.24, 16.05],
  [0, 20, 0, 16.11],
  [1, 29, 0.61, 17.18],
])('Wilson’s 95 %% interval of %i of %i: %d to %d %%', (hits, of, low, high) => {
  const [from, to] = wilsonPercent(hits, of);
  expect(from).toBeCloseTo(low, 1);
  expect(to).toBeCloseTo(high, 1);
});
