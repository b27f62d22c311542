import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { calls } from '../../../src-main/contract/calls/index.ts';
import { jsonPath, refusalLine, refusalsOf, shownValue } from '../../../src-main/contract/refusal.ts';
import { InstanceError } from '../../../src-main/domain/solve/index.ts';

/** Refusals of hostile input, found by the fuzz: told in a few words, however large what they are about. */
describe('a refusal stays short', () => {
  const HUGE = 'x'.repeat(100_000);

  it('with a key of 100,000 letters (schemas 633)', () => {
    const args = { bagId: 1, costs: { [HUGE]: 1 } };
    const parsed = calls['bags.setCosts'].args.safeParse(args);
    if (parsed.success) throw new Error('it was taken');
    for (const refusal of refusalsOf(parsed.error, args))
      expect(refusalLine(refusal).length).toBeLessThan(400);
  });

  it('with a value of two gigabytes (calls 633)', () => {
    const args = { source: { text: '' }, units: { speed: Array.from({ length: 20_000 }, () => HUGE) } };
    const parsed = calls['files.previewRoster'].args.safeParse(args);
    if (parsed.success) throw new Error('it was taken');
    for (const refusal of refusalsOf(parsed.error, args))
      expect(refusalLine(refusal).length).toBeLessThan(400);
  });

  it('with a hundred thousand unknown keys', () => {
    const args = Object.fromEntries(Array.from({ length: 100_000 }, (_, n) => [`k${String(n)}`, 1]));
    const parsed = z.strictObject({}).safeParse(args);
    if (parsed.success) throw new Error('it was taken');
    expect(refusalsOf(parsed.error, args)).toHaveLength(10);
  });

  it('of a solver instance with a million faults', () => {
    const refusal = { path: '$', value: HUGE, message: 'is wrong', remedy: 'Correct it.' };
    const error = new InstanceError(Array.from({ length: 100_000 }, () => refusal));
    expect(error.message.length).toBeLessThan(20_000);
    expect(error.message).toMatch(/and 99900 more$/);
    expect(error.refusals).toHaveLength(100_000);
  });
});

it('paths and values as before', () => {
  expect(jsonPath(['clubs', 3, 'carry'])).toBe('$.clubs[3].carry');
  expect(jsonPath(['a b', ''])).toBe('$["a b"][""]');
  expect(shownValue(undefined)).toBe('(missing)');
  expect(shownValue(Number.NaN)).toBe('NaN');
  expect(shownValue({ a: 1 })).toBe('{"a":1}');
});
