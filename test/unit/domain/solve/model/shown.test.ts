import { describe, expect, it } from 'vitest';
import { shownJson, wellCut } from '../../../../../src-main/domain/solve/model/shown.ts';

describe('shownJson', () => {
  it.each([
    [1, '1'],
    [Number.NaN, 'NaN'],
    [-0, '0'],
    ['a "b"', '"a \\"b\\""'],
    [null, 'null'],
    [undefined, 'undefined'],
    [12n, '12'],
    [() => 1, '(function)'],
    [[1, [2], {}], '[1,[2],{}]'],
    [{ a: 1, 'b c': [true] }, '{"a":1,"b c":[true]}'],
    ['x'.repeat(70), `"${'x'.repeat(56)}...`],
    [Array.from({ length: 40 }, (_, n) => n), '[0,1,2,3,4,5,6,7,8,9,10,11,12,13,14,15,16,17,18,19,20,21,...'],
  ] as [unknown, string][])('case %#', (value, text) => {
    expect(shownJson(value)).toBe(text);
  });
  it('cuts to the length asked for', () => {
    expect(shownJson('x'.repeat(90), 80)).toHaveLength(80);
    expect(shownJson('x'.repeat(78), 80)).toBe(`"${'x'.repeat(78)}"`);
  });
  it('shows a circle once', () => {
    const circle: { own?: unknown } = {};
    circle.own = circle;
    expect(shownJson(circle)).toBe('{"own":(itself)}');
  });
  it('takes no time for two gigabytes of text, a million brackets or a million keys', () => {
    const text = 'x'.repeat(100_000);
    expect(shownJson(Array.from({ length: 20_000 }, () => text))).toHaveLength(60);
    let deep: unknown = 1;
    for (let n = 0; n < 1_000_000; n += 1) deep = [deep];
    expect(shownJson(deep)).toBe(`${'['.repeat(57)}...`);
    expect(
      shownJson(Object.fromEntries(Array.from({ length: 100_000 }, (_, n) => [`k${String(n)}`, n]))),
    ).toHaveLength(60);
  });
});

it('wellCut leaves no half letter', () => {
  expect(wellCut('ab👩', 3)).toBe('ab');
  expect(wellCut('ab👩', 4)).toBe('ab👩');
});
