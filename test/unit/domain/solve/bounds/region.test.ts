import { expect, test } from 'vitest';
import {
  atMost,
  everywhere,
  meet,
  NO_LIMIT,
  notBettered,
  penaltyAt,
  type Reached,
} from '../../../../../src-main/domain/solve/bounds/region.ts';

const holds = (reached: Reached[], cost: number, penalty: number): boolean => {
  const { x, y } = notBettered(reached);
  return x.some((corner, i) => corner >= cost && (y[i] as number) >= penalty);
};

test('nothing reached: everywhere', () => {
  expect(notBettered([])).toEqual(everywhere());
  expect(everywhere()).toEqual(atMost(NO_LIMIT, NO_LIMIT));
});

test('corners rise in cost and fall in penalty', () => {
  const { x, y } = notBettered([
    { cost: 3, penalty: 9 },
    { cost: 4, penalty: 5 },
    { cost: 9, penalty: 4 },
  ]);
  expect([...x]).toEqual([2, 3, 4, 9, NO_LIMIT]);
  expect([...y]).toEqual([NO_LIMIT, 9, 5, 4, 3]);
});

test('holds what no reached point betters, and the reached points for their ties', () => {
  // Source: the definition, tried on a grid.
  const curves: Reached[][] = [
    [{ cost: 5, penalty: 5 }],
    [
      { cost: 0, penalty: 9 },
      { cost: 1, penalty: 8 },
      { cost: 6, penalty: 0 },
    ],
    [
      { cost: -4, penalty: 7 },
      { cost: 2, penalty: 6 },
      { cost: 3, penalty: 1 },
      { cost: 9, penalty: 0 },
    ],
  ];
  for (const reached of curves) {
    for (let cost = -6; cost <= 12; cost++) {
      for (let penalty = 0; penalty <= 12; penalty++) {
        const bettered = reached.some(
          (p) => p.cost <= cost && p.penalty <= penalty && (p.cost < cost || p.penalty < penalty),
        );
        expect(holds(reached, cost, penalty), `${cost}, ${penalty}`).toBe(!bettered);
      }
    }
  }
});

test('what lies in both of two regions is all that lies in each', () => {
  const regions = [
    everywhere(),
    atMost(5, 7),
    atMost(-1, 3),
    notBettered([
      { cost: -2, penalty: 9 },
      { cost: 3, penalty: 6 },
      { cost: 4, penalty: 2 },
    ]),
    notBettered([{ cost: 0, penalty: 8 }]),
  ];
  for (const a of regions) {
    for (const b of regions) {
      const both = meet(a, b);
      for (let cost = -5; cost < 12; cost++) {
        expect(penaltyAt(both)(cost)).toBe(Math.min(penaltyAt(a)(cost), penaltyAt(b)(cost)));
      }
      expect([...both.x]).toEqual([...new Set(both.x)].sort((one, other) => one - other));
      expect([...both.y]).toEqual([...new Set(both.y)].sort((one, other) => other - one));
    }
  }
});
