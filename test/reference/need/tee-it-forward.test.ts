import { describe, expect, it } from 'vitest';
import { teeLengthYd } from '../../../src-main/domain/player/need/courses.ts';
import { driveRollYd } from '../../../src-main/domain/player/need/drive.ts';
import amateur from '../data/amateur.json' with { type: 'json' };

// Source: Tee It Forward chart of the PGA of America and the USGA, two pages agree (test/reference/data/amateur.json).
const chart = amateur.tables.find((table) => table.id === 'tee_it_forward')?.rows as [number, string][];

describe('default tees', () => {
  it('has the whole chart', () => {
    expect(chart).toHaveLength(9);
  });

  it.each(chart)('a drive of %d yd plays %s yd', (driveYd, range) => {
    const [low, high] = range.split('-').map(Number) as [number, number];
    // The chart's drives are totals; the product goes by carry.
    const carryYd = driveYd - (driveYd < 180 ? 15 : 20);
    expect(carryYd + driveRollYd(carryYd)).toBe(driveYd);
    expect(teeLengthYd(carryYd)).toBeGreaterThanOrEqual(low);
    expect(teeLengthYd(carryYd)).toBeLessThanOrEqual(high);
  });
});
