import { describe, expect, it } from 'vitest';
import {
  clubRows,
  driverLoftRows,
  eraLofts,
  hull,
  parseRange,
  sevenIronBands,
  wedgeLofts,
  wedgeStepLofts,
} from './outside-ranges.ts';

// Rows copied by eye from club-specs.json and conventions.json, so that a misread table cannot pass silently.
describe('reading the outside ranges', () => {
  it('reads ranges, single values, limits and none', () => {
    expect(parseRange('20.5-22')).toEqual({ low: 20.5, high: 22 });
    expect(parseRange(24)).toEqual({ low: 24, high: 24 });
    expect(parseRange('15')).toEqual({ low: 15, high: 15 });
    expect(parseRange('<=27.5')).toEqual({ low: 0, high: 27.5 });
    expect(parseRange('-')).toBeNull();
    expect(() => parseRange('about 20')).toThrow(/about 20/);
  });

  it('reads the table of clubs', () => {
    expect(clubRows).toHaveLength(22);
    expect(clubRows.find(({ club }) => club === '4H')).toEqual({
      club: '4H',
      traditional: null,
      standard: { low: 22, high: 23 },
      strong: { low: 20.5, high: 22 },
      lengthIn: { low: 39.25, high: 40.5 },
    });
  });

  it('reads eras, bands, wedges and conventions', () => {
    expect(eraLofts('2020s strong').get('8i')).toEqual({ low: 31.5, high: 34.5 });
    expect(eraLofts('1980s').has('note')).toBe(false);
    expect(sevenIronBands.get('players')).toEqual({ low: 33, high: 35.5 });
    expect([...wedgeLofts.keys()]).toEqual(['PW', 'GW', 'SW', 'LW']);
    expect(driverLoftRows[0]).toEqual({ speed: '<75', loftDeg: { low: 12, high: 15 } });
    expect([...wedgeStepLofts].sort()).toEqual([48, 50, 52, 54, 56, 58, 60]);
  });

  it('takes the smallest range around several', () => {
    expect(hull({ low: 2, high: 3 }, null, { low: 1, high: 2 })).toEqual({ low: 1, high: 3 });
    expect(hull(null, undefined)).toBeNull();
  });
});
