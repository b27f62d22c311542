import { describe, expect, test } from 'vitest';
import { at, InstanceError, type Refusal } from '../../../../../src-main/domain/solve/model/refusal.ts';

const refusal = (path: string, value: unknown): Refusal => ({
  path,
  value,
  message: 'is odd',
  remedy: 'Give an even one.',
});

describe('the message of a refused instance', () => {
  test('tells of each refusal where it is, what is wrong, the value and the remedy, a line each', () => {
    const { message, name, refusals } = new InstanceError([
      refusal('$.limit', 3),
      refusal('$.items[0].lot', undefined),
    ]);
    expect(message).toBe(
      '$.limit: is odd (3). Give an even one.\n$.items[0].lot: is odd (undefined). Give an even one.',
    );
    expect([name, refusals.length]).toEqual(['InstanceError', 2]);
  });
  test('tells of a hundred, and how many more there are', () => {
    const linesOf = (count: number) =>
      new InstanceError(
        Array.from({ length: count }, (_, i) => refusal(`$.items[${String(i)}].id`, i)),
      ).message.split('\n');
    expect(linesOf(100)).toHaveLength(100);
    expect(linesOf(100).at(-1)).toMatch(/^\$\.items\[99\]/);
    expect(linesOf(103)).toHaveLength(101);
    expect(linesOf(103).at(-1)).toBe('and 3 more');
  });
  test('shows no more than 80 characters of a value', () => {
    const { message } = new InstanceError([refusal('$.basis', 'x'.repeat(500))]);
    expect(message).toBe(`$.basis: is odd ("${'x'.repeat(76)}...). Give an even one.`);
  });
});

test.each([
  ['price', '$.price'],
  ['_1$', '$._1$'],
  [7, '$[7]'],
  ['7', '$["7"]'],
  ['a b', '$["a b"]'],
  ['a"b', '$["a\\"b"]'],
  ['', '$[""]'],
  ['x'.repeat(100), `$.${'x'.repeat(80)}`],
])('the place of %j', (key, path) => {
  expect(at('$', key)).toBe(path);
});
