import { describe, expect, test } from 'vitest';
import { overlayView } from '../../../../../src-renderer/state/side/overlay-view.ts';

const club = (clubId: string, carry: number) => ({
  clubId,
  carry,
  low: carry - 5,
  high: carry + 5,
  source: 'stated' as const,
});
const wide = (longer: string, shorter: string, gap: number) => ({
  longer,
  shorter,
  state: 'wide' as const,
  gap,
  limit: 20,
});

const today = { ladder: [club('d', 220), club('5w', 190), club('7i', 150)], marks: [wide('5w', '7i', 40)] };
const after = { ladder: [club('d', 220), club('5w', 190), club('buy:h', 170), club('7i', 150)], marks: [] };

describe('two ladders on one scale', () => {
  const { rows, steps } = overlayView({ left: today, right: after }, { 'buy:h': '25° hybrid' });

  test('a club of both stands once, the longest first', () => {
    expect(rows.map(({ id, on }) => [id, on.left, on.right])).toEqual([
      ['d', true, true],
      ['5w', true, true],
      ['buy:h', false, true],
      ['7i', true, true],
    ]);
    expect(rows[2]).toMatchObject({ name: '25° hybrid', bought: true });
  });

  test('neighbours are those of each page, told once where both have them', () => {
    expect(steps).toEqual([
      { on: 'both', longer: 0, shorter: 1, gap: 30, limit: null, state: 'fine' },
      { on: 'left', longer: 1, shorter: 3, gap: 40, limit: 20, state: 'wide' },
      { on: 'right', longer: 1, shorter: 2, gap: 20, limit: null, state: 'fine' },
      { on: 'right', longer: 2, shorter: 3, gap: 20, limit: null, state: 'fine' },
    ]);
  });
});

test('a club that carries otherwise on the other page is a line of its own', () => {
  const { rows } = overlayView({ left: today, right: { ladder: [club('d', 214)], marks: [] } }, {});
  expect(rows.filter(({ id }) => id === 'd').map(({ carry, on }) => [carry, on.left])).toEqual([
    [220, true],
    [214, false],
  ]);
});

test('empty ladders', () => {
  const none = { ladder: [], marks: [] };
  expect(overlayView({ left: none, right: none }, {})).toEqual({ rows: [], steps: [] });
});
