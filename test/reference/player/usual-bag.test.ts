import { describe, expect, it } from 'vitest';
import { questionsOf } from '../../../src-main/domain/advice/unknowns/questions.ts';
import { findAll } from '../../../src-main/domain/advice/rules/table.ts';
import { bagFile, viewOf } from '../../support/bags.ts';

// Carries: the reference ladder (centred strikes, 25 °C air, fairway woods +1.5°) of CHECKVALUES §7, yards by mph.
const LADDER: Record<number, number[]> = {
  70: [126, 111, 101, 89, 86, 81, 75, 69, 64, 58, 52],
  80: [164, 145, 133, 117, 113, 106, 97, 89, 81, 74, 66],
  90: [201, 177, 162, 144, 138, 129, 119, 109, 100, 90, 80],
  100: [233, 203, 188, 168, 160, 151, 139, 129, 119, 108, 97],
  110: [262, 228, 212, 189, 181, 171, 159, 148, 137, 126, 114],
};
const CLUBS = [
  ['driver', 'driver', 10.5],
  ['5w', 'fairway', 18],
  ['4h', 'hybrid', 22],
  ['5i', 'iron', 26],
  ['6i', 'iron', 29],
  ['7i', 'iron', 33],
  ['8i', 'iron', 37],
  ['9i', 'iron', 41],
  ['pw', 'wedge', 45],
  ['gw', 'wedge', 50],
  ['sw', 'wedge', 55],
] as const;

describe('a usual bag, driver, 5-wood, 4-hybrid, 5–9 iron and three wedges', () => {
  it.each(Object.keys(LADDER).map(Number))(
    'at %i mph has no wide gap and at most one question',
    (driverSpeed) => {
      const clubs = CLUBS.map(([id, kind, loftDeg], i) => ({
        id,
        kind,
        loftDeg,
        carry: LADDER[driverSpeed]?.[i] ?? 0,
      }));
      const prices = [{ archetype: 'hybrid-22-t3', low: 30, likely: 50, high: 70 }];
      const view = viewOf(
        bagFile({ clubs: [...clubs, { id: 'putter', kind: 'putter' }], prices }, { driverSpeed }),
      );
      expect(findAll(view).filter((finding) => finding.kind === 'wide-gap')).toEqual([]);
      expect(questionsOf(view, () => ({ share: 0, stakeMinor: 0 })).length).toBeLessThanOrEqual(1);
    },
  );
});
