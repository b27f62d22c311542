import { describe, expect, test } from 'vitest';
import { bookLines } from '../../../../src-renderer/parts/price-book/lines.ts';

const line = (id: string, name: string) => ({
  archetype: {
    id,
    kind: 'hybrid' as const,
    loftDeg: 22,
    forgiveness: 3 as const,
    spinTier: 'mid' as const,
    lengthIn: 40,
  },
  name,
});
const catalogue = [line('h19', '19° hybrid'), line('h22', '22° hybrid'), line('w52', '52° wedge')];
const band = {
  archetype: 'w52',
  low: 20,
  likely: 30,
  high: 45,
  method: 'one' as const,
  counted: 1,
  outliers: 0,
  newest: '2026-11-10',
  stale: false,
  own: true,
};
const other = (archetype: string, currency: string, notes: number) => ({
  archetype,
  currency,
  notes,
  newest: '2026-11-10',
});
const others = [other('h19', 'EUR', 1), other('h19', 'USD', 2), other('h19', 'EUR', 3)];

describe('the price book', () => {
  test('with nothing typed: clubs with any note, in the catalogue’s order', () => {
    const lines = bookLines(catalogue, [band], others, ' ');
    expect(lines.map(({ archetype }) => archetype)).toEqual(['h19', 'w52']);
    expect(lines[1]?.band).toBe(band);
  });

  test('notes in other currencies stand apart, summed by currency', () => {
    const [first] = bookLines(catalogue, [band], others, '');
    expect(first).toMatchObject({
      band: undefined,
      others: [
        { currency: 'EUR', notes: 4 },
        { currency: 'USD', notes: 2 },
      ],
    });
  });

  test('what is typed searches the whole catalogue', () => {
    const lines = bookLines(catalogue, [band], others, '22 hy');
    expect(lines).toEqual([{ archetype: 'h22', name: '22° hybrid', band: undefined, others: [] }]);
  });
});
