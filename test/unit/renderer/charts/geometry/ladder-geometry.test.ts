import { describe, expect, test } from 'vitest';
import { ladderGeometry, ROW_PX } from '../../../../../src-renderer/charts/geometry/ladder-geometry.ts';
import { ladderView } from '../../../../../src-renderer/state/ladder/ladder-view.ts';
import { answerTo, demoBag } from '../../support.ts';
import { asText } from '../as-text.ts';

const view = ladderView(answerTo(demoBag()), 'today');
const texts = view.steps.map(() => ['a long saying that wants room', 'short']);

describe('the ladder of the demo', () => {
  test('as text', () => {
    expect(asText(ladderGeometry(view.rows, view.steps, texts, 640))).toMatchSnapshot();
  });

  test('carries are to scale, and a step joins its two clubs', () => {
    const { rows, steps } = ladderGeometry(view.rows, view.steps, texts, 640);
    const perYard = ((rows[0]?.x ?? 0) - (rows[1]?.x ?? 0)) / 23;
    rows.slice(1).forEach((row, i) => {
      expect(((rows[i]?.x ?? 0) - row.x) / perYard).toBeCloseTo(view.steps[i]?.gap ?? NaN, 6);
    });
    steps.forEach((step, i) => {
      expect([step.x1, step.x2]).toEqual([rows[i]?.x, rows[i + 1]?.x]);
      expect([step.y1, step.y2]).toEqual([rows[i]?.y, rows[i + 1]?.y]);
    });
  });

  test('a range holds its carry, and nothing leaves the drawing', () => {
    for (const width of [160, 320, 640, 1400]) {
      const { rows, ticks, height } = ladderGeometry(view.rows, view.steps, texts, width);
      for (const { x1, x, x2, y } of rows) {
        expect(x1).toBeLessThan(x);
        expect(x).toBeLessThan(x2);
        expect(x1).toBeGreaterThanOrEqual(0);
        expect(x2).toBeLessThanOrEqual(width);
        expect(y).toBeLessThan(height);
      }
      for (const { x } of ticks) expect(x >= 0 && x <= width).toBe(true);
    }
  });
});

describe('words beside a step', () => {
  const rows = view.rows.slice(0, 3);
  const steps = view.steps.slice(0, 2);
  const words = (width: number, said: string[]) =>
    ladderGeometry(
      rows,
      steps,
      steps.map(() => said),
      width,
    ).steps.map((step) => step.words);

  test('stand right of the long end where there is room, else left of the short end', () => {
    const [first, second] = words(900, ['x'.repeat(25)]);
    expect(first?.anchor).toBe('end');
    expect(second?.anchor).toBe('start');
  });

  test('are the fullest that fit, and the last where none does, cut to its room', () => {
    expect(words(1400, ['x'.repeat(30), 'short'])[0]?.text).toBe('x'.repeat(30));
    expect(words(300, ['x'.repeat(60), 'short'])[0]?.text).toBe('short');
    const cut = words(160, ['x'.repeat(60), 'y'.repeat(50)])[0];
    expect(cut?.text).toMatch(/^y+…$/);
    expect((cut?.text.length ?? NaN) * 7.6).toBeLessThanOrEqual(160);
  });
});

test('no clubs: an axis alone', () => {
  const empty = ladderGeometry([], [], [], 500);
  expect(empty.rows).toEqual([]);
  expect(empty.height).toBeLessThan(ROW_PX);
});

test('one club with a range of no width does not divide by nothing', () => {
  const [row] = view.rows;
  if (!row) throw new Error('the demo has a driver');
  const one = ladderGeometry([{ ...row, low: row.carry, high: row.carry }], [], [], 500);
  expect(one.rows[0]?.x).toSatisfy(Number.isFinite);
});
