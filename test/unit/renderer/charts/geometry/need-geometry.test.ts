import { describe, expect, test } from 'vitest';
import { NEED_ROW_PX, needGeometry } from '../../../../../src-renderer/charts/geometry/need-geometry.ts';
import { needView, type NeedView } from '../../../../../src-renderer/state/spend/need-view.ts';
import { answerTo, demoBag } from '../../support.ts';

const demo = needView(answerTo(demoBag()));
if (demo === null) throw new Error('the demo has a need');
const textsOf = (view: NeedView) => view.rows.map((row) => `${row.shots.toFixed(1)}, from the tee`);
const drawn = (view: NeedView, width = 600) => needGeometry(view, textsOf(view), width);

const row = (low: number, shots: number, tee = 0) => ({ low, high: low + 10, shots, tee, clubs: [] });
const small = (rows: NeedView['rows'], clubs: NeedView['clubs'] = []): NeedView => ({
  rows,
  clubs,
  total: 1,
  source: '',
});

describe('the need of the demo', () => {
  test('has a row for each interval, and each club’s tick in the row of its interval', () => {
    const { rows, clubs } = drawn(demo);
    expect(rows).toHaveLength(demo.rows.length);
    demo.rows.forEach((interval, i) => {
      for (const { id } of interval.clubs) {
        const tick = clubs.find((club) => club.id === id);
        const top = (rows[i]?.y ?? NaN) - 2;
        // A carry at an edge belongs to the interval above it.
        expect(tick && tick.y > top && tick.y <= top + NEED_ROW_PX + 1e-9).toBe(true);
      }
    });
  });

  test('names keep their order and their distance, and stay inside the drawing', () => {
    const { clubs, height } = drawn(demo);
    clubs.slice(1).forEach((club, i) => {
      expect(club.nameY - (clubs[i]?.nameY ?? NaN)).toBeGreaterThanOrEqual(15 - 1e-9);
    });
    for (const { nameY } of clubs) expect(nameY > 0 && nameY < height).toBe(true);
  });

  test('bars and what is said after them stay inside, at every width', () => {
    for (const width of [260, 480, 600, 1400]) {
      const { rows, barX } = drawn(demo, width);
      rows.forEach(({ groundX, endX, wordX }, i) => {
        expect(groundX >= barX && endX >= groundX - 1e-9).toBe(true);
        const words = (textsOf(demo)[i] ?? '').length * 7.6;
        // In the narrowest the bars keep a least length, and the longest words may reach over.
        if (width > 300) expect(wordX + words).toBeLessThanOrEqual(width + 0.01);
      });
    }
  });
});

describe('bars', () => {
  test('are to scale, from the ground first and from the tee behind', () => {
    const { rows, barX } = drawn(small([row(60, 2, 0.5), row(50, 1), row(40, 0)]));
    const [two, one, none] = rows;
    expect((two?.endX ?? NaN) - barX).toBeCloseTo(2 * ((one?.endX ?? NaN) - barX), 6);
    expect((two?.groundX ?? NaN) - barX).toBeCloseTo(1.5 * ((one?.endX ?? NaN) - barX), 6);
    expect([none?.groundX, none?.endX]).toEqual([barX, barX]);
  });

  test('one that would hide what the others say is broken, and only then', () => {
    const broken = (first: number) =>
      drawn(small([row(60, first), row(50, 2)])).rows.map((one) => one.isBroken);
    expect(broken(5)).toEqual([true, false]);
    expect(broken(4.9)).toEqual([false, false]);
    expect(drawn(small([row(60, 14)])).rows[0]?.isBroken).toBe(false);
    const { rows, barX } = drawn(small([row(60, 14), row(50, 2)]));
    expect((rows[0]?.endX ?? NaN) - barX).toBeGreaterThan((rows[1]?.endX ?? NaN) - barX);
  });
});

test('a long name is cut to its room, and never to more than its share of the drawing', () => {
  const name = 'The old five-wood that an uncle left behind in the hall';
  const { clubs, axisX } = drawn(small([row(40, 1)], [{ id: 'a', name, carry: 44 }]), 480);
  expect(clubs[0]?.text.endsWith('…')).toBe(true);
  expect(axisX).toBeLessThan(480 * 0.4);
});
