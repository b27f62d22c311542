import { describe, expect, test } from 'vitest';
import {
  FLIGHT_ROW_PX,
  flightGeometry,
} from '../../../../../src-renderer/charts/geometry/flight-geometry.ts';
import { flightsOf } from '../../../../../src-main/worker/flights.ts';
import { demoBag } from '../../support.ts';

const { flights } = flightsOf(demoBag('range-bag'));

describe('the flights of a bag', () => {
  test('begin and end on the ground, and lie a line each below it in the ladder’s order', () => {
    const { flights: drawn, groundY } = flightGeometry(flights, 800);
    for (const { path, apex } of drawn) {
      expect(path.startsWith(`M34,${String(Math.round(groundY * 10) / 10)}`)).toBe(true);
      expect(apex.y).toBeLessThan(groundY);
    }
    expect(drawn.map(({ id }) => id)).toEqual(flights.map(({ clubId }) => clubId));
    drawn.slice(1).forEach(({ y, x }, i) => {
      expect(y - (drawn[i]?.y ?? NaN)).toBeCloseTo(FLIGHT_ROW_PX, 6);
      expect(x).toBeLessThan(drawn[i]?.x ?? NaN);
    });
  });

  test('a range holds its carry', () => {
    for (const { x1, x, x2 } of flightGeometry(flights, 800).flights) expect(x1 < x && x < x2).toBe(true);
  });

  test('heights are enlarged by a whole number that says so, and apexes are to that scale', () => {
    for (const width of [160, 400, 800, 2000]) {
      const { flights: drawn, groundY, times, distanceTicks } = flightGeometry(flights, width);
      expect([1, 2, 3, 4]).toContain(times);
      const [a, b] = distanceTicks;
      const perUnit = ((b?.x ?? NaN) - (a?.x ?? NaN)) / ((b?.value ?? NaN) - (a?.value ?? NaN));
      drawn.forEach(({ apex }, i) => {
        expect((groundY - apex.y) / (perUnit * times)).toBeCloseTo(flights[i]?.apex ?? NaN, 6);
      });
    }
  });

  test('nothing leaves the drawing', () => {
    for (const width of [160, 320, 800, 1400]) {
      const { flights: drawn, height, distanceTicks, heightTicks } = flightGeometry(flights, width);
      const xs = [
        ...drawn.flatMap(({ x1, x, x2, apex }) => [x1, x, x2, apex.x]),
        ...distanceTicks.map(({ x }) => x),
      ];
      for (const x of xs) expect(x >= 0 && x <= width).toBe(true);
      for (const y of [...drawn.map(({ y }) => y), ...heightTicks.map(({ y }) => y)]) {
        expect(y >= 0 && y <= height).toBe(true);
      }
    }
  });

  test('names over the apexes touch neither each other nor another’s mark', () => {
    const { flights: drawn } = flightGeometry(flights, 800);
    const boxes = drawn.flatMap(({ name, apex }) =>
      name === null
        ? []
        : [{ left: name.x - name.text.length * 3.8, right: name.x + name.text.length * 3.8, y: apex.y }],
    );
    expect(boxes.length).toBeGreaterThan(2);
    boxes.forEach((one, i) => {
      for (const other of boxes.slice(i + 1)) {
        const beside = one.right <= other.left || other.right <= one.left;
        expect(beside || Math.abs(one.y - other.y) >= 14).toBe(true);
      }
    });
  });

  test('no club: the ground alone', () => {
    const empty = flightGeometry([], 600);
    expect(empty.flights).toEqual([]);
    expect(empty.groundY).toSatisfy(Number.isFinite);
  });
});
